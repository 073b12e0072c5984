import type { Requirement } from '../core/requirements/requirement.ts'
import { currentReadings } from '../core/verdicts/judge-requirements.ts'
import { recordHash } from '../documents/record-hash.ts'
import type { SignedVersion } from '../documents/signature-lines.ts'
import type { EntryOf, SignOffBody } from '../formats/entry/entry-kinds.ts'
import type { JudgedRun } from './judge-readings.ts'

/**
 * The text whose SHA-256 names the record as it stands. Where a hash is awaited, as in a browser, the caller makes it
 * of this text.
 */
export const recordText = (judged: JudgedRun): string => recordHash(judged, (text) => text)

/**
 * Hold points that were read and not set aside, and of which there is no photo. They keep a run from being signed, not
 * from being built.
 * @param photographed ids of the requirements that a photo shows
 */
export function holdsWithoutPhoto(judged: JudgedRun, photographed: ReadonlySet<string>): readonly Requirement[] {
  const current = currentReadings(judged.readings)
  return judged.requirements.filter(({ id, hold }) => {
    if (!hold || photographed.has(id)) return false
    const reading = current.get(id)
    return reading === undefined || (reading.photos.length === 0 && reading.answer.kind !== 'does not apply')
  })
}

/** Every signature under the run, the latest first. A signed version stays, whatever is read later. */
export function signedVersions(
  signatures: readonly EntryOf<SignOffBody>[],
  judged: JudgedRun,
  hash: string,
): readonly SignedVersion[] {
  return signatures
    .map((signed, i) => {
      const at = judged.readings.findIndex(({ id }) => id === signed.body.upTo)
      return {
        version: i + 1,
        signed,
        readingsSince: at === -1 ? null : judged.readings.length - 1 - at,
        isCurrent: signed.body.recordHash === hash,
      }
    })
    .toReversed()
}

/** What a signature takes in last: the last reading, or the run itself when nothing was read. */
export const lastTakenIn = (judged: JudgedRun, run: string): string => judged.readings.at(-1)?.id ?? run
