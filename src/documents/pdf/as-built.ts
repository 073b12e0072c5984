import { elevationPages } from '../../drawing/views/elevation.ts'
import type { StripInput } from '../../drawing/views/strip/strip-input.ts'
import { stripPages } from '../../drawing/views/strip.ts'
import { terminalDetail } from '../../drawing/views/terminal-detail.ts'
import type { AsBuiltContents } from '../as-built-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/**
 * The as-built drawing as PDF: the pieces of the run as they were read, then its drawings at true scale: the strip
 * with the verdicts, the elevation, and each end unit in detail.
 */
export function writeAsBuilt(
  contents: AsBuiltContents,
  strip: StripInput,
  printing: DocumentPrinting,
): Promise<Uint8Array> {
  const { page } = printing
  const details = (['first', 'second'] as const).flatMap((which) => terminalDetail(strip, which, page) ?? [])
  const pages = [
    ...stripPages(strip, page, 'of the document'),
    ...elevationPages(strip, page, 'of the document'),
    ...details,
  ]
  return setDocument(
    template,
    { ...contents, words: documentWords(printing.print).asBuilt },
    { pages, figures: [] },
    printing,
  )
}

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)
#title-block
#block(above: 8pt, grid(
  columns: (1fr, 1fr),
  column-gutter: 16pt,
  row-gutter: 5pt,
  ..doc.facts.map(fact => grid(columns: (84pt, 1fr), text(fill: quiet, fact.name), fact.value)),
))
#strong(fill(doc.words.state, state: doc.acceptance))
#if doc.unread > 0 [ #fill(doc.words.unread, count: doc.unread)]

#fill(doc.words.pages, count: data.drawings.len())

#seal-room

#let read(words) = if words == none { text(fill: quiet, doc.words.notRead) } else { words }

= #doc.words.differences
#if doc.differences.len() == 0 { doc.words.noDifferences } else {
  set text(size: 8pt)
  table(
    columns: (88pt, 1.5fr, 0.8fr, 0.8fr, 56pt, 62pt),
    heads(
      doc.words.place,
      doc.words.requirement,
      doc.words.layout,
      doc.words.asRead,
      doc.words.apart,
      doc.words.verdict,
    ),
    ..doc.differences.map(one => (
      one.place,
      one.must,
      one.laid,
      [*#one.read*],
      if one.apart == none [] else { one.apart },
      [#sign(one.verdict) #verdict-word(one.verdict)],
    )).flatten(),
  )
}

= #doc.words.posts
#{
  set text(size: 8pt)
  table(
    columns: (26pt, 60pt, 1fr, 30pt, 82pt, 76pt, 76pt),
    heads(
      doc.words.post,
      doc.words.along,
      doc.words.kind,
      doc.words.block,
      doc.words.height,
      doc.words.offset,
      doc.words.space,
    ),
    ..doc.posts.map(post => (
      [*#post.number*],
      post.along,
      post.kind + doc.words.states.at(post.state),
      if post.block { doc.words.yes } else { doc.words.no },
      read(post.height),
      read(post.offset),
      if post.number == doc.posts.len() [] else { read(post.space) },
    )).flatten(),
  )
}

= #doc.words.panels
#{
  set text(size: 8pt)
  table(
    columns: (30pt, 74pt, 1fr, 60pt, 74pt, 1.4fr),
    heads(
      doc.words.panel,
      doc.words.length,
      doc.words.kind,
      doc.words.role,
      doc.words.readLength,
      doc.words.readLap,
    ),
    ..doc.panels.map(panel => (
      [*#panel.number*],
      panel.length,
      panel.name + if panel.nested { doc.words.nested },
      doc.words.roles.at(panel.role),
      read(panel.readLength),
      if panel.number == doc.panels.len() [] else { read(panel.readLap) },
    )).flatten(),
  )
}
#drawing-pages
`
