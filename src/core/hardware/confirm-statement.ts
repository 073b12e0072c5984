import type { Cited, HardwareSheet, Source } from './hardware-sheet.ts'
import { withEach } from './sheet-paths.ts'
import { isCited } from './sheet-statements.ts'

/** By whom, from which document and where in it a statement was checked. */
export interface Confirming {
  readonly document: Source
  readonly page: string
  readonly by: string
  /** ISO 8601 day. */
  readonly on: string
}

/**
 * The sheet with the statement at `place` published in a document that somebody checked it in; what is stated stays as it is,
 * and so does all else.
 * @throws RangeError when nothing with a source stands there
 */
export function confirmStatement(sheet: HardwareSheet, place: string, confirming: Confirming): HardwareSheet {
  const { document, page, by, on } = confirming
  const source = keyOf(sheet, document)
  let isFound = false
  const confirmed = withEach(sheet, (value, at) => {
    if (at !== place || !isCited(value)) return value
    isFound = true
    return { ...value, source, confirmation: 'published', checked: { by, page, on } } satisfies Cited
  })
  if (!isFound) throw new RangeError(`the sheet states nothing with a source at ${place}`)
  return { ...confirmed, sources: { ...sheet.sources, [source]: document } }
}

/** The key under which the sheet has the document, or a new one. */
function keyOf({ sources }: HardwareSheet, { title, edition }: Source): string {
  const known = Object.keys(sources).find((key) => sources[key]?.title === title && sources[key]?.edition === edition)
  if (known !== undefined) return known
  let n = 1
  while (`document${n}` in sources) n += 1
  return `document${n}`
}
