/** Texts of one output that are not said yet: where they are written, why, and how many there are at most. */
export interface KnownUnsaid {
  readonly from: string
  readonly why: string
  readonly most: number
}

const requirements = 'texts of requirements, places, sheets and instruments are prose of core'
const documents = 'headings, table heads and sentences of documents are written in them'

/**
 * Everything that is known to be left in English whatever language is asked for. This list only becomes shorter: a number
 * goes down with what is said, and an output that says all of its texts goes.
 */
const knownUnsaid: Readonly<Record<string, KnownUnsaid>> = {
  // Names of languages, dates and what people wrote are among them.
  screens: { from: 'src/web/', why: requirements, most: 9 },
  'crew-sheet.pdf': { from: 'src/documents/crew-sheet-*.ts', why: `${documents}; ${requirements}`, most: 3 },
  'record.pdf': { from: 'src/documents/pdf/record-template.ts', why: `${documents}; ${requirements}`, most: 7 },
  'as-built.pdf': { from: 'src/documents/pdf/as-built.ts', why: `${documents}; ${requirements}`, most: 5 },
  'quantities.pdf': { from: 'src/documents/pdf/quantities.ts', why: documents, most: 9 },
  'quantities.xlsx': { from: 'src/documents/xlsx/', why: requirements, most: 31 },
  workbook: { from: 'src/documents/xlsx/', why: requirements, most: 29 },
  'material-list.pdf': { from: 'src/documents/pdf/material-list.ts', why: documents, most: 8 },
}

/** What of the texts found unsaid is more than is known; and a word where it has become less, so that the list follows. */
export function unknownOf(output: string, found: readonly string[]): readonly string[] {
  const alike = [...new Set(found.map((text) => text.replace(/\d+/g, '#')))]
  const most = knownUnsaid[output]?.most ?? 0
  if (alike.length > most) return [`${output}: ${alike.length} texts are not said, ${most} are known`, ...alike]
  if (alike.length < most) return [`${output}: ${alike.length} texts are not said; the list of the known says ${most}`]
  return []
}
