import type { Dimension } from '../hardware/hardware-sheet.ts'
import { type Doubt, doubtAt, doubtOfReading } from '../measurement/doubt.ts'
import type { Instrument } from '../measurement/instruments.ts'
import { isOffset, lacksSide, signedValue } from '../measurement/offset-side.ts'
import type { Reading } from '../measurement/reading.ts'
import type { Requirement, RequirementLook } from '../requirements/requirement.ts'
import { inputsOf } from '../requirements/rests-on.ts'
import { kindOf, type QuantityKind, type Unit } from '../units/quantity-kinds.ts'
import { type ComputedValue, computeValue, type KnownReading, type Lookup } from './compute-value.ts'
import { decideRecord } from './decide-record.ts'
import { judgeMeasured, type MeasuredVerdict } from './judge-measured.ts'
import type { Decided, DecisionRule, MissingReading, Verdict, VerdictReason } from './verdict.ts'

export interface JudgingRules {
  readonly rule: DecisionRule
  readonly instruments: readonly Instrument[]
}

export const defaultRule: DecisionRule = { kind: 'guard band', multiple: 1 }

/** The verdict on every requirement, in their order. Without a reading a requirement is unread; nothing is assumed. */
export function judgeRequirements(
  requirements: readonly Requirement[],
  readings: readonly Reading[],
  rules: JudgingRules,
): readonly Verdict[] {
  const current = currentReadings(readings)
  const lookup = readValues(current, rules.instruments)
  const order = new Map(readings.map(({ id }, i) => [id, i]))
  const postNumbers = new Map(requirements.map(({ place }) => [place.id, place.number]))
  return requirements.map((requirement) => {
    const decided = decide(requirement, current.get(requirement.id), { lookup, order, postNumbers }, rules)
    return {
      requirement: requirement.id,
      place: requirement.place,
      ...decided,
      sheet: requirement.sheet,
      sheetVersion: requirement.sheetVersion,
    }
  })
}

/** The reading in force for each thing read: the latest in the log. What is corrected stands before its correction. */
export const currentReadings = (readings: readonly Reading[]): ReadonlyMap<string, Reading> =>
  new Map(readings.map((reading) => [reading.of, reading]))

interface ReadValue extends KnownReading {
  readonly kind: QuantityKind
  readonly doubt: Doubt
}

type ReadValues = (of: string) => ReadValue | null

/** What a measured requirement is decided by besides its own reading. */
interface Known {
  readonly lookup: ReadValues
  /** Where each reading stands in the log, by its id. */
  readonly order: ReadonlyMap<string, number>
  readonly postNumbers: ReadonlyMap<string, number>
}

function readValues(current: ReadonlyMap<string, Reading>, instruments: readonly Instrument[]): ReadValues {
  return (of) => {
    const reading = current.get(of)
    if (reading === undefined || reading.answer.kind !== 'measured') return null
    const { answer, id } = reading
    const kind = kindOf(answer.unit)
    const own = doubtOfReading(answer, reading, instruments)
    const value = signedValue(answer)
    return { value, kind, doubt: own, u: doubtAt(own, value), id, hasSide: !lacksSide(reading) }
  }
}

function decide(requirement: Requirement, reading: Reading | undefined, known: Known, rules: JudgingRules): Decided {
  const { look } = requirement
  // What the run file decides no reading can take out of judging, unless it may be set aside.
  if (look.kind === 'record' && !requirement.maySetAside) return decideRecord(look.rule)
  if (reading?.answer.kind === 'does not apply') {
    const said = { because: reading.answer.because, by: reading.by }
    return requirement.maySetAside
      ? { verdict: 'does not apply', because: { kind: 'set aside', ...said }, readings: [reading.id] }
      : unread({ kind: 'may not be set aside', ...said }, [reading.id])
  }
  if (look.kind === 'record') return decideRecord(look.rule)
  if (reading?.answer.kind === 'cannot see')
    return { verdict: 'unread', because: { kind: 'could not be seen' }, readings: [reading.id] }
  switch (look.kind) {
    case 'measure':
      return decideMeasured(requirement.id, look, reading, known, rules.rule)
    case 'choose':
      return decideChosen(look, reading)
    case 'confirm':
      return decideConfirmed(reading)
  }
}

const unread = (because: VerdictReason, readings: readonly string[] = []): Decided => ({
  verdict: 'unread',
  because,
  readings,
})

function decideMeasured(
  id: string,
  look: Extract<RequirementLook, { kind: 'measure' }>,
  reading: Reading | undefined,
  known: Known,
  rule: DecisionRule,
): Decided {
  const { limits } = look
  const kind = kindOf(limits.unit)
  const { lookup, postNumbers } = known
  const direct = lookup(id)
  if (direct?.kind === kind) {
    const later = failsSince(id, look, direct.id, known, rule)
    return later ?? decideValue({ ...direct, readings: [direct.id] }, direct.doubt, limits, rule, isOffset(id), false)
  }
  if (reading !== undefined) return unread({ kind: 'answer of another kind', expected: kind }, [reading.id])
  const byCount = measuredAtCount(look)
  if (look.orFrom === null) return byCount ?? unread({ kind: 'nobody looked' })
  const computed = computeValue(look.orFrom, lengths(lookup))
  if ('missing' in computed)
    return (
      byCount ??
      unread({ kind: 'readings missing', missing: computed.missing.map((of) => missingReading(of, postNumbers)) })
    )
  if ('sidesMixed' in computed) return unread({ kind: 'side not stated' }, computed.sidesMixed)
  return decideComputed(id, computed, limits, rule)
}

