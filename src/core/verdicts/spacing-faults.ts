import { measuresLength } from '../hardware/measures-length.ts'
import type { LayoutPost } from '../layout/layout.ts'
import { type Doubt, noDoubt } from '../measurement/doubt.ts'
import type { Instrument } from '../measurement/instruments.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { exactLength, type LengthUnit, lengthIn } from '../units/exact-length.ts'
import { notProvable } from './height-remedy.ts'
import { againstRule, findingOf, type Judged, type JudgedById } from './judged.ts'
import { misplacedStretches, type SpaceRead, type Stretch } from './misplaced-stretches.ts'
import { type HowRead, landing, type Proof, type Room, roomWithin, setOutSteps } from './proof.ts'
import type { RemedyStep } from './remedy.ts'
import type { Finding, FoundPart } from './verdict.ts'

interface ReadSpace extends SpaceRead {
  readonly unit: LengthUnit
  /** False where not even the nominal width could be proven with a reading like this one. */
  readonly isProvable: boolean
  /** Names of the instruments that could. */
  readonly would: readonly Pick<Instrument, 'name'>[]
}

/**
 * Posts that stand out of place, found from the spaces between them: each stretch of neighbouring posts that is off by
 * one amount is one finding, be it a single post, several, or all up to an end of the run.
 */
export function spacingFaults(model: RunModel, byId: JudgedById, proof: Proof): readonly Finding[] {
  const { posts, spaces: places } = model.layout
  // A space between posts of an end that nobody knows is asked nothing.
  const judged = places.map(({ id }) => byId.get(`${id}/spacing`))
  const spaces = judged.map((one) => (one === undefined ? null : readSpace(one, proof)))
  const stretches = misplacedStretches(
    spaces,
    posts.map(({ state }) => state === 'standing'),
  )
  if (stretches !== null) {
    const named = new Map<number, Stretch[]>()
    for (const stretch of stretches) named.set(stretch.idFrom, [...(named.get(stretch.idFrom) ?? []), stretch])
    return [...named].map(([idFrom, some]) => spaceFinding(idFrom, some, judged, spaces, posts))
  }
  const unread = spaces.flatMap((space, i) => (space === null ? [i] : []))
  return judged
    .filter((one) => one !== undefined)
    .filter(isFailing)
    .map((one) => findingOf([one], [againstRule(one)], [...measureSteps(unread, judged), { kind: 'lay out again' }]))
}

const isFailing = ({ verdict }: Judged): boolean => verdict.verdict === 'fails'

function readSpace(judged: Judged, proof: Proof): ReadSpace | null {
  const { requirement, verdict } = judged
  const { because } = verdict
  if (requirement.look.kind !== 'measure' || because.kind !== 'measured') return null
  const { limits } = requirement.look
  if (limits.nominal === 'notStated' || !measuresLength(limits)) return null
  const nominal = exactLength(limits.nominal, limits.unit)
  const excess = exactLength(because.value, limits.unit) - nominal
  const excessesWithin = (guard: Doubt): Room => {
    const { low, high } = roomWithin(limits, guard)
    return { low: low - nominal, high: high - nominal }
  }
  const roomOf = ({ guard, step }: HowRead): Room => landing(excessesWithin(guard), excess, step)
  const canProve = (doubt: HowRead): boolean => roomOf(doubt).low <= roomOf(doubt).high
  const own = proof.of(verdict, because)
  const isProvable = canProve(own)
  const would = isProvable ? [] : proof.instrumentsFor(limits).filter(canProve)
  const doubt = isProvable ? own : (would[0] ?? { guard: noDoubt, step: own.step })
  return {
    unit: limits.unit,
    excess,
    room: roomOf(doubt),
    limits: excessesWithin(noDoubt),
    setOut: setOutSteps(doubt.step, limits.unit),
    isFailing: isFailing(judged),
    isProvable,
    would,
  }
}

/** One space names the posts up to the first end and those after it: where both are out of place, that is one finding. */
function spaceFinding(
  idFrom: number,
  stretches: readonly Stretch[],
  judged: readonly (Judged | undefined)[],
  spaces: readonly (ReadSpace | null)[],
  posts: readonly LayoutPost[],
): Finding {
  const boundaries = [...new Set([idFrom, ...stretches.flatMap((stretch) => stretch.boundaries)])]
  const unread = [...new Set(stretches.flatMap((stretch) => stretch.unread))].sort((a, b) => a - b)
  const doubtful = boundaries.filter((i) => !spaces[i]!.isProvable)
  const read = doubtful.map((i) => judged[i]!.requirement.id)
  const { unit } = spaces[idFrom]!
  return findingOf(
    boundaries.map((i) => judged[i]!),
    stretches.map((stretch) => whatOf(stretch, judged, unit)),
    [
      ...measureSteps(unread, judged),
      ...stretches.map((stretch) => moveStep(stretch, unit, posts)),
      ...(doubtful.length === 0 ? [] : [notProvable(read, spaces[doubtful[0]!]!.would)]),
    ],
  )
}

function whatOf(
  { from, to, by, boundaries, reaches }: Stretch,
  judged: readonly (Judged | undefined)[],
  unit: LengthUnit,
): FoundPart {
  if (reaches !== null) return againstRule(judged[boundaries[0]!]!)
  const because = boundaries.map((i) => judged[i]!.verdict.because)
  return { kind: 'posts out of place', from, to, by: lengthIn(Math.abs(by), unit), unit, because }
}

const moveStep = (
  { from, to, by, reaches, with: others }: Stretch,
  unit: LengthUnit,
  posts: readonly LayoutPost[],
): RemedyStep => ({
  kind: 'move posts',
  from,
  to,
  by: lengthIn(by, unit),
  unit,
  reaches,
  with: others,
  newSlotAt: posts.find(({ number, state }) => state === 'moved' && number >= from && number <= to)?.number ?? null,
})

function measureSteps(unread: readonly number[], judged: readonly (Judged | undefined)[]): readonly RemedyStep[] {
  const places = unread.flatMap((i) => judged[i]?.requirement ?? [])
  if (places.length === 0) return []
  const [from, to] = [places[0]!, places[places.length - 1]!].map(({ place }) => place.number)
  return [
    {
      kind: 'measure first',
      what: 'spaces',
      requirements: places.map(({ id }) => id),
      from: from!,
      to: to!,
      using: null,
    },
  ]
}
