import { chainOf } from '../core/record/version.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import { timeText } from './printed-time.ts'
import { documentWords } from './words/document-words.ts'

/** Who made a version of a run, and when. */
export interface VersionMade {
  readonly id: string
  readonly author: string
  /** ISO 8601. */
  readonly capturedAt: string
}

/**
 * Why each version of a run was made, in sentences, where somebody wrote it; by whom and when only where that is at hand:
 * the run itself does not hold it.
 */
export function versionReasons({ version }: RunFile, made: readonly VersionMade[], print: Print): readonly string[] {
  if (version === undefined) return []
  const ids = chainOf(version)
  const { versionReason } = documentWords(print).record
  return version.earlier.flatMap(({ because }, i) => {
    if (because === undefined) return []
    const maker = made.find(({ id }) => id === ids[i + 1])
    const by = maker === undefined ? null : `${print.theirs(maker.author)}, ${timeText(maker.capturedAt)}`
    return [versionReason(i + 2, print.theirs(because), by)]
  })
}