/**
 * How it fails by what it can be computed from, where all of that was read and some of it after the requirement itself:
 * what was measured before does not outrank what was found since.
 */
function failsSince(
  id: string,
  look: Extract<RequirementLook, { kind: 'measure' }>,
  direct: string,
  { lookup, order }: Known,
  rule: DecisionRule,
): Decided | null {
  if (look.orFrom === null) return null
  const inputs = inputsOf({ look }).map(lengths(lookup))
  const isLater = (read: KnownReading | null): boolean => read !== null && order.get(read.id)! > order.get(direct)!
  if (!inputs.some(isLater)) return null
  const computed = computeValue(look.orFrom, lengths(lookup))
  if ('missing' in computed || 'sidesMixed' in computed) return null
  const decided = decideComputed(id, computed, look.limits, rule)
  return decided.verdict === 'fails' ? decided : null
}

const lengths =
  (lookup: ReadValues): Lookup =>
  (of) => {
    const read = lookup(of)
    return read?.kind === 'length' ? read : null
  }

const decideComputed = (id: string, computed: ComputedValue, limits: Dimension<Unit>, rule: DecisionRule): Decided =>
  decideValue(computed, { fixed: computed.u, relative: 0 }, limits, rule, isOffset(id), true)

/** What was measured at the count, where it lies outside the limits: it can show a fault, and proves nothing right. */
function measuredAtCount({ limits, counted: value }: Extract<RequirementLook, { kind: 'measure' }>): Decided | null {
  const { low, high, unit } = limits
  const isInside = (low === 'notStated' || value! >= low) && (high === 'notStated' || value! <= high)
  if (value === undefined || isInside) return null
  return { verdict: 'fails', because: { kind: 'measured at the count', value, unit }, readings: [] }
}

function missingReading(of: string, postNumbers: ReadonlyMap<string, number>): MissingReading {
  const [place = '', quantity] = of.split('/')
  return { of, post: postNumbers.get(place) ?? null, what: quantity === 'along' ? 'along' : 'offset' }
}

/** An offset whose side nobody said is decided only where it fails on either side. */
function decideValue(
  { value, readings, hasSide }: ComputedValue,
  doubt: Doubt,
  limits: Dimension<Unit>,
  rule: DecisionRule,
  isSided: boolean,
  isComputed: boolean,
): Decided {
  const judge = (value: number): MeasuredVerdict | null => judgeMeasured(value, doubt, limits, rule, isComputed)
  const sided = ({ verdict, because }: MeasuredVerdict, side: 'stated' | 'not stated'): Decided => ({
    verdict,
    because: isSided ? { ...because, side } : because,
    readings,
  })
  const judged = judge(value)
  if (judged === null) return unread({ kind: 'no limit stated' }, readings)
  if (hasSide) return sided(judged, 'stated')
  const other = judge(-value)!
  if (judged.verdict !== 'fails' || other.verdict !== 'fails') return unread({ kind: 'side not stated' }, readings)
  return sided(judged.because.margin >= other.because.margin ? judged : other, 'not stated')
}

function decideChosen(look: Extract<RequirementLook, { kind: 'choose' }>, reading: Reading | undefined): Decided {
  if (reading === undefined) return wrongByCount(look) ?? unread({ kind: 'nobody looked' })
  const { answer } = reading
  const choice = answer.kind === 'choice' ? look.choices.find(({ id }) => id === answer.choice) : undefined
  if (choice === undefined) return unread({ kind: 'answer of another kind', expected: 'choice' }, [reading.id])
  return {
    verdict: choice.right ? 'meets' : 'fails',
    because: { kind: 'chosen', choice: choice.id, label: choice.label, right: choice.right },
    readings: [reading.id],
  }
}

/** What was counted, where it is wrong. Whoever looks at the piece itself says more than the count does. */
function wrongByCount({ choices, counted }: Extract<RequirementLook, { kind: 'choose' }>): Decided | null {
  const choice = choices.find(({ id }) => id === counted)
  if (choice === undefined || choice.right) return null
  return { verdict: 'fails', because: { kind: 'counted', id: choice.id, label: choice.label }, readings: [] }
}

function decideConfirmed(reading: Reading | undefined): Decided {
  if (reading === undefined) return unread({ kind: 'nobody looked' })
  if (reading.answer.kind !== 'confirmed')
    return unread({ kind: 'answer of another kind', expected: 'confirmation' }, [reading.id])
  const { yes } = reading.answer
  return { verdict: yes ? 'meets' : 'fails', because: { kind: 'confirmed', yes }, readings: [reading.id] }
}
