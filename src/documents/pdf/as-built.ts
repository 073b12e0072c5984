import { elevationPages } from '../../drawing/views/elevation.ts'
import type { StripInput } from '../../drawing/views/strip/strip-input.ts'
import { stripPages } from '../../drawing/views/strip.ts'
import { terminalDetail } from '../../drawing/views/terminal-detail.ts'
import type { AsBuiltContents } from '../as-built-contents.ts'
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
  const pages = [...stripPages(strip, page), ...elevationPages(strip, page), ...details]
  return setDocument(template, { ...contents }, { pages, figures: [] }, printing)
}

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)
#block(above: 8pt, grid(
  columns: (1fr, 1fr),
  column-gutter: 16pt,
  row-gutter: 5pt,
  ..doc.facts.map(fact => grid(columns: (84pt, 1fr), text(fill: quiet, fact.name), fact.value)),
))
*The run is #doc.acceptance.*
#if doc.unread > 0 [ Nobody read #doc.unread of its requirements: what they ask for is shown as laid out, not as it stands.]

The last #data.drawings.len() pages show the run as it was laid out, to scale: from above with the verdict on each place, in elevation, and each end unit in detail. What was read stands in the tables. Print at 100 %, not fitted to the page.

#let read(words) = if words == none { text(fill: quiet)[not read] } else { words }

= Where what was read differs from the layout
#if doc.differences.len() == 0 [Nowhere that anybody read.] else {
  set text(size: 8pt)
  table(
    columns: (88pt, 1.5fr, 0.8fr, 0.8fr, 56pt, 62pt),
    heads[Place][Requirement][Layout][As read][Apart][Verdict],
    ..doc.differences.map(one => (
      one.place,
      one.must,
      one.laid,
      [*#one.read*],
      if one.apart == none [] else { one.apart },
      [#sign(one.verdict) #one.verdict],
    )).flatten(),
  )
}

= Posts
#{
  set text(size: 8pt)
  table(
    columns: (26pt, 60pt, 1fr, 30pt, 82pt, 76pt, 76pt),
    heads[Post][From post 1, layout][Kind][Block][Top of rail, read][Offset, read][To next post, read],
    ..doc.posts.map(post => (
      [*#post.number*],
      post.along,
      [#post.kind#if post.state != "regular" [, #post.state]],
      if post.block [yes] else [no],
      read(post.height),
      read(post.offset),
      if post.number == doc.posts.len() [] else { read(post.space) },
    )).flatten(),
  )
}

= Panels
#{
  set text(size: 8pt)
  table(
    columns: (30pt, 74pt, 1fr, 60pt, 74pt, 1.4fr),
    heads[Panel][Length, layout][Kind][Role][Length, read][Lap with the next, read],
    ..doc.panels.map(panel => (
      [*#panel.number*],
      panel.length,
      [#panel.name#if panel.nested [, nested]],
      panel.role,
      read(panel.readLength),
      if panel.number == doc.panels.len() [] else { read(panel.readLap) },
    )).flatten(),
  )
}
#drawing-pages
`
