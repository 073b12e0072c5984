import { contentOf } from '../core/hardware/sheet-text.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { crewSheetContents } from '../documents/crew-sheet-contents.ts'
import { groupBy } from '../documents/group-by.ts'
import { ticketsText } from '../documents/locate-ticket-text.ts'
import { writeCrewSheet } from '../documents/pdf/crew-sheet.ts'
import type { DocumentPrinting } from '../documents/pdf/set-document.ts'
import type { OnRoad } from '../documents/record-input.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { figureFacts } from '../drawing/views/figures/figure-facts.ts'
import { figureDrawing } from '../drawing/views/figures.ts'
import type { RunEntries } from '../formats/entry/run-entries.ts'
import type { Print } from '../words/print.ts'
import { entriesInForce } from './entries-in-force.ts'
import type { JudgedRun } from './judge-readings.ts'
import { postsNearMarks } from './locate-warnings.ts'
import { placedTickets } from './placed-tickets.ts'
import { stripInput } from './strip-input.ts'
import { recordInput } from './write-record.ts'

interface Options {
  /** The utility ticket as somebody wrote it; null to take those of the entries. */
  readonly ticket: string | null
  /** What was recorded at the run besides readings. */
  readonly entries: Pick<RunEntries, 'tickets'>
  /** Null where the run was not placed on its road. */
  readonly onRoad: OnRoad | null
}

/** The crew sheet of a run as PDF, in the language of its printing. */
export const writeRunCrewSheet = (
  judged: JudgedRun,
  { ticket, entries, onRoad }: Options,
  printing: DocumentPrinting,
): Promise<Uint8Array> => {
  const { print } = printing
  return writeCrewSheet(
    crewSheetContents(
      recordInput(judged, print, onRoad),
      ticket === null ? enteredTickets(judged, entries, print) : print.theirs(ticket),
    ),
    { ...stripInput(judged, print), verdicts: null },
    lapFigures(judged, print),
    printing,
  )
}

function enteredTickets(judged: JudgedRun, entries: Options['entries'], print: Print): string | null {
  const tickets = placedTickets(judged, entriesInForce(entries.tickets))
  return ticketsText(judged.run, tickets, postsNearMarks(judged.model.layout.posts, tickets), print)
}

/** One picture for each way in which the run's panels lap. */
function lapFigures({ requirements, model }: JudgedRun, print: Print): readonly Drawing[] {
  const laps = requirements.filter(({ figure }) => figure === 'lap')
  return groupBy(laps, ({ must }) => contentOf(must)).map(([lap]) =>
    figureDrawing('lap', figureFacts(lap, sheetNamed(model, lap.sheet), print)),
  )
}

function sheetNamed({ system, first, second }: RunModel, id: string) {
  const ends = [first, second].flatMap((end) => (end.kind === 'unit' ? [end.sheet] : []))
  return ends.find((sheet) => sheet.id === id) ?? system
}
