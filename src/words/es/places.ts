import type { EndSheet } from '../../core/hardware/hardware-sheet.ts'
import type { OwnNumber, Place } from '../../core/requirements/requirement.ts'
import { lowerFirst } from '../lower-first.ts'
import type { Printers } from '../print.ts'

/** Names of places: `poste 9 (poste 2 del terminal abocinado)`. */
export const places: Printers<Place> = {
  post: ({ number, own }) => `poste ${number}${ownText('poste', own)}`,
  panel: ({ number, own }) => `panel ${number}${ownText('panel', own)}`,
  space: ({ number }) => `entre los postes ${number} y ${number + 1}`,
  splice: ({ number }) => `empalme ${number}, entre los paneles ${number} y ${number + 1}`,
  unit: ({ number, sheet }, print) => `${number === 1 ? 'primer' : 'segundo'} extremo, ${lowerFirst(print.say(sheet))}`,
  run: () => 'el tramo',
}

export const ownText = (piece: string, own: OwnNumber | null): string =>
  own === null ? '' : ` (${piece} ${own.number} del ${endNames[own.of]})`

const endNames: Readonly<Record<EndSheet['kind'], string>> = {
  terminal: 'terminal',
  'trailing anchor': 'anclaje de salida',
  'buried end': 'extremo enterrado',
  'bridge end': 'extremo de puente',
}
