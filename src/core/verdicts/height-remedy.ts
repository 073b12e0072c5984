import type { Dimension } from '../hardware/hardware-sheet.ts'
import { type Doubt, noDoubt } from '../measurement/doubt.ts'
import type { Instrument } from '../measurement/instruments.ts'
import type { Place } from '../requirements/requirement.ts'
import { exactLength, type LengthUnit, lengthIn, type Nanometres } from '../units/exact-length.ts'
import { chooseChange, type HowRead, type Proof, type Room, readableRoom, roomWithin } from './proof.ts'
import type { RemedyStep, ResetPost } from './remedy.ts'

/** How far blocks may be raised on their posts. */
const blockRaiseInches = 3
/** @source Midwest Roadside Safety Facility, public answer 1459: up to 3 in customary, quoting FHWA; published */

export interface HeightReading extends HowRead {
  readonly value: Nanometres
  readonly limits: Dimension
}

/**
 * What to do about a rail or a stub at the wrong height at one post: raising or lowering the post moves both, so both
 * have to come right together and so far inside their limits that reading them again proves it, or the post has to be
 * reset.
 * @param unread  which of the two the post has and nobody measured
 */
export function heightRemedy(
  { id, number: post }: Pick<Place, 'id' | 'number'>,
  rail: HeightReading | null,
  stub: HeightReading | null,
  unread: 'rail' | 'stub' | null,
  proof: Proof,
): readonly RemedyStep[] {
  const { unit } = (rail ?? stub)!.limits
  const moves = (guards: { readonly rail: Doubt; readonly stub: Doubt }): Room => {
    const [one, other] = [movesOf(rail, guards.rail), movesOf(stub, guards.stub)]
    return { low: Math.max(one.low, other.low), high: Math.min(one.high, other.high) }
  }
  const plain = moves({ rail: noDoubt, stub: noDoubt })
  const own = { moves: moves({ rail: rail?.guard ?? noDoubt, stub: stub?.guard ?? noDoubt }), step: stepOf(rail, stub) }
  const change = (room: Room, step: Nanometres) => chooseChange(room, wanted(rail, stub), step, unit)
  const would = proof
    .instrumentsFor((rail ?? stub)!.limits)
    .map(({ name, guard, step }) => ({ name, moves: moves({ rail: guard, stub: guard }), step }))
    .filter((one) => change(one.moves, one.step) !== null)
  const first: RemedyStep[] =
    unread === null
      ? []
      : [
          {
            kind: 'measure first',
            what: unread,
            requirements: [`${id}/${unread}-height`],
            from: post,
            to: post,
            using: null,
          },
        ]
  const heights = [...(rail === null ? [] : [`${id}/rail-height`]), ...(stub === null ? [] : [`${id}/stub-height`])]
  const isProven = change(own.moves, own.step) !== null
  if (rail !== null && stub !== null && !isProven && would.length === 0) {
    const because = plain.low > plain.high ? whyNoMove(rail, stub, unit) : null
    return [...first, { kind: 'reset post', post, because }, ...proofAfterReset(heights, rail, stub, proof)]
  }
  const room = isProven ? own : (would[0] ?? { moves: plain, step: own.step })
  const by = change(room.moves, room.step) ?? (plain.low + plain.high) / 2
  // A coarse reading does not say how far to move where the room is no wider than its own step.
  if (!isProven && would.length > 0 && room.moves.high - room.moves.low < 2 * own.step)
    return [
      ...first,
      { kind: 'measure first', what: 'finely', requirements: heights, from: post, to: post, using: would[0]!.name },
    ]
  const holds = readableRoom(room.moves, unit)
  const raise: RemedyStep = {
    kind: 'raise post',
    post,
    by: lengthIn(by, unit),
    unit,
    railThen: rail === null ? null : lengthIn(rail.value + by, unit),
    stubThen: stub === null ? null : lengthIn(stub.value + by, unit),
    holds:
      holds.from !== null && holds.to !== null && holds.from < holds.to ? { from: holds.from, to: holds.to } : null,
    blockUpTo:
      stub === null && unread === null && unit === 'in' && by > 0 && lengthIn(by, unit) <= blockRaiseInches
        ? blockRaiseInches
        : null,
  }
  return [...first, raise, ...(isProven ? [] : [notProvable(heights, would)])]
}

export const notProvable = (
  requirements: readonly string[],
  would: readonly Pick<Instrument, 'name'>[],
): RemedyStep => ({ kind: 'not provable', requirements, would: would.map(({ name }) => name) })

const movesOf = (reading: HeightReading | null, guard: Doubt): Room => {
  if (reading === null) return { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }
  const { low, high } = roomWithin(reading.limits, guard)
  return { low: low - reading.value, high: high - reading.value }
}

const stepOf = (rail: HeightReading | null, stub: HeightReading | null): Nanometres =>
  Math.max(rail?.step ?? 0, stub?.step ?? 0)

/** Nothing where readings like these can prove a rail and a stub that stand where they should. */
function proofAfterReset(
  heights: readonly string[],
  rail: HeightReading,
  stub: HeightReading,
  proof: Proof,
): readonly RemedyStep[] {
  const leaveRoom = (railGuard: Doubt, stubGuard: Doubt): boolean =>
    [roomWithin(rail.limits, railGuard), roomWithin(stub.limits, stubGuard)].every(({ low, high }) => low <= high)
  if (leaveRoom(rail.guard, stub.guard)) return []
  return [
    notProvable(
      heights,
      proof.instrumentsFor(rail.limits).filter(({ guard }) => leaveRoom(guard, guard)),
    ),
  ]
}

/** The move that brings the rail to its nominal height, or to the middle of its limits, or to the limit. */
function wanted(rail: HeightReading | null, stub: HeightReading | null): Nanometres {
  if (rail === null) return roomWithin(stub!.limits, noDoubt).high - stub!.value
  const { nominal, unit } = rail.limits
  if (nominal !== 'notStated') return exactLength(nominal, unit) - rail.value
  const { low, high } = roomWithin(rail.limits, noDoubt)
  const middle = Number.isFinite(low) && Number.isFinite(high) ? (low + high) / 2 : Number.isFinite(low) ? low : high
  return middle - rail.value
}

function whyNoMove(rail: HeightReading, stub: HeightReading, unit: LengthUnit): ResetPost['because'] {
  const railRoom = roomWithin(rail.limits, noDoubt)
  const stubRoom = roomWithin(stub.limits, noDoubt)
  const isRailRight = rail.value >= railRoom.low && rail.value <= railRoom.high
  const move = isRailRight ? nearestIn(stubRoom, stub.value) - stub.value : nearestIn(railRoom, rail.value) - rail.value
  const stubThen = stub.value + move
  return {
    unit,
    brings: isRailRight ? 'stub' : 'rail',
    move: lengthIn(move, unit),
    railThen: lengthIn(rail.value + move, unit),
    stubThen: lengthIn(stubThen, unit),
    stubLimit: lengthIn(nearestIn(stubRoom, stubThen), unit),
  }
}

const nearestIn = ({ low, high }: Room, value: Nanometres): Nanometres => Math.min(Math.max(value, low), high)
