import type { ComparisonCardContents } from '../comparison-card-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** What differs between two sheets as PDF. */
export function writeComparisonCard(
  contents: ComparisonCardContents,
  printing: Omit<DocumentPrinting, 'lie'>,
): Promise<Uint8Array> {
  let next = 0
  const items = contents.items.map(({ pictures, ...item }) => ({ ...item, at: pictures.map(() => 2 * next++) }))
  return setDocument(
    template,
    { ...contents, items, words: documentWords(printing.print).comparisonCard },
    { pages: [], figures: contents.items.flatMap(({ pictures }) => pictures.flat()) },
    { ...printing, lie: 'portrait' },
  )
}

const template = `${pageFrame}
#set page(margin: (x: 36pt, top: 40pt, bottom: 36pt))
#show title: set text(size: 18pt)
#let notices = doc.sheets.map(one => one.notice).dedup()

#title[#doc.title]
#text(size: 8pt, notices.join(linebreak()))

#let picture(number) = {
  let figure = data.figures.at(number)
  image(bytes(figure.picture), format: "svg", width: 100pt, alt: figure.alt)
}
#let side(item, which) = {
  let said = item.sides.at(which)
  if said == none { text(fill: quiet, doc.words.notThere) } else {
    for value in said.values { block(above: 3pt, below: 3pt, strong(value)) }
    // A rule is stated as what it requires.
    for must in said.asks.filter(must => must not in said.values) { block(above: 3pt, below: 3pt, must) }
    for number in item.at { block(above: 4pt, below: 4pt, picture(number + which)) }
  }
}
#let field(what, one, other) = (
  strong(what),
  if one == none { text(fill: quiet, doc.words.notThere) } else { one },
  if other == none { text(fill: quiet, doc.words.notThere) } else { other },
)

#if doc.items.len() + doc.fields.len() == 0 { doc.words.same } else {
  set text(size: 9pt)
  set table.cell(breakable: false)
  table(
    columns: (1fr, 1.2fr, 1.2fr),
    inset: 6pt,
    heads(doc.words.what, ..doc.sheets.map(one => [#one.name, #one.edition])),
    ..doc.items.map(item => (
      [
        #strong(item.what)
        #if item.why.len() > 0 { block(above: 4pt, text(size: 8.5pt)[#text(fill: quiet, doc.words.why) #item.why.join(" ")]) }
      ],
      side(item, 0),
      side(item, 1),
    )).flatten(),
    ..doc.fields.map(one => field(one.what, one.one, one.other)).flatten(),
  )
}
#doc.besides

#text(size: 8pt, doc.caution)
`
