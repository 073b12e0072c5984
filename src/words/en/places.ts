import type { EndSheet } from '../../core/hardware/hardware-sheet.ts'
import type { OwnNumber, Place } from '../../core/requirements/requirement.ts'
import { lowerFirst } from '../lower-first.ts'
import type { Printers } from '../print.ts'

/** Names of places: `post 9 (post 2 of the flared terminal)`. */
export const places: Printers<Place> = {
  post: ({ number, own }) => `post ${number}${ownText('post', own)}`,
  panel: ({ number, own }) => `panel ${number}${ownText('panel', own)}`,
  space: ({ number }) => `between posts ${number} and ${number + 1}`,
  splice: ({ number }) => `splice ${number}, between panels ${number} and ${number + 1}`,
  unit: ({ number, sheet }, print) => `${number === 1 ? 'first' : 'second'} end, ${lowerFirst(print.say(sheet))}`,
  run: () => 'the run',
}

export const ownText = (piece: string, own: OwnNumber | null): string =>
  own === null ? '' : ` (${piece} ${own.number} of the ${endNames[own.of]})`

const endNames: Readonly<Record<EndSheet['kind'], string>> = {
  terminal: 'terminal',
  'trailing anchor': 'trailing anchor',
  'buried end': 'buried end',
  'bridge end': 'bridge end',
}
