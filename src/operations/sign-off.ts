import type { Requirement } from '../core/requirements/requirement.ts'
import { currentReadings } from '../core/verdicts/judge-requirements.ts'
import { setAsideIn } from '../core/verdicts/set-aside.ts'
import { firstRecordHash, recordHash } from '../documents/record-hash.ts'
import type { SignedVersion } from '../documents/signature-lines.ts'
import type { EntryOf } from '../formats/entry/entry-kinds.ts'
import type { SignOff } from '../formats/entry/sign-off.ts'
import type { JudgedRun } from './judge-readings.ts'

/**
 * The text whose SHA-256 names the record as it stands. Where a hash is awaited, as in a browser, the caller makes it
 * of this text.
 */
export const recordText = (judged: JudgedRun): string => recordHash(judged, (text) => text)

/** The same as signatures name it that were given before runs held their layout; null where there can be none. */
export const firstRecordText = (judged: JudgedRun): string | null =>
  judged.firstAsked === null ? null : firstRecordHash(judged, judged.firstAsked, (text) => text)

/**
 * Hold points that were read and not set aside, and of which there is no photo. They keep a run from being signed, not
 * from being built.
 * @param photographed ids of the requirements that a photo shows
 */
export function holdsWithoutPhoto(judged: JudgedRun, photographed: ReadonlySet<string>): readonly Requirement[] {
  const current = currentReadings(judged.readings)
  const aside = new Set(setAsideIn(judged.judgement.verdicts).map(({ requirement }) => requirement))
  return judged.requirements.filter(({ id, hold }) => {
    if (!hold || photographed.has(id) || aside.has(id)) return false
    return (current.get(id)?.photos.length ?? 0) === 0
  })
}

/**
 * Every signature under the run, the latest first. A signed version stays, whatever is read later.
 * @param hashes  the names of the record as it stands: today's, and that of before runs held their layout
 */
export function signedVersions(
  signatures: readonly EntryOf<SignOff>[],
  judged: JudgedRun,
  hashes: readonly string[],
): readonly SignedVersion[] {
  const here = new Set(judged.log.map(({ id }) => id))
  return signatures
    .map((signed, i) => {
      const { readings, recordHash } = signed.body
      const isAtHand = readings?.every((id) => here.has(id)) ?? false
      return {
        version: i + 1,
        signed,
        readingsSince: readings !== null && isAtHand ? here.size - readings.length : null,
        isCurrent: hashes.includes(recordHash),
      }
    })
    .toReversed()
}
