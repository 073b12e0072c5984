import type { QuantitiesContents } from '../quantities-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** The quantities as PDF, each total with the pieces that it is the sum of. */
export const writeQuantities = (contents: QuantitiesContents, printing: DocumentPrinting): Promise<Uint8Array> =>
  setDocument(
    template,
    { ...contents, words: documentWords(printing.print).quantities },
    { pages: [], figures: [] },
    printing,
  )

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)
#title-block

#block(width: 100%, stroke: 1.4pt + black, inset: 8pt)[
  #text(size: 14pt, weight: "bold")[#doc.paidText]
  #linebreak()
  #doc.boundaries #doc.roundingText
]

#for section in doc.sections.filter(section => section.lines.len() > 0) {
  heading(level: 1, section.title)
  table(
    columns: (1.2fr, 104pt, 1.3fr, 1.1fr),
    align: (left, right, left, left),
    heads(doc.words.item, doc.words.amount, doc.words.pieces, doc.words.source),
    ..section.lines.map(line => (
      line.name,
      if line.unit == "each" { fill(doc.words.each, amount: strong(line.amountText)) } else { strong(line.amountText) },
      line.piecesText,
      small((line.source, line.note).filter(words => words != none).join("; ")),
    )).flatten(),
  )
}
`
