/**
 * A UUID of version 7: unique everywhere, and sorting by the time at which it was made.
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
