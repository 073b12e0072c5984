import type { QuantitiesContents } from '../quantities-contents.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** The quantities as PDF, each total with the pieces that it is the sum of. */
export const writeQuantities = (contents: QuantitiesContents, printing: DocumentPrinting): Promise<Uint8Array> =>
  setDocument(template, { ...contents }, { pages: [], figures: [] }, printing)

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)

#block(width: 100%, stroke: 1.4pt + black, inset: 8pt)[
  #text(size: 14pt, weight: "bold")[#doc.paidFeet ft to be paid]
  #linebreak()
  #doc.boundaries #doc.roundingText
]

#for section in doc.sections.filter(section => section.lines.len() > 0) {
  heading(level: 1, section.title)
  table(
    columns: (1.2fr, 104pt, 1.3fr, 1.1fr),
    align: (left, right, left, left),
    heads[Item][Amount][Pieces][Source, note],
    ..section.lines.map(line => (
      line.name,
      [*#line.amountText*#if line.unit == "each" [ each]],
      line.piecesText,
      small((line.source, line.note).filter(words => words != none).join("; ")),
    )).flatten(),
  )
}
`
