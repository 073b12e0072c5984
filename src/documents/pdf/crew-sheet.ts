import type { Drawing } from '../../drawing/drawing.ts'
import type { StripInput } from '../../drawing/views/strip/strip-input.ts'
import { stripPages } from '../../drawing/views/strip.ts'
import type { CrewSheetContents } from '../crew-sheet-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { crewStrip } from './crew-sheet-strip.ts'
import { crewSheetTemplate } from './crew-sheet-template.ts'
import { textPaper } from './page-frame.ts'
import { type DocumentPrinting, setDocument } from './set-document.ts'

/** Side margin of the crew sheet, points. */
const margin = 30

/** Rows of strip that leave room for the tables on one page. */
const mostRows = 2

/**
 * The crew sheet in the language of its printing as PDF: two pages where the run allows. A run too long for the page has its strip on pages of its own.
 * @param laps  the pictures of how panels lap
 */
export function writeCrewSheet(
  contents: CrewSheetContents,
  strip: StripInput,
  laps: readonly Drawing[],
  printing: DocumentPrinting,
): Promise<Uint8Array> {
  const { print } = printing
  const words = documentWords(print).crewSheet
  const within = crewStrip(strip, textPaper(printing).width - 2 * margin, mostRows, print)
  const pages = within === null ? stripPages(strip, printing.page, 'of the document') : []
  return setDocument(
    crewSheetTemplate,
    {
      ...contents,
      pictured: contents.pictured.map(({ picture, ...rule }) => ({ ...rule, shows: print.say(picture.alt) })),
      words,
      stripWords: within && words.strip(within.scale, strip.lateralExaggeration),
    },
    {
      ...{ pages, figures: [...(within === null ? [] : [within.drawing]), ...laps] },
      pictures: contents.pictured.map(({ picture }) => picture),
    },
    printing,
  )
}
