/**
 * A UUID of version 7: unique everywhere, and sorting by `time`.
 *
 * @param time    milliseconds since 1970, by the maker's clock
 * @param random  ten random bytes
 * @source RFC 9562, 5.7: 48 bits of time, then random bits around version 7 and variant 2
 */
export function entryId(time: number, random: Uint8Array): string {
  if (random.length !== 10) throw new RangeError(`an id takes 10 random bytes, got ${random.length}`)
  if (!Number.isSafeInteger(time) || time < 0) throw new RangeError(`time must be milliseconds since 1970, got ${time}`)
  const rest = Uint8Array.from(random)
  rest[0] = 0x70 | (rest[0]! & 0x0f)
  rest[2] = 0x80 | (rest[2]! & 0x3f)
  const digits =
    time.toString(16).padStart(12, '0') + [...rest].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}

/**
 * An id that sorts after every one of `known`: what is written down knowing of another entry follows it, however wrong
 * the writer's clock is. Entries of a run count on from the id of the run in this way, so that their order is that of
 * who knew of what; the time in such an id is a count and not a time.
 *
 * @param known   ids that the writer had seen; those of another make, or beyond all counting, are passed over
 * @param random  ten random bytes
 */
export function entryIdAfter(known: readonly string[], random: Uint8Array): string {
  return entryId(latestOf(known) + 1, random)
}

/** As `entryId` makes them. */
export const entryIdForm = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/

/**
 * How far ahead of every other id of its run an id may be. Devices count on by one from what they saw, so that one this
 * far ahead was counted by none; were it taken in, all that follows it would have to be further ahead still, and after
 * some thousands of them nothing could be. Our judgement: more entries than anybody makes, or three years of a clock.
 */
const furthestAhead = 100_000_000_000

/** Beyond this no id counts: half of what 48 bits hold, in the year 6429 as a time. */
const highestCount = 2 ** 47

/** Whether `id` is too far ahead of `known`, the ids of its run that were there before, that of the run among them. */
export const isTooFarAhead = (id: string, known: readonly string[]): boolean =>
  countIn(id) > latestOf(known) + furthestAhead

/** Whether a run may have this id, from which the ids of its entries count on: no clock is past the year 2100. */
export const isRunIdTooLate = (id: string): boolean => countIn(id) >= Date.UTC(2101, 0, 1)

const latestOf = (ids: readonly string[]): number =>
  ids.map(countIn).reduce((latest, count) => (count < highestCount ? Math.max(latest, count) : latest), 0)

/** The 48 bits of time of a UUID of version 7; 0 of any other text. */
function countIn(id: string): number {
  const [, high, low] = /^([0-9a-f]{8})-([0-9a-f]{4})-7/.exec(id) ?? []
  return high === undefined ? 0 : Number.parseInt(high + low, 16)
}
