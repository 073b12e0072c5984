import type { AskedEarlier } from '../../core/record/readings-in-force.ts'
import type { RecordSaying } from '../../core/record/record-saying.ts'
import type { Printers } from '../print.ts'

/** What was recorded at another version of a run, and its sheets. */
export const record: Printers<RecordSaying> = {
  'asked earlier': ({ because }) => earlierWords[because],
  'other sheet on shelf': ({ sheet, pinned, onShelf, isNewer }) =>
    pinned === onShelf
      ? `En el estante, esta edición de la ficha, ${sheet} ${onShelf}, tiene otro contenido; este tramo se juzga por aquel con que se dispuso.`
      : `En el estante hay ${isNewer ? 'una edición más nueva' : 'otra edición'} de esta ficha, ${sheet} ${onShelf}; este tramo se juzga por aquella con que se dispuso, ${pinned}.`,
}

const earlierWords: Readonly<Record<AskedEarlier['because'], string>> = {
  'place gone': 'el tramo ya no tiene este lugar',
  'asked otherwise': 'del mismo lugar se pide ahora otra cosa',
  'no longer asked': 'ya no se pide de este lugar',
  'no version in common': 'la versión en que se leyó no está aquí, o no tiene ninguna en común con esta',
}
