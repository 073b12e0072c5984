import type { RecordSaying } from '../../core/record/record-saying.ts'
import type { Printers } from '../print.ts'

/** What was recorded at another version of a run. */
export const record: Printers<RecordSaying> = {
  'asked earlier': ({ because }) => earlierWords[because],
}

const earlierWords: Readonly<Record<RecordSaying['because'], string>> = {
  'place gone': 'the run no longer has this place',
  'asked otherwise': 'the same place is asked something else now',
  'no longer asked': 'it is no longer asked of this place',
  'no version in common': 'the version that it was read at is not here, or has none in common with this one',
}
