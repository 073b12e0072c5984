import type { DailyReportContents } from '../daily-report-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { pageFrame } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** The report of one day as PDF. */
export const writeDailyReport = (contents: DailyReportContents, printing: DocumentPrinting): Promise<Uint8Array> =>
  setDocument(
    template,
    { ...contents, words: documentWords(printing.print).dailyReport },
    { pages: [], figures: [] },
    printing,
  )

const template = `${pageFrame}
#title[#doc.title]
#v(-4pt)
#text(size: 13pt, doc.run)
#title-block
#block(above: 10pt, grid(
  columns: (84pt, 1fr),
  row-gutter: 6pt,
  ..doc.facts.map(fact => (text(fill: quiet, fact.name), fact.value)).flatten(),
))

#if doc.ticket != none { block(width: 100%, stroke: 1pt + black, inset: 6pt, doc.ticket) }
#if doc.nearMarks.len() > 0 { list(..doc.nearMarks) }

= #doc.words.done
#if doc.logs.len() == 0 { doc.words.noLog }
#for log in doc.logs {
  heading(level: 2)[#fill(doc.words.writtenBy, by: log.by, at: log.at)]
  for words in log.done { par(words) }
  if log.openEndsNote != none [*#doc.words.openEnds* #log.openEndsNote]
}

= #doc.words.findings
#if doc.findings.len() == 0 { doc.words.noneStand } else {
  table(
    columns: (90pt, 1fr, 1fr),
    heads(doc.words.place, doc.words.found, doc.words.remedy),
    ..doc.findings.map(one => (strong(one.place), one.what, one.remedy)).flatten(),
  )
}

#fill(doc.words.state, state: strong(doc.acceptance))
#block(small(doc.clock))

#block(breakable: false, above: 22pt, table(
  columns: (1fr, 1.2fr, 110pt),
  rows: (auto, 30pt),
  stroke: 0.5pt + luma(110),
  heads(doc.words.name, doc.words.signature, doc.words.date),
  [], [], [],
))
`
