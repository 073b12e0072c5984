import { lengthText } from '../hardware/dimension-text.ts'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import type { LengthUnit } from '../units/exact-length.ts'

/** How far blocks may be raised on their posts. */
const blockRaiseInches = 3
/** @source Midwest Roadside Safety Facility, public answer 1459: up to 3 in customary, quoting FHWA; published */

export interface HeightReading {
  readonly value: number
  readonly limits: Dimension
}

/**
 * What to do about a rail or a stub at the wrong height at one post: raising or lowering the post moves both, so both
 * have to come right together, or the post has to be reset. Values in the limits' own unit, the same for both.
 */
export function heightRemedy(
  post: string,
  rail: HeightReading | null,
  stub: HeightReading | null,
  stubUnread: boolean,
): string {
  const unit = (rail ?? stub)!.limits.unit
  const least = Math.max(
    rail === null ? Number.NEGATIVE_INFINITY : lowOf(rail) - rail.value,
    stub === null ? Number.NEGATIVE_INFINITY : lowOf(stub) - stub.value,
  )
  const most = Math.min(
    rail === null ? Number.POSITIVE_INFINITY : highOf(rail) - rail.value,
    stub === null ? Number.POSITIVE_INFINITY : highOf(stub) - stub.value,
  )
  if (least > most) return impossible(post, rail!, stub!, unit)
  const move = roundToEighth(aim(wanted(rail, stub), least, most), least, most)
  const after = [
    rail === null ? '' : `rail then at ${lengthText(rail.value + move, unit)}`,
    stub === null ? '' : `stub at ${lengthText(stub.value + move, unit)}`,
  ]
  const first = stubUnread ? 'Measure the stub first: raising the post raises it too. ' : ''
  const ground = rail === null || move > 0 ? '' : ' Check first that finish grade is right.'
  return `${first}${movement(post, move, unit)}: ${after.filter((text) => text !== '').join(', ')}${allowedRange(least, most, unit)}.${ground}${byBlock(stub, stubUnread, move, unit)}`
}

const lowOf = ({ limits }: HeightReading): number =>
  limits.low === 'notStated' ? Number.NEGATIVE_INFINITY : limits.low
const highOf = ({ limits }: HeightReading): number =>
  limits.high === 'notStated' ? Number.POSITIVE_INFINITY : limits.high

/** The move that brings the rail to its nominal height, or to the middle of its limits, or to the limit. */
function wanted(rail: HeightReading | null, stub: HeightReading | null): number {
  if (rail === null) return highOf(stub!) - stub!.value
  const { nominal } = rail.limits
  if (nominal !== 'notStated') return nominal - rail.value
  const [low, high] = [lowOf(rail), highOf(rail)]
  const middle = Number.isFinite(low) && Number.isFinite(high) ? (low + high) / 2 : Number.isFinite(low) ? low : high
  return middle - rail.value
}

/** The wanted move where it is allowed; else the middle of what is, so that the next reading is not too close. */
function aim(move: number, least: number, most: number): number {
  if (move >= least && move <= most) return move
  if (Number.isFinite(least) && Number.isFinite(most)) return (least + most) / 2
  return move < least ? least : most
}

function roundToEighth(move: number, least: number, most: number): number {
  const rounded = Math.round(move * 8) / 8
  return rounded >= least && rounded <= most ? rounded : move
}

const movement = (post: string, move: number, unit: LengthUnit): string =>
  move >= 0 ? `Raise ${post} by ${lengthText(move, unit)}` : `Lower ${post} by ${lengthText(-move, unit)}`

function allowedRange(least: number, most: number, unit: LengthUnit): string {
  if (!Number.isFinite(least) || !Number.isFinite(most)) return ''
  const signed = (move: number): string => `${move < 0 ? 'down' : 'up'} ${lengthText(Math.abs(move), unit)}`
  return ` (anything from ${signed(least)} to ${signed(most)} holds)`
}

function byBlock(stub: HeightReading | null, stubUnread: boolean, move: number, unit: LengthUnit): string {
  if (stub !== null || stubUnread || unit !== 'in' || move <= 0 || move > blockRaiseInches) return ''
  return ` Or raise the block on the post by as much (up to ${blockRaiseInches} in is customary; drill or punch the new hole, no torch).`
}

function impossible(post: string, rail: HeightReading, stub: HeightReading, unit: LengthUnit): string {
  const railMove = rail.value < lowOf(rail) ? lowOf(rail) - rail.value : highOf(rail) - rail.value
  const stubAfter = stub.value + railMove
  const way = railMove >= 0 ? 'Raising' : 'Lowering'
  const what =
    rail.value >= lowOf(rail) && rail.value <= highOf(rail)
      ? `Lowering ${post} until the stub is at ${lengthText(highOf(stub), unit)} would put the rail at ${lengthText(rail.value - (stub.value - highOf(stub)), unit)}`
      : `${way} ${post} until the rail is at ${lengthText(rail.value + railMove, unit)} would put the stub at ${lengthText(stubAfter, unit)}, over ${lengthText(highOf(stub), unit)}`
  return `${what}: no move of the post brings rail and stub right together. Reset the post, or bring finish grade to where both hold.`
}
