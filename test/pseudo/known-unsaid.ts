/** Texts of one output that are not said yet: where they are written, why, and how many there are at most. */
export interface KnownUnsaid {
  readonly from: string
  readonly why: string
  readonly most: number
}

/**
 * Everything that is known to be left in English whatever language is asked for. This list only becomes shorter: a number
 * goes down with what is said, and an output that says all of its texts goes.
 */
const knownUnsaid: Readonly<Record<string, KnownUnsaid>> = {}

/** What of the texts found unsaid is more than is known; and a word where it has become less, so that the list follows. */
export function unknownOf(output: string, found: readonly string[]): readonly string[] {
  const alike = [...new Set(found.map((text) => text.replace(/\d+/g, '#')))]
  const most = knownUnsaid[output]?.most ?? 0
  if (alike.length > most) return [`${output}: ${alike.length} texts are not said, ${most} are known`, ...alike]
  if (alike.length < most) return [`${output}: ${alike.length} texts are not said; the list of the known says ${most}`]
  return []
}
