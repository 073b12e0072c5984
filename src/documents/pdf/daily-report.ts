import type { DailyReportContents } from '../daily-report-contents.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** The report of one day as PDF. */
export const writeDailyReport = (contents: DailyReportContents, printing: DocumentPrinting): Promise<Uint8Array> =>
  setDocument(template, { ...contents }, { pages: [], figures: [] }, printing)

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)
#block(above: 10pt, grid(
  columns: (84pt, 1fr),
  row-gutter: 6pt,
  ..doc.facts.map(fact => (text(fill: quiet, fact.name), fact.value)).flatten(),
))

#if doc.ticket != none { block(width: 100%, stroke: 1pt + black, inset: 6pt, doc.ticket) }
#if doc.nearMarks.len() > 0 { list(..doc.nearMarks) }

= What was done
#if doc.logs.len() == 0 [No log was written on this day.]
#for log in doc.logs {
  heading(level: 2)[By #log.by, written #log.at]
  for words in log.done { par(words) }
  if log.openEndsNote != none [*Open ends:* #log.openEndsNote]
}

= Findings on what was read on this day
#if doc.findings.len() == 0 [None stand.] else {
  table(
    columns: (90pt, 1fr, 1fr),
    heads[Place][What was found][What to do],
    ..doc.findings.map(one => (strong(one.place), one.what, one.remedy)).flatten(),
  )
}

When this was printed the run was *#doc.acceptance*.
#block(small(doc.clock))

#block(breakable: false, above: 22pt, table(
  columns: (1fr, 1.2fr, 110pt),
  rows: (auto, 30pt),
  stroke: 0.5pt + luma(110),
  heads[Name][Signature][Date],
  [], [], [],
))
`
