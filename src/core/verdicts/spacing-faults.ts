import type { RunModel } from '../requirements/run-model.ts'
import { exactLength, type LengthUnit, lengthIn } from '../units/exact-length.ts'
import { describeReason, measuredText } from './describe-reason.ts'
import { notProvable } from './height-remedy.ts'
import { findingOf, type Judged, type JudgedById } from './judged.ts'
import { misplacedStretches, type SpaceRead, type Stretch } from './misplaced-stretches.ts'
import { type Doubt, landing, type Proof, type Room, roomWithin, setOutSteps } from './proof.ts'
import type { RemedyStep } from './remedy.ts'
import type { Finding } from './verdict.ts'

interface ReadSpace extends SpaceRead {
  readonly unit: LengthUnit
  /** False where not even the nominal width could be proven with a reading like this one. */
  readonly isProvable: boolean
  /** Names of the instruments that could. */
  readonly would: readonly { readonly name: string }[]
}

/**
 * Posts that stand out of place, found from the spaces between them: each stretch of neighbouring posts that is off by
 * one amount is one finding, be it a single post, several, or all up to an end of the run.
 */
export function spacingFaults(model: RunModel, byId: JudgedById, proof: Proof): readonly Finding[] {
  const { posts } = model.layout
  const judged = posts.slice(1).map((_, i) => byId.get(`space-${i + 1}/spacing`)!)
  const spaces = judged.map((one) => readSpace(one, proof))
  const stretches = misplacedStretches(
    spaces,
    posts.map(({ state }) => state === 'standing'),
  )
  if (stretches !== null) return stretches.map((stretch) => stretchFinding(stretch, judged, spaces))
  return judged.filter(isFailing).map((one) => findingOf([one], withRule(one), [{ kind: 'lay out again' }]))
}

const isFailing = ({ verdict }: Judged): boolean => verdict.verdict === 'fails'

const withRule = ({ requirement, verdict }: Judged): string => `${describeReason(verdict.because)}. ${requirement.must}`

function readSpace(judged: Judged, proof: Proof): ReadSpace | null {
  const { requirement, verdict } = judged
  const { because } = verdict
  if (requirement.look.kind !== 'measure' || because.kind !== 'measured') return null
  const { limits } = requirement.look
  if (limits.nominal === 'notStated') return null
  const nominal = exactLength(limits.nominal, limits.unit)
  const excess = exactLength(because.value, because.unit) - nominal
  const roomOf = ({ guard, step }: Doubt): Room => {
    const { low, high } = roomWithin(limits, guard)
    return landing({ low: low - nominal, high: high - nominal }, excess, step)
  }
  const canProve = (doubt: Doubt): boolean => roomOf(doubt).low <= roomOf(doubt).high
  const own = proof.of(verdict, because)
  const isProvable = canProve(own)
  const would = isProvable ? [] : proof.instruments.filter(canProve)
  const doubt = isProvable ? own : (would[0] ?? { guard: 0, step: own.step })
  return {
    unit: limits.unit,
    excess,
    room: roomOf(doubt),
    setOut: setOutSteps(doubt.step, limits.unit),
    isFailing: isFailing(judged),
    isProvable,
    would,
  }
}

function stretchFinding(
  { from, to, by, boundaries, idFrom, reaches, unread, with: others }: Stretch,
  judged: readonly Judged[],
  spaces: readonly (ReadSpace | null)[],
): Finding {
  const lead = judged[idFrom]!
  const stands = [lead, ...boundaries.filter((i) => i !== idFrom).map((i) => judged[i]!)]
  const { unit } = spaces[idFrom]!
  const reasons = boundaries.map((i) => describeReason(judged[i]!.verdict.because))
  const far = measuredText(lengthIn(Math.abs(by), unit), unit)
  const posts = from === to ? `Post ${from} stands` : `Posts ${from} to ${to} stand`
  const what = reaches === null ? `${posts} ${far} out of place: ${reasons.join(', then ')}.` : withRule(lead)
  const doubtful = boundaries.map((i) => spaces[i]!).filter(({ isProvable }) => !isProvable)
  const steps: RemedyStep[] = [
    { kind: 'move posts', from, to, by: lengthIn(by, unit), unit, reaches, with: others },
    ...(doubtful.length === 0 ? [] : [notProvable(doubtful[0]!.would)]),
  ]
  if (unread.length > 0) {
    const requirements = unread.map((i) => judged[i]!.requirement.id)
    steps.unshift({ kind: 'measure first', what: 'spaces', requirements, from, to })
  }
  return findingOf(stands, what, steps)
}
