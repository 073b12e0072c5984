import type { Reading } from '../core/measurement/reading.ts'
import type { FreeFinding } from '../core/verdicts/free-findings.ts'
import type { PhotoHashes } from '../documents/photo-lines.ts'
import type { PhotoBody } from '../formats/entry/entry-kinds.ts'

/** A photo as the readings name it, with the file that holds it. */
export interface NamedPhoto {
  readonly photo: string
  readonly file: string
  readonly bytes: Uint8Array
}

/** Every photo that readings or free findings name or that was entered, once, in their order. */
export const photosNamed = (
  readings: readonly Reading[],
  free: readonly FreeFinding[],
  entered: readonly { readonly body: Pick<PhotoBody, 'sha256'> }[],
): readonly string[] => [
  ...new Set([
    ...readings.flatMap(({ photos }) => photos),
    ...free.flatMap(({ photos, closed }) => [...photos, ...(closed?.photos ?? [])]),
    ...entered.map(({ body }) => body.sha256),
  ]),
]

/**
 * What is known of the photos of these names. A device names a photo by its SHA-256, which stands where the photo is not
 * at hand; by another name it is known by its bytes alone.
 * @param atHand  the SHA-256 of each photo that is at hand, by its name
 */
export const photoHashes = (names: readonly string[], atHand: ReadonlyMap<string, string>): PhotoHashes =>
  Object.fromEntries(names.map((name) => [name, atHand.get(name) ?? (/^[0-9a-f]{64}$/.test(name) ? name : null)]))
