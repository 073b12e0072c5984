/** What the record and its summary show alike, in the typesetter's language; it finds `RecordContents` in `doc`. */
export const recordParts = String.raw`
#let acceptance-sign = (
  "acceptable": "meets",
  "acceptable except": "does not apply",
  "not acceptable": "fails",
  "not yet known": "unread",
).at(doc.acceptance.kind)

#let acceptance-box = block(width: 100%, stroke: 1.4pt + black, inset: 10pt, breakable: false)[
  #grid(
    columns: (auto, 1fr),
    column-gutter: 10pt,
    align: horizon,
    sign(acceptance-sign, size: 28pt),
    [
      #text(size: 18pt, weight: "bold")[#upper(doc.acceptance.text)]
      #v(-5pt)
      #doc.acceptance.means
    ],
  )
  #v(2pt)
  #line(length: 100%, stroke: rule)
  #grid(
    columns: (1fr,) * doc.counts.len(),
    ..doc.counts.map(one => [#sign(one.verdict) #h(2pt) *#one.count* #verdict-word(one.verdict)]),
  )
]

// Requirements by the number at which their line stands.
#let number-of = (:)
#for line in doc.holdPoints + doc.requirements { number-of.insert(line.id, line.number) }
#let at-numbers(ids) = fill(doc.words.atNumbers, numbers: ids.map(id => number-of.at(id)).sorted().map(str).join(", "))
#let one-or-count(ids) = if ids.len() == 1 { at-numbers(ids) } else { fill(doc.words.requirements, count: ids.len()) }

#let set-aside = if doc.setAside.len() > 0 {
  strong(doc.words.setAside)
  table(
    columns: (110pt, 1.2fr, 1.2fr, 90pt),
    heads(doc.words.place, doc.words.requirement, doc.words.because, doc.words.setAsideBy),
    ..doc.setAside.map(one => (
      one.places,
      [#one.must \ #small(one-or-count(one.requirements))],
      one.because,
      [*#one.by*],
    )).flatten(),
  )
}

#let facts(columns, list) = if list.len() > 0 {
  block(above: 8pt, grid(
    columns: (1fr,) * columns,
    column-gutter: 16pt,
    row-gutter: 5pt,
    ..list.map(fact => grid(columns: (84pt, 1fr), text(fill: quiet, fact.name), fact.value)),
  ))
}
#let is-short(fact) = fact.value.len() <= 50
#let all-facts = {
  facts(2, doc.facts.filter(is-short))
  facts(1, doc.facts.filter(fact => not is-short(fact)))
}

#let findings(lines) = if doc.findings.len() == 0 { doc.words.none } else {
  table(
    columns: (22pt, 96pt, 1.1fr, 1.1fr),
    heads(doc.words.number, doc.words.place, doc.words.found, doc.words.remedy),
    ..lines.map(finding => (
      [*#finding.number*],
      [
        *#finding.place.name* \
        #small(fill(doc.words.fromPostOne, along: finding.place.along))
        #if finding.place.onRoad != none { linebreak(); small(finding.place.onRoad) }
      ],
      [*#doc.words.foundIs* #finding.found \ *#doc.words.mustBe* #finding.mustBe \ #small[#finding.severity#if finding.assigned != none [; #finding.assigned]] \ #small(at-numbers(finding.requirements))],
      finding.remedy,
    )).flatten(),
  )
}

#let free-findings = if doc.freeFindings.len() > 0 {
  heading(level: 2, doc.words.freeFindings)
  table(
    columns: (1fr, 1fr, 0.9fr, 1.2fr),
    heads(doc.words.seen, doc.words.place, doc.words.howBad, doc.words.seenBy),
    ..doc.freeFindings.map(one => (
      [*#one.what* #if one.note != none { linebreak(); one.note }],
      if one.place == none { doc.words.placeGone } else [#one.place.name #if one.place.onRoad != none { linebreak(); small(one.place.onRoad) }],
      [#one.severity #if one.assigned != none { linebreak(); small(one.assigned) }],
      [#one.by #if one.closed != none { linebreak(); one.closed }],
    )).flatten(),
  )
}

#let on-memory = if doc.onMemory != none { block(above: 6pt, below: 6pt, strong(doc.onMemory)) }

#let not-proven(lines) = if doc.unproven.len() == 0 { block(breakable: false, { doc.words.allProven; on-memory }) } else {
  table(
    columns: (110pt, 1.2fr, 1fr),
    heads(doc.words.place, doc.words.requirement, doc.words.why),
    ..lines.map(one => (
      one.places,
      [#one.must \ #small(one-or-count(one.requirements))],
      one.why,
    )).flatten(),
  )
  on-memory
}

#let signed = if doc.signed.len() > 0 {
  heading(level: 1, doc.words.signed)
  for (i, one) in doc.signed.enumerate() {
    let drawn = data.signatures.at(i)
    let is-long = one.statement != none and one.statement.len() > 700
    block(breakable: is-long, width: 100%, stroke: 0.5pt + black, inset: 6pt, grid(
      columns: (drawn.width * 1pt, 1fr),
      column-gutter: 12pt,
      image(bytes(drawn.picture), format: "svg", width: drawn.width * 1pt, height: drawn.height * 1pt, alt: drawn.alt),
      [
        *#one.name*, #one.role, #one.at #fill(doc.words.signedVersion, version: one.version) \
        #if one.isTyped { doc.words.typed } else { doc.words.drawn }
        #fill(doc.words.signedAs, state: one.acceptance, count: one.unproven)
        #if one.statement != none { linebreak(); one.statement }
        #linebreak()
        *#one.standing* \
        #small(doc.words.signedHash) \
        #text(size: 7pt, font: "DejaVu Sans Mono", one.hash)
      ],
    ))
  }
}

#let signed-by-hand = block(breakable: false, above: 20pt)[
  = #doc.words.byHand
  #doc.words.byHandHow
  #on-memory
  #small[#doc.hashOf:] \
  #text(size: 8pt, font: "DejaVu Sans Mono", doc.hash)
  #if doc.photos.len() > 0 [
    \
    #small[#doc.words.photosHashOf:] \
    #text(size: 8pt, font: "DejaVu Sans Mono", doc.photosHash)
  ]
  #v(2pt)
  #table(
    columns: (70pt, 1.2fr, 1.4fr, 80pt),
    rows: (auto,) + (34pt,) * doc.signatures.len(),
    align: horizon,
    stroke: 0.5pt + black,
    heads(doc.words.role, doc.words.name, doc.words.signature, doc.words.date),
    ..doc.signatures.map(role => ([*#role*], [], [], [])).flatten(),
  )
  #seal-room
]
`
