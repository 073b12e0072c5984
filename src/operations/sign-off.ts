import type { Requirement } from '../core/requirements/requirement.ts'
import { currentReadings } from '../core/verdicts/judge-requirements.ts'
import { setAsideIn } from '../core/verdicts/set-aside.ts'
import type { SignedVersion } from '../documents/signature-lines.ts'
import type { EntryOf } from '../formats/entry/entry-kinds.ts'
import type { HashRule, SignOff } from '../formats/entry/sign-off.ts'
import type { JudgedRun } from './judge-readings.ts'

/**
 * Hold points of which there is no photo, and that were not set aside. They keep a run from being signed, not from being
 * built. Of standing work, whose ground was closed before anybody looked, one that could not be seen is none of them: it
 * stands among what is not proven.
 * @param photographed ids of the requirements that a photo shows
 */
export function holdsWithoutPhoto(judged: JudgedRun, photographed: ReadonlySet<string>): readonly Requirement[] {
  const current = currentReadings(judged.readings)
  const aside = new Set(setAsideIn(judged.judgement.verdicts).map(({ requirement }) => requirement))
  return judged.requirements.filter(({ id, hold }) => {
    if (!hold || photographed.has(id) || aside.has(id)) return false
    const reading = current.get(id)
    if (judged.run.work === 'standing' && reading?.answer.kind === 'cannot see') return false
    return (reading?.photos.length ?? 0) === 0
  })
}

/**
 * Every signature under the run, the latest first. A signed version stays, whatever is read later.
 * @param hashes  of the record as it stands, by each rule; null where there is none, or not yet
 */
export function signedVersions(
  signatures: readonly EntryOf<SignOff>[],
  judged: JudgedRun,
  hashes: Readonly<Record<HashRule, string | null>>,
): readonly SignedVersion[] {
  const here = new Set(judged.log.map(({ id }) => id))
  return signatures
    .map((signed, i) => {
      const { readings, recordHash, hashRule } = signed.body
      const isAtHand = readings?.every((id) => here.has(id)) ?? false
      return {
        version: i + 1,
        signed,
        readingsSince: readings !== null && isAtHand ? here.size - readings.length : null,
        isCurrent: hashes[hashRule] === recordHash,
      }
    })
    .toReversed()
}
