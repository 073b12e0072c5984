import type { AskedEarlier } from '../../core/record/readings-in-force.ts'
import type { RecordSaying } from '../../core/record/record-saying.ts'
import type { Printers } from '../print.ts'

/** What was recorded at another version of a run, and its sheets. */
export const record: Printers<RecordSaying> = {
  'asked earlier': ({ because }) => earlierWords[because],
  'other sheet on shelf': ({ sheet, pinned, onShelf, isNewer }) =>
    pinned === onShelf
      ? `The shelf has other content under this edition of the sheet, ${sheet} ${onShelf}; this run is judged by what it was laid out with.`
      : `The shelf has ${isNewer ? 'a newer' : 'another'} edition of this sheet, ${sheet} ${onShelf}; this run is judged by the one it was laid out with, ${pinned}.`,
}

const earlierWords: Readonly<Record<AskedEarlier['because'], string>> = {
  'place gone': 'the run no longer has this place',
  'asked otherwise': 'the same place is asked something else now',
  'no longer asked': 'it is no longer asked of this place',
  'no version in common': 'the version that it was read at is not here, or has none in common with this one',
}
