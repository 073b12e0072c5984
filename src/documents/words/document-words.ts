import type { Print } from '../../words/print.ts'
import { asBuilt } from './en/as-built.ts'
import { comparisonCard } from './en/comparison-card.ts'
import { crewSheet } from './en/crew-sheet.ts'
import { dailyReport } from './en/daily-report.ts'
import { frame } from './en/frame.ts'
import { manifest } from './en/manifest.ts'
import { places } from './en/places.ts'
import { pocketCard } from './en/pocket-card.ts'
import { quantities } from './en/quantities.ts'
import { readings } from './en/readings.ts'
import { record } from './en/record.ts'
import { runFacts } from './en/run-facts.ts'
import { sheetList } from './en/sheet-list.ts'
import { stakeList } from './en/stake-list.ts'
import { summary } from './en/summary.ts'
import { workbook } from './en/workbook.ts'
import { asBuilt as asBuiltEs } from './es/as-built.ts'
import { comparisonCard as comparisonCardEs } from './es/comparison-card.ts'
import { crewSheet as crewSheetEs } from './es/crew-sheet.ts'
import { dailyReport as dailyReportEs } from './es/daily-report.ts'
import { frame as frameEs } from './es/frame.ts'
import { manifest as manifestEs } from './es/manifest.ts'
import { places as placesEs } from './es/places.ts'
import { pocketCard as pocketCardEs } from './es/pocket-card.ts'
import { quantities as quantitiesEs } from './es/quantities.ts'
import { readings as readingsEs } from './es/readings.ts'
import { record as recordEs } from './es/record.ts'
import { runFacts as runFactsEs } from './es/run-facts.ts'
import { sheetList as sheetListEs } from './es/sheet-list.ts'
import { stakeList as stakeListEs } from './es/stake-list.ts'
import { summary as summaryEs } from './es/summary.ts'
import { workbook as workbookEs } from './es/workbook.ts'

const en = {
  asBuilt,
  comparisonCard,
  crewSheet,
  dailyReport,
  frame,
  manifest,
  places,
  pocketCard,
  quantities,
  readings,
  record,
  runFacts,
  sheetList,
  stakeList,
  summary,
  workbook,
}

/** The documents' own words: headings, table heads and sentences that stand in no saying of the model. */
export type DocumentWords = typeof en

const es: DocumentWords = {
  asBuilt: asBuiltEs,
  comparisonCard: comparisonCardEs,
  crewSheet: crewSheetEs,
  dailyReport: dailyReportEs,
  frame: frameEs,
  manifest: manifestEs,
  places: placesEs,
  pocketCard: pocketCardEs,
  quantities: quantitiesEs,
  readings: readingsEs,
  record: recordEs,
  runFacts: runFactsEs,
  sheetList: sheetListEs,
  stakeList: stakeListEs,
  summary: summaryEs,
  workbook: workbookEs,
}

/** Those of the language of `print`. */
export const documentWords = (print: Print): DocumentWords => print.pick({ en, es })
