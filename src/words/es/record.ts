import type { AskedEarlier } from '../../core/record/readings-in-force.ts'
import type { RecordSaying } from '../../core/record/record-saying.ts'
import type { ReservedTopic } from '../../core/requirements/derived-topics.ts'
import type { Printers } from '../print.ts'

/** What was recorded at another version of a run, and its sheets. */
export const record: Printers<RecordSaying> = {
  'asked earlier': ({ because }) => earlierWords[because],
  'other sheet on shelf': ({ sheet, pinned, onShelf, isNewer }) =>
    pinned === onShelf
      ? `En el estante, esta edición de la ficha, ${sheet} ${onShelf}, tiene otro contenido; este tramo se juzga por aquel con que se dispuso.`
      : `En el estante hay ${isNewer ? 'una edición más nueva' : 'otra edición'} de esta ficha, ${sheet} ${onShelf}; este tramo se juzga por aquella con que se dispuso, ${pinned}.`,
  'thing read': ({ place, version, what }, print) =>
    [
      print.say(place),
      ...(version === null ? [] : [version === 'another' ? 'de otra versión' : `versión ${version}`]),
      ...(what === null ? [] : [print.say(what)]),
    ].join(', '),
  topic: ({ topic }) => topics[topic],
}

const earlierWords: Readonly<Record<AskedEarlier['because'], string>> = {
  'place gone': 'el tramo ya no tiene este lugar',
  'asked otherwise': 'del mismo lugar se pide ahora otra cosa',
  'no longer asked': 'ya no se pide de este lugar',
  'no version in common': 'la versión en que se leyó no está aquí, o no tiene ninguna en común con esta',
}

const topics: Readonly<Record<ReservedTopic, string>> = {
  'rail-height': 'altura de la baranda',
  'post-kind': 'clase de poste',
  block: 'bloque separador',
  'rail-bolt': 'tornillo de la baranda',
  'hinge-side': 'lado del perno de bisagra',
  'slot-set': 'ranuras del poste',
  'stub-height': 'altura del muñón',
  'flare-offset': 'separación del abocinado',
  spacing: 'espacio entre postes',
  'panel-length': 'longitud de un panel',
  'slotted-panel': 'panel ranurado',
  nested: 'baranda doble',
  straightness: 'rectitud',
  'splice-position': 'lugar de un empalme',
  lap: 'solape',
  curb: 'bordillo ante un hueco',
  'new-slot': 'ranura nueva',
  criteria: 'ensayo de choque',
  crashworthy: 'extremo ensayado a choque',
  need: 'longitud de necesidad',
  'rest-of-run': 'resto del tramo',
  'end-hardware': 'extremo conocido',
  'end-joins': 'el extremo se une al tramo',
  location: 'lugar conocido',
  'post-count': 'número de postes',
  'panel-count': 'número de paneles',
  'site-check': 'comprobación del sitio',
  along: 'posición a lo largo de la baranda',
  'lateral-offset': 'desplazamiento lateral',
}
