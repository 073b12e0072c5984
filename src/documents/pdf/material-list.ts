import type { MaterialListContents } from '../material-list-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** The material list as PDF, with room to write heat and coating marks by hand. */
export const writeMaterialList = (contents: MaterialListContents, printing: DocumentPrinting): Promise<Uint8Array> =>
  setDocument(
    template,
    { ...contents, words: documentWords(printing.print).quantities.materials },
    { pages: [], figures: [] },
    printing,
  )

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)
#title-block

#doc.words.how

// Blanks that a hand can write in.
#let blanks(..heads-and-rows) = table(
  rows: auto,
  inset: (x: 4pt, y: 7pt),
  stroke: 0.5pt + luma(110),
  ..heads-and-rows,
)

= #doc.words.rail
#if doc.rail.len() == 0 { doc.words.none } else {
  blanks(
    columns: (54pt, 1fr, 26pt, 104pt, 104pt, 70pt),
    heads(doc.words.where, doc.words.item, doc.words.count, doc.words.heat, doc.words.coating, doc.words.checkedBy),
    ..doc.rail.map(line => (line.where, line.item, str(line.count), [], [], [])).flatten(),
  )
}

= #doc.words.bundles
#if doc.bundles.len() == 0 { doc.words.none } else {
  blanks(
    columns: (1.1fr, 34pt, 1.2fr, 150pt, 70pt),
    heads(doc.words.item, doc.words.count, doc.words.where, doc.words.bundle, doc.words.checkedBy),
    ..doc.bundles.map(line => (line.item, str(line.count), line.where, [], [])).flatten(),
  )
}

#block(breakable: false, above: 18pt, table(
  columns: (1fr, 1fr, 110pt),
  rows: (auto, 30pt),
  stroke: 0.5pt + luma(110),
  heads(doc.words.receivedBy, doc.words.signature, doc.words.date),
  [], [], [],
))
`
