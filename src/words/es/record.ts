import type { RecordSaying } from '../../core/record/record-saying.ts'
import type { Printers } from '../print.ts'

/** What was recorded at another version of a run. */
export const record: Printers<RecordSaying> = {
  'asked earlier': ({ because }) => earlierWords[because],
}

const earlierWords: Readonly<Record<RecordSaying['because'], string>> = {
  'place gone': 'el tramo ya no tiene este lugar',
  'asked otherwise': 'del mismo lugar se pide ahora otra cosa',
  'no longer asked': 'ya no se pide de este lugar',
  'no version in common': 'la versión en que se leyó no está aquí, o no tiene ninguna en común con esta',
}
