import type { SheetListContents } from '../sheet-list-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** The list of what is to be confirmed as PDF, with room to write page and what is otherwise by hand. */
export const writeSheetList = (contents: SheetListContents, printing: DocumentPrinting): Promise<Uint8Array> =>
  setDocument(
    template,
    { ...contents, words: documentWords(printing.print).sheetList },
    { pages: [], figures: [] },
    printing,
  )

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)

#doc.words.how

*#doc.left*

#block(breakable: false, above: 10pt, table(
  columns: (1fr, 130pt, 90pt),
  rows: (auto, 26pt),
  stroke: 0.5pt + luma(110),
  heads(doc.words.document, doc.words.by, doc.words.date),
  [], [], [],
))

#if doc.lines.len() > 0 { table(
  columns: (1.2fr, 1fr, 44pt, 120pt),
  inset: (x: 4pt, y: 5pt),
  stroke: 0.5pt + luma(110),
  heads(doc.words.states, doc.words.requires, doc.words.page, doc.words.otherwise),
  ..doc.lines.map(line => (
    [*#line.about* #if line.isFromMemory [#not-confirmed] #for value in line.values { linebreak(); value }],
    small(line.requires.join(linebreak())),
    [],
    [],
  )).flatten(),
) }
`
