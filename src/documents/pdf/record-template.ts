import { pageFrame } from './page-frame.ts'
import { recordParts } from './record-parts.ts'

/** The inspection record in the typesetter's language; it finds `RecordContents` in `doc`. */
export const recordTemplate = String.raw`${pageFrame}${recordParts}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)
#title-block
#v(2pt)

#acceptance-box
#set-aside

#v(4pt)
#all-facts

= #doc.words.sheets
#table(
  columns: (72pt, 1.2fr, 1.2fr, 1.5fr),
  heads(doc.words.part, doc.words.sheet, doc.words.criteria, doc.words.notice),
  ..doc.sheets.map(sheet => (
    sheet.role,
    [#sheet.name #if sheet.id != "" { linebreak(); small(fill(doc.words.version, id: sheet.id, version: sheet.version)) }],
    sheet.criteria,
    text(size: 8pt, sheet.notice),
  )).flatten(),
)
*#doc.words.decisionRule* #doc.decisionRule

= #doc.words.findings
#findings(doc.findings)

#free-findings

#if doc.rechecks.len() > 0 {
  heading(level: 2, doc.words.rechecks)
  table(
    columns: (1fr, 1fr, 1fr, 70pt),
    heads(doc.words.finding, doc.words.reading, doc.words.byAt, doc.words.now),
    ..doc.rechecks.map(one => (
      one.finding,
      [*#one.reading.answer* \ #small(fill(doc.words.readingOf, id: one.reading.id, of: one.reading.of))],
      [#one.reading.by, #one.reading.at],
      [#sign(one.verdict) #verdict-word(one.verdict)],
    )).flatten(),
  )
}

= #doc.words.unproven
#not-proven(doc.unproven)

#if data.drawings.len() > 0 {
  heading(level: 1, doc.words.strip)
  if data.drawings.len() == 1 { doc.words.nextPage } else { fill(doc.words.nextPages, count: data.drawings.len()) }
  drawing-pages
}

// Photos by the requirement that they show.
#let photos-of = (:)
#let photo-numbers = (:)
#for photo in doc.photos {
  photo-numbers.insert(photo.photo, photo.number)
  if photo.requirement != none {
    photos-of.insert(photo.requirement, photos-of.at(photo.requirement, default: ()) + (photo,))
  }
}
// What was drawn on it lies over it, of the same shape and so in the same place.
#let photo-picture(photo, ..size) = box(..size, {
  place(image(
    "/photos/" + str(photo.number),
    width: 100%,
    height: 100%,
    fit: "contain",
    alt: (fill(doc.words.photo, number: photo.number) + ", " + photo.name, photo.shows, photo.drawn).filter(part => part != none).join(". "),
  ))
  for drawn in data.strokes.at(str(photo.number), default: ()) {
    place(pdf.artifact(image(bytes(drawn), format: "svg", width: 100%, height: 100%, fit: "contain")))
  }
})
#let photo-word(name) = fill(doc.words.photoInText, number: photo-numbers.at(name))
#let photo-words(photos) = photos.map(photo-word).join(", ")
// Small in the row, as many as keep it on its page; all of them stand larger further on.
#let thumbnails(photos) = {
  for photo in photos.slice(0, calc.min(2, photos.len())) {
    if photo.isHere { block(above: 4pt, below: 2pt, photo-picture(photo, width: 100%, height: 66pt)) }
    block(above: 2pt, below: 2pt, small[#fill(doc.words.photo, number: photo.number): #photo.name#if not photo.isHere [ #doc.words.absent]])
  }
  if photos.len() > 2 { small(fill(doc.words.morePhotos, numbers: photos.slice(2).map(photo => str(photo.number)).join(", "))) }
}

#let reading-lines(reading) = {
  [*#reading.answer*]
  linebreak()
  if reading.note != none { reading.note; linebreak() }
  small({
    let parts = (reading.instrument, reading.uncertainty, reading.where).filter(part => part != none)
    if parts.len() > 0 { parts.join("; "); linebreak() }
    [#reading.by, #reading.at (#reading.id)]
    if reading.corrects != none { fill(doc.words.corrects, id: reading.corrects) }
    if reading.together != none [\ #fill(doc.words.together, name: reading.together)]
    if reading.photos.len() > 0 [\ #photo-words(reading.photos)]
  })
}

#let reading-cell(line) = {
  if line.derived != none {
    [*#line.derived.value*]
    if line.derived.from != none { linebreak(); small(line.derived.from) }
  } else if line.readings.len() == 0 { { doc.words.noReading } }
  for reading in line.readings { reading-lines(reading) }
  thumbnails(photos-of.at(line.id, default: ()))
}

// A row is kept on one page unless a long note makes it too high.
#let is-long(line) = {
  let texts = (line.must, line.reason) + line.readings.map(one => (one.answer, one.by, one.where, one.note)).flatten()
  texts.filter(words => words != none).map(words => words.len()).sum() > 700
}

#let requirement-table(lines) = {
  let cells = ()
  let place = none
  for line in lines {
    if line.place != place {
      place = line.place
      cells.push(table.header(
        level: 2,
        table.cell(colspan: 5, fill: luma(240), {
          set text(weight: "regular", size: 9pt)
          [*#upper(place.name.first())#place.name.slice(place.name.first().len())*]
          h(1fr)
          small[#fill(doc.words.fromPostOne, along: place.along)#if place.onRoad != none [, #place.onRoad]]
        }),
      ))
    }
    let cell = table.cell.with(breakable: is-long(line))
    cells += (
      cell(small[#line.number]),
      cell[
        #line.must \
        #small[#fill(
          doc.words.by,
          id: line.id,
          sheet: line.sheet,
          source: line.source,
          confirmation: data.words.confirmations.at(line.confirmation),
        ) #if line.confirmation == "from memory" { not-confirmed }]
      ],
      cell(line.limit),
      cell(reading-cell(line)),
      cell(stroke: if line.verdict in ("fails", "too close") { (left: 2.5pt + black) } else { (:) })[
        #sign(line.verdict) *#verdict-word(line.verdict)*
        #if line.readings.all(one => one.answer != line.reason) { linebreak(); small(line.reason) }
      ],
    )
  }
  set text(size: 8pt)
  table(
    columns: (24pt, 1.5fr, 0.9fr, 1.15fr, 1.15fr),
    heads(doc.words.number, doc.words.requirement, doc.words.limit, doc.words.reading, doc.words.verdict),
    ..cells,
  )
}

#if doc.holdPoints.len() > 0 {
  heading(level: 1, doc.words.holdPoints)
  requirement-table(doc.holdPoints)
}

#if doc.requirements.len() > 0 {
  heading(level: 1, doc.words.inOrder)
  requirement-table(doc.requirements)
}

#let reading-table(lines, last-head, last, last-width: 0.7fr) = table(
  columns: (50pt, 1.1fr, 0.8fr, 1.6fr, 1.5fr, last-width),
  heads(doc.words.reading, doc.words.of, doc.words.value, doc.words.instrument, doc.words.byAt, last-head),
  ..lines.map(line => (
    small(line.id),
    line.of,
    [#line.answer#if line.note != none { linebreak(); small(line.note) }],
    (line.instrument, line.uncertainty, line.where).filter(part => part != none).join("; "),
    [#line.by, #line.at],
    last(line),
  )).flatten(),
)

#if doc.measured.len() > 0 {
  heading(level: 1, doc.words.measured)
  set text(size: 8pt)
  reading-table(doc.measured, doc.words.photos, line => photo-words(line.photos))
}

#if doc.photos.len() > 0 {
  heading(level: 1, doc.words.photos)
  let part(photo) = block(breakable: false, width: 100%, {
    if photo.isHere { photo-picture(photo, width: 100%, height: 176pt) } else {
      block(width: 100%, height: 40pt, stroke: rule, inset: 6pt, doc.words.photoAbsent)
    }
    block(above: 4pt, {
      [*#fill(doc.words.photo, number: photo.number)*, #photo.name]
      linebreak()
      photo.shows
      linebreak()
      small(photo.taken)
      linebreak()
      small(if photo.hash == none { doc.words.photoUnknown } else [SHA-256 #photo.hash…])
      if photo.note != none { linebreak(); photo.note }
      if photo.drawn != none { linebreak(); small(photo.drawn) }
    })
  })
  grid(columns: (1fr, 1fr), column-gutter: 14pt, row-gutter: 14pt, ..doc.photos.map(part))
}

= #doc.words.replaced
#if doc.replaced.len() == 0 { doc.words.noneReplaced } else {
  set text(size: 8pt)
  let by = (:)
  for one in doc.replaced { by.insert(one.reading.id, one.by) }
  reading-table(doc.replaced.map(one => one.reading), doc.words.replacedBy, line => by.at(line.id))
}

#if doc.withoutEffect.len() > 0 {
  heading(level: 1, doc.words.withoutEffect)
  doc.words.withoutEffectHow
  set text(size: 8pt)
  reading-table(doc.withoutEffect.map(one => one.reading), [], line => line.withoutEffect.join("; "))
}

#if doc.versionReasons.len() > 0 {
  heading(level: 1, doc.words.versionReasons)
  list(..doc.versionReasons)
}

#if doc.askedEarlier.readings.len() + doc.askedEarlier.photos.len() > 0 {
  heading(level: 1, doc.words.askedEarlier)
  doc.words.askedEarlierHow
  set text(size: 8pt)
  if doc.askedEarlier.readings.len() > 0 {
    let earlier = (:)
    for one in doc.askedEarlier.readings { earlier.insert(one.reading.id, fill(doc.words.askedWhy, why: one.why, version: one.version)) }
    reading-table(doc.askedEarlier.readings.map(one => one.reading), doc.words.whyNot, line => earlier.at(line.id), last-width: 1.6fr)
  }
  if doc.askedEarlier.photos.len() > 0 {
    table(
      columns: (60pt, 1fr, 1fr, 1fr),
      heads(doc.words.photoHead, doc.words.of, doc.words.byAt, doc.words.whyNot),
      ..doc.askedEarlier.photos.map(one => (
        photo-words((one.photo,)),
        [#one.of #if one.note != none { linebreak(); one.note }],
        (one.by, one.at).filter(part => part != none).join(", "),
        one.why,
      )).flatten(),
    )
  }
}

= #doc.words.unconfirmed
#if doc.unconfirmed.len() == 0 { doc.words.none } else {
  doc.words.unconfirmedHow
  set text(size: 8pt)
  table(
    columns: (1.6fr, 1fr, 1fr),
    heads(doc.words.requirement, doc.words.place, doc.words.sheetSource),
    ..doc.unconfirmed.map(one => (
      one.must,
      one.places,
      fill(doc.words.sourceNumber, sheet: one.sheet, source: one.source),
    )).flatten(),
  )
}

= #doc.words.sources
#table(
  columns: (36pt, 1.6fr, 1fr),
  heads(doc.words.number, doc.words.document, doc.words.edition),
  ..doc.sources.map(source => (str(source.number), source.title, source.edition)).flatten(),
)

#if doc.unusual.len() > 0 {
  heading(level: 1, doc.words.unusual)
  doc.words.unusualHow
  list(..doc.unusual)
}

= #doc.words.cautions
#list(..doc.cautions)

#signed
#signed-by-hand
`
