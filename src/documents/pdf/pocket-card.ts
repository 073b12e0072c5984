import type { Drawing } from '../../drawing/drawing.ts'
import type { PocketCardContents } from '../pocket-card-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/**
 * The checks of one sheet as PDF: one sheet of paper, printed on both sides and folded into four, as far as its checks
 * go on one.
 * @param picture  the whole of it; null where the sheet is of a system
 */
export function writePocketCard(
  contents: PocketCardContents,
  picture: Drawing | null,
  printing: Omit<DocumentPrinting, 'lie'>,
): Promise<Uint8Array> {
  const drawings = contents.parts.flatMap(({ checks }) =>
    checks.flatMap(({ pictures }) => pictures.flatMap(({ drawings: { right, wrong } }) => [right, wrong])),
  )
  const own = contents.parts.flatMap(({ checks }) => checks.flatMap((check) => check.own ?? []))
  let next = 0
  const parts = contents.parts.map(({ heading, checks }) => ({
    heading,
    checks: checks.map((check) => ({
      ...check,
      pictures: check.pictures.map(({ right, wrong }) => ({ right, wrong, at: 2 * next++ })),
      own: check.own && { at: own.indexOf(check.own), shows: printing.print.say(check.own.alt) },
    })),
  }))
  return setDocument(
    template,
    { ...contents, parts, words: documentWords(printing.print).pocketCard, hasPicture: picture !== null },
    { pages: [], figures: [...drawings, ...(picture === null ? [] : [picture])], pictures: own },
    { ...printing, lie: 'landscape' },
  )
}

const template = `${pageFrame}
// Folded at each quarter; what is printed keeps as far from the folds as from the edges.
#let side = 15pt
#let panel = data.paper.width / 4 * 1pt - 2 * side
#let crease = place(line(angle: 90deg, length: 100%, stroke: (paint: luma(150), thickness: 0.5pt, dash: "dashed")))
#set page(
  margin: (x: side, top: 18pt, bottom: 26pt),
  columns: 4,
  header: none,
  footer-descent: 6pt,
  background: for fold in (1, 2, 3) { place(dx: fold * data.paper.width / 4 * 1pt, crease) },
)
#set columns(gutter: 2 * side)
#set par(leading: 0.42em)
#show title: set text(size: 15pt)
#show heading.where(level: 1): it => text(size: 12.5pt, it.body)

#let picture(number, width) = {
  let figure = data.figures.at(number)
  image(bytes(figure.picture), format: "svg", width: width, alt: figure.alt)
}

#title[#doc.title]
#v(-3pt)
#text(size: 11pt, weight: "bold", doc.run)

#for fact in doc.facts { block(above: 4pt, below: 4pt, fact) }
#if doc.hasPicture { block(above: 8pt, below: 8pt, picture(data.figures.len() - 1, 100%)) }
#block(width: 100%, stroke: 1.2pt + black, inset: 5pt, text(size: 8pt, doc.notice))
#text(size: 8pt)[#doc.words.how #doc.words.notRecord]

#text(size: 8pt)[#not-confirmed #doc.words.notConfirmedMeans]

// Sizes of letters and of pictures, as parts of the largest.
#let half(word, number, said, sizes) = grid(
  row-gutter: 2.5pt,
  picture(number, sizes.pictures * (panel - 4pt) / 2),
  text(size: 7pt * sizes.letters)[#sign(word, size: 8pt) *#if word == "meets" { doc.words.right } else { doc.words.wrong }* #said],
)
#let card(check, sizes) = block(breakable: false, above: 7pt, below: 0pt, {
  let fine = sizes.letters
  line(length: 100%, stroke: rule)
  block(above: 3.5pt, below: 3.5pt, text(size: 8.5pt * fine)[
    *#check.number* #h(2pt) #text(fill: quiet)[#upper(check.places.first())#check.places.slice(check.places.first().len())]
    #if check.isFromMemory { not-confirmed }
  ])
  set text(size: 9.5pt * fine)
  if check.musts.len() == 1 { block(above: 2pt, below: 4pt, strong(check.musts.first())) } else {
    block(above: 3pt, below: 3pt, text(size: 8.5pt * fine, doc.words.oneOf))
    block(above: 2pt, below: 4pt, list(spacing: 0.5em, ..check.musts.map(strong)))
  }
  for one in check.pictures {
    block(above: 4pt, below: 4pt, grid(
      columns: (1fr, 1fr),
      column-gutter: 4pt,
      half("meets", one.at, one.right, sizes),
      half("fails", one.at + 1, one.wrong, sizes),
    ))
  }
  if check.own != none {
    let shown = data.pictures.at(check.own.at)
    if shown != none {
      image(bytes(shown.picture), format: "svg", width: calc.min(shown.width * sizes.pictures * 1pt, panel), alt: shown.alt)
    }
    text(size: 7pt * fine, check.own.shows)
  }
  block(above: 5pt, below: 3pt, text(size: 8pt * fine, check.how))
})
#let head(words) = block(above: 16pt, below: 2pt, sticky: true, heading(level: 1, words))
#let warnings(sizes) = block(breakable: false, above: 8pt, {
  line(length: 100%, stroke: rule)
  text(size: 7.5pt * sizes.letters, list(spacing: 0.5em, ..doc.cautions))
})

// The largest with which everything goes on the two sides of one sheet; pictures give way before letters.
#context {
  let high = page.height - 44pt
  let places(sizes) = doc.parts.map(part => (head(part.heading),) + part.checks.map(check => card(check, sizes))).flatten() + (warnings(sizes),)
  let panels(sizes) = {
    let filled = (0, here().position().y - 18pt)
    for one in places(sizes) {
      let needed = measure(one, width: panel).height + 12pt
      filled = if filled.at(1) + needed > high { (filled.at(0) + 1, needed) } else { (filled.at(0), filled.at(1) + needed) }
    }
    filled.at(0) + 1
  }
  let tried = (
    (1.1, 1), (1.05, 1), (1, 1), (0.95, 1), (0.95, 0.9), (0.9, 0.9), (0.9, 0.8), (0.85, 0.8), (0.85, 0.7),
  ).map(((letters, pictures)) => (letters: letters, pictures: pictures))
  let sizes = tried.find(sizes => panels(sizes) <= 8)
  if sizes == none { sizes = tried.last() }
  for one in places(sizes) { one }
}
`
