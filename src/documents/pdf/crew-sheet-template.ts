import { pageFrame } from './page-frame.ts'

/** The crew sheet in the typesetter's language; it finds `CrewSheetContents` in `doc`. */
export const crewSheetTemplate = `${pageFrame}
#set page(margin: (x: 30pt, top: 36pt, bottom: 28pt), header-ascent: 8pt, footer-descent: 8pt)
// Spanish says the same in about a tenth more letters, and the sheet is one page.
#let fine = if data.language == "es" { 0.92 } else { 1 }
#set text(size: 8.5pt * fine)
#set par(leading: 0.42em)
#set table(inset: (x: 3pt, y: 2pt))
#show title: set text(size: 17pt)
#show heading.where(level: 1): it => block(above: 4.5pt, below: 2.5pt, sticky: true, text(size: 10pt, it.body))

#let picture(figure) = image(
  bytes(figure.picture),
  format: "svg",
  width: figure.width * 1pt,
  height: figure.height * 1pt,
  alt: figure.alt,
)
#let laps = if doc.stripWords == none { data.figures } else { data.figures.slice(1) }

#grid(
  columns: (auto, 1fr),
  column-gutter: 12pt,
  align: bottom,
  title[#doc.title],
  text(size: 12pt, weight: "bold", doc.run),
)
#if block-of-title != none {
  let said = block-of-title.cells.map(cell => cell.name + ": " + cell.value) + block-of-title.revisions
  block(above: 4pt, below: 4pt, small(said.join("; ")))
}
#block(above: 5pt, below: 5pt, grid(
  columns: (1fr, 1fr),
  column-gutter: 12pt,
  row-gutter: 2.5pt,
  ..doc.facts.map(fact => grid(columns: (78pt, 1fr), text(fill: quiet, fact.name), fact.value)),
))
#block(width: 100%, stroke: 1.2pt + black, inset: (x: 6pt, y: 3pt), above: 4pt, below: 3pt)[
  *#doc.words.utilityTicket:* #if doc.ticket == none { doc.words.noTicket } else { doc.ticket }
]

#if doc.stripWords != none {
  block(above: 2pt, below: 2pt, picture(data.figures.first()))
  // Beside the scale bar, which leaves room at its right.
  block(above: -16pt, below: 6pt, width: 100%, align(right, small(doc.stripWords)))
} else { doc.words.stripApart }

#let has-station = doc.posts.first().onRoad != none
#let has-offset = doc.posts.first().offset != none
#let post-cells(post) = (
  [*#post.number*],
  ..if has-station { (post.onRoad.station, post.onRoad.offset) },
  post.along,
  if post.next == none { doc.words.end } else if post.isOddSpace [*#post.next*] else { post.next },
  ..if has-offset { (post.offset,) },
  if post.block { doc.words.yes } else { strong(doc.words.no) },
  [#post.kind #if post.state != "regular" { strong(doc.words.states.at(post.state)) }],
)
// Widths in points: number, station, offset from the road, from post 1, to next, from the line of the run, block; the kind takes what is left.
#let post-table(size, widths) = {
  set text(size: size * fine)
  let (number, station, road, along, next, offset, block) = widths
  table(
    columns: (number, ..if has-station { (station, road) }, along, next, ..if has-offset { (offset,) }, block, 1fr),
    heads(
      doc.words.post,
      ..if has-station { (doc.words.station, doc.words.roadOffset) },
      doc.words.fromPostOne,
      doc.words.toNext,
      ..if has-offset { (doc.words.fromLine,) },
      doc.words.block,
      doc.words.postKind,
    ),
    ..doc.posts.map(post-cells).flatten(),
  )
}
#let rules(list) = {
  set text(size: 8pt * fine)
  for rule in list {
    block(above: 2.5pt, below: 2.5pt)[
      *#upper(rule.places.first())#rule.places.slice(rule.places.first().len()):* #rule.must
      #if not rule.confirmed { not-confirmed }
    ]
  }
}
#let panels = {
  set text(size: 7.5pt * fine)
  table(
    columns: (34pt, 22pt, 48pt, 1fr),
    heads(doc.words.panel, doc.words.pieces, doc.words.each, doc.words.kind),
    ..doc.panels.map(panel => (
      [*#panel.numbers*],
      str(panel.count),
      panel.length,
      [#panel.name#if panel.nested [, *#doc.words.nested*]#if panel.hung [, #doc.words.hung]],
    )).flatten(),
  )
}
#let departures = if doc.departures.len() == 0 { doc.words.nowhere } else {
  block(width: 100%, stroke: 1.2pt + black, inset: 5pt, list(..doc.departures))
}
#let lap-part = {
  rules(doc.laps)
  for lap in laps { picture(lap) }
}

#let heights = [
  = #doc.words.heights
  #rules(doc.heights)
  = #doc.words.holds
  #if doc.holds.len() == 0 { doc.words.none } else { rules(doc.holds) }
]
// Two columns of about equal length, by their letters.
#let halves(items, show-items) = {
  let sizes = items.map(item => repr(item).len())
  let half = range(items.len()).find(i => sizes.slice(0, i + 1).sum() * 2 >= sizes.sum())
  half = if half == none { 0 } else { half + 1 }
  grid(
    columns: (1fr, 1fr),
    column-gutter: 12pt,
    show-items(items.slice(0, half)),
    show-items(items.slice(half)),
  )
}

#let is-short = doc.posts.len() <= 24
#if is-short {
  grid(
    columns: (1fr, 206pt),
    column-gutter: 10pt,
    [
      = #doc.words.posts
      #post-table(7.5pt, (24pt, ..if has-station { (42pt, 31pt, 46pt, 42pt, 38pt, 26pt) } else { (0pt, 0pt, 49pt, 44pt, 44pt, 27pt) }))
      #small[#if doc.road != none [#doc.road ]#doc.flare]
      #heights
    ],
    [
      = #doc.words.departures
      #departures
      = #doc.words.panels
      #panels
      = #doc.words.lap
      #lap-part
    ],
  )
} else [
  = #doc.words.departures
  #departures
  #grid(
    columns: (1fr, 206pt),
    column-gutter: 10pt,
    [
      = #doc.words.panels
      #panels
    ],
    [
      = #doc.words.lap
      #lap-part
    ],
  )
  #heights
]
= #doc.words.holes
#halves(doc.holes, rules)
#if doc.pictured.len() > 0 [
  = #doc.words.pictures
  #grid(
    columns: (1fr, 1fr, 1fr),
    gutter: 10pt,
    ..doc.pictured.zip(data.pictures).map(((rule, shown)) => block(breakable: false)[
      #if shown != none { picture(shown) }
      #rules((rule,))
      #small(rule.shows)
    ]),
  )
]
= #doc.words.cautions
#{
  set text(size: 6.5pt * fine)
  halves(doc.cautions, items => list(spacing: 0.45em, ..items))
}
#if not is-short [
  = #doc.words.posts
  #small[#if doc.road != none [#doc.road ]#doc.flare]
  #columns(2, gutter: 10pt, post-table(6.8pt, (20pt, 41pt, 29pt, 52pt, 42pt, 31pt, 23pt)))
]
#if data.drawings.len() > 0 { drawing-pages }
`
