import { pageFrame } from './page-frame.ts'

/** The crew sheet in the typesetter's language; it finds `CrewSheetContents` in `doc`. */
export const crewSheetTemplate = `${pageFrame}
#set page(margin: (x: 30pt, top: 38pt, bottom: 34pt), header-ascent: 8pt, footer-descent: 8pt)
// Read at arm's length, on the ground: nothing but head, foot and the letters within drawings is smaller.
#set text(size: 10pt)
#set par(leading: 0.42em)
#set table(inset: (x: 3pt, y: 2.6pt))
#show table.cell.where(y: 0): set text(size: 10pt)
#show title: set text(size: 18pt)
#show heading.where(level: 1): it => block(above: 9pt, below: 4pt, sticky: true, text(size: 12.5pt, it.body))
#let aside(body) = text(fill: quiet, body)
#let not-confirmed = not-confirmed-of(10pt)

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
  ..doc.facts.map(fact => grid(columns: (84pt, 1fr), text(fill: quiet, fact.name), fact.value)),
))
#block(width: 100%, stroke: 1.2pt + black, inset: (x: 6pt, y: 3pt), above: 4pt, below: 3pt)[
  *#doc.words.utilityTicket:* #if doc.ticket == none { doc.words.noTicket } else { doc.ticket }
]

#if doc.stripWords != none {
  block(above: 2pt, below: 2pt, picture(data.figures.first()))
  block(above: 2pt, below: 6pt, width: 100%, align(right, aside(doc.stripWords)))
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
#let post-table = table(
  // Widths: number, station, offset from the road, from post 1, to next, from the line of the run, block; the kind takes what is left.
  columns: (34pt, ..if has-station { (58pt, 44pt) }, 68pt, 62pt, ..if has-offset { (58pt,) }, 46pt, 1fr),
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
#let rules(list) = {
  for rule in list {
    block(above: 4pt, below: 4pt)[
      *#upper(rule.places.first())#rule.places.slice(rule.places.first().len()):* #rule.must
      #if not rule.confirmed { not-confirmed }
    ]
  }
}
#let panels = {
  table(
    columns: (44pt, 30pt, 66pt, 1fr),
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

#let posts = [
  = #doc.words.posts
  #aside[#if doc.road != none [#doc.road ]#doc.flare]
  #post-table
]
// A long list of posts would keep the rest from who builds.
#let is-short = doc.posts.len() <= 30

= #doc.words.departures
#departures
#if is-short { posts }
#grid(
  columns: (1fr, 212pt),
  column-gutter: 12pt,
  [
    = #doc.words.panels
    #panels
    #heights
  ],
  [
    = #doc.words.lap
    #lap-part
  ],
)
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
#halves(doc.cautions, items => list(spacing: 0.5em, ..items))
#if not is-short { posts }
#if data.drawings.len() > 0 { drawing-pages }
`
