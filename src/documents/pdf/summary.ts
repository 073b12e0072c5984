import type { Drawing } from '../../drawing/drawing.ts'
import type { StripInput } from '../../drawing/views/strip/strip-input.ts'
import type { RecordContents } from '../record-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { crewStrip } from './crew-sheet-strip.ts'
import { pageFrame, textPaper } from './page-frame.ts'
import { recordParts } from './record-parts.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** Side margin of the summary, points. */
const margin = 40

/** Rows of strip for which there is room. */
const mostRows = 2

export interface SummaryPictures {
  readonly strip: StripInput
  /** In the order of `RecordContents.signed`. */
  readonly signatures: readonly Drawing[]
  readonly code: Drawing
}

/**
 * What decides of a record as PDF on two pages: verdict, what is set aside, findings, what is not proven, signatures, strip.
 * All that is set aside is on it; of findings and of what is not proven as much as there is room for, and how many more.
 */
export function writeSummary(
  contents: RecordContents,
  { strip, signatures, code }: SummaryPictures,
  printing: DocumentPrinting,
): Promise<Uint8Array> {
  const { print } = printing
  const words = documentWords(print)
  const drawn = crewStrip(strip, textPaper(printing).width - 2 * margin, mostRows, print)
  return setDocument(
    template,
    {
      ...contents,
      ...{ title: words.summary.title, words: words.record, own: words.summary },
      stripWords: drawn && words.crewSheet.strip(drawn.scale, strip.lateralExaggeration),
    },
    { pages: [], figures: [code, ...signatures, ...(drawn === null ? [] : [drawn.drawing])] },
    printing,
  )
}

const template = `${pageFrame}
#data.insert("signatures", data.figures.slice(1, 1 + doc.signed.len()))
${recordParts}
#set page(margin: (x: ${margin}pt, top: 44pt, bottom: 44pt), header-ascent: 10pt, footer-descent: 10pt)
#set text(size: 8.5pt)
#set table(inset: (x: 4pt, y: 2.5pt))
#show title: set text(size: 18pt)
#show heading.where(level: 1): it => block(above: 9pt, below: 4pt, sticky: true, text(size: 11pt, it.body))
#show heading.where(level: 2): it => block(above: 7pt, below: 3pt, sticky: true, text(size: 9.5pt, it.body))
#let picture(figure, width) = image(bytes(figure.picture), format: "svg", width: width, alt: figure.alt)

#grid(
  columns: (1fr, auto),
  column-gutter: 12pt,
  [
    #title[#doc.title]
    #v(-4pt)
    #text(size: 13pt, weight: "bold", doc.run)

    #doc.own.how
    #acceptance-box
  ],
  grid(row-gutter: 2pt, align: center, picture(data.figures.first(), 92pt), small(doc.own.codeHolds)),
)
#title-block
#set-aside
#all-facts

#let shown-of(list, most) = list.slice(0, calc.min(most, list.len()))
#let more(list, most, words) = if list.len() > most { strong(fill(words, count: list.len() - most)) }
#let rest(most) = {
  heading(level: 1, doc.words.findings)
  findings(shown-of(doc.findings, most))
  more(doc.findings, most, doc.own.moreFindings)
  free-findings
  heading(level: 1, doc.words.unproven)
  not-proven(shown-of(doc.unproven, most))
  more(doc.unproven, most, doc.own.moreUnproven)
  heading(level: 1, doc.words.strip)
  if doc.stripWords == none { doc.own.stripElsewhere } else {
    let strip = data.figures.last()
    block(above: 2pt, below: 2pt, picture(strip, strip.width * 1pt))
    small(doc.stripWords)
  }
  signed
  signed-by-hand
}

// As much as goes on two pages, a tenth of a page left for what does not break well.
#context {
  let room = 1.9 * (page.height - 88pt) - (here().position().y - 44pt)
  let width = page.width - ${2 * margin}pt
  let tried = (200, 30, 20, 14, 10, 8, 6, 5, 4, 3)
  let most = tried.find(most => measure(rest(most), width: width).height <= room)
  rest(if most == none { tried.last() } else { most })
}
`
