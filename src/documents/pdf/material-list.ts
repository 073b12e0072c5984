import type { MaterialListContents } from '../material-list-contents.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** The material list as PDF, with room to write heat and coating marks by hand. */
export const writeMaterialList = (contents: MaterialListContents, printing: DocumentPrinting): Promise<Uint8Array> =>
  setDocument(template, { ...contents }, { pages: [], figures: [] }, printing)

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)

Write down what is rolled, stamped or tagged on each piece before it is hung: afterwards it cannot be read. Material that stands or hangs already is not listed.

// Blanks that a hand can write in.
#let blanks(..heads-and-rows) = table(
  rows: auto,
  inset: (x: 4pt, y: 7pt),
  stroke: 0.5pt + luma(110),
  ..heads-and-rows,
)

= Rail
#if doc.rail.len() == 0 [None to deliver.] else {
  blanks(
    columns: (54pt, 1fr, 26pt, 104pt, 104pt, 70pt),
    heads[Where][Item][Pcs][Heat mark][Coating mark][Checked by],
    ..doc.rail.map(line => (line.where, line.item, str(line.count), [], [], [])).flatten(),
  )
}

= Ends, posts, blocks and bolts
#if doc.bundles.len() == 0 [None to deliver.] else {
  blanks(
    columns: (1.1fr, 34pt, 1.2fr, 150pt, 70pt),
    heads[Item][Pcs][Where][Mark or tag of the bundle][Checked by],
    ..doc.bundles.map(line => (line.item, str(line.count), line.where, [], [])).flatten(),
  )
}

#block(breakable: false, above: 18pt, table(
  columns: (1fr, 1fr, 110pt),
  rows: (auto, 30pt),
  stroke: 0.5pt + luma(110),
  heads[Received by][Signature][Date],
  [], [], [],
))
`
