import type { Dimension, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import { type Instrument, instruments as shipped } from '../measurement/instruments.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { railLine } from '../staking/rail-line.ts'
import { exactLength, type Nanometres } from '../units/exact-length.ts'
import { inches } from '../units/quantity.ts'
import { exactValue, isSigned, kindOf, type Steps, type Unit } from '../units/quantity-kinds.ts'
import type { AsBuilt, StateAsBuilt } from './as-built.ts'
import { sureOf, usualInstrument } from './usual-instrument.ts'

/** The run built as the sheets ask: every piece where the layout has it, every value in the middle of what is allowed. */
export function soundAsBuilt(
  model: RunModel,
  requirements: readonly Requirement[],
  instruments: readonly Instrument[] = shipped,
): AsBuilt {
  const { layout } = model
  const byId = new Map(requirements.map((one) => [one.id, one]))
  const middleAt = (id: string): Steps | null => {
    const one = byId.get(id)
    return one?.look.kind === 'measure' ? middleOf(allowedValues(one, one.look.limits, instruments)) : null
  }
  const line = railLine(model)
  const awayAt = (along: number): Nanometres =>
    line.ok ? exactLength(line.value.awayAt(inches(along)) / inches(1), 'in') : 0
  const heightOn = ({ railHeight }: HardwareSheet): Nanometres =>
    middleOf(allowedValues({ topic: 'rail-height' }, railHeight, instruments))
  return {
    posts: layout.posts.map(({ id, alongInches, unit }) => ({
      id,
      along: exactLength(alongInches, 'in'),
      away: awayAt(alongInches),
      railHeight: heightOn(sheetOf(model, unit)),
      stubHeight: middleAt(`${id}/stub-height`),
    })),
    panels: layout.panels.map(({ id, inches: length }) => ({ id, inches: length, bow: 0 })),
    states: new Map(
      requirements.flatMap((one): [string, StateAsBuilt][] => {
        const state = ofPieces.has(one.topic) ? null : soundState(one, middleAt)
        return state === null ? [] : [[one.id, state]]
      }),
    ),
  }
}

/** Topics that follow from where posts stand and which panels hang. */
const ofPieces: ReadonlySet<string> = new Set([
  ...['rail-height', 'stub-height', 'flare-offset', 'straightness'],
  ...['spacing', 'panel-length', 'splice-position'],
])

function soundState({ id, look }: Requirement, middleAt: (id: string) => Steps | null): StateAsBuilt | null {
  switch (look.kind) {
    case 'record':
      return null
    case 'confirm':
      return { kind: 'confirmed', yes: true }
    case 'choose':
      return { kind: 'choice', choice: look.choices.find(({ right }) => right)!.id }
    case 'measure':
      return { kind: 'measured', value: middleAt(id)!, unit: look.limits.unit }
  }
}

/** Values that one reading with the usual instrument proves right; `nominal` is the one that the sheet names, if any. */
export interface AllowedValues {
  readonly low: Steps
  readonly high: Steps
  readonly nominal: Steps | null
}

/**
 * The values of a requirement that one reading with the usual instrument proves, as far off as a reading may be. Where one side has no limit, as far from the other as our judgement has it: an inch over a floor, nothing
 * under a ceiling of what is never below nothing.
 */
export function allowedValues(
  requirement: Pick<Requirement, 'topic'>,
  limits: Dimension<Unit>,
  instruments: readonly Instrument[],
): AllowedValues {
  const instrument = usualInstrument(requirement, limits, instruments)
  const bound = (limit: number | 'notStated', inward: 1 | -1): Steps | null => {
    if (limit === 'notStated') return null
    const at = exactValue(limit, limits.unit)
    return at + inward * sureOf(instrument, at)
  }
  const [low, high] = [bound(limits.low, 1), bound(limits.high, -1)]
  const lowest = isSigned(kindOf(limits.unit)) && high !== null ? -Math.abs(high) : 0
  return {
    low: low ?? Math.min(lowest, high ?? 0),
    high: high ?? (low ?? 0) + exactValue(1, limits.unit),
    nominal: limits.nominal === 'notStated' ? null : exactValue(limits.nominal, limits.unit),
  }
}

/** The nominal value, or else the middle of those that are proven. */
export const middleOf = ({ low, high, nominal }: AllowedValues): Steps => nominal ?? Math.round((low + high) / 2)
