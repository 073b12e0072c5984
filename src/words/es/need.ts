import type { NeedSaying } from '../../core/need/need-saying.ts'
import type { Note } from '../../core/need/note.ts'
import type { CellPart } from '../../core/need/tables/table.ts'
import type { Print, Printers } from '../print.ts'
import { type SiteLengths, siteLengths } from '../site-lengths.ts'
import { needNotes } from './need-notes.ts'

export const need: Printers<NeedSaying> = {
  'note on need': ({ note, units, direction }, print) => {
    const say = needNotes[note.kind] as (note: Note, site: SiteLengths, print: Print) => string
    const text = say(note, siteLengths(units), print)
    return direction === null ? text : `${direction === 'approach' ? 'Entrada' : 'Salida'}: ${text}`
  },
  'table cell': ({ table, parts, confirmedBy }) =>
    [
      [table, ...parts.map(partText)].join(', '),
      ...(confirmedBy === null ? [] : [`confirmado por ${confirmedBy}`]),
    ].join('; '),
  'flatter is always allowed': () =>
    'más tendido se permite siempre, más brusco solo donde se ensayó a choque: la doble onda de 31 in hasta 5:1; la de 27 3/4 in es dudosa a más de 15:1 en el nivel de ensayo 3 (respuesta pública 321)',
  'first printing differs': () =>
    'la primera impresión de la edición de 2011 tiene valores más anchos de talud ascendente a 40 mi/h o menos; su fe de erratas los corrige',
  'clear zones of both editions': () =>
    'se usa también para la edición de 2011; por debajo de 80 km/h y por encima de 110 km/h, lo menos seguro',
  'last column least certain': ({ limitIsPrinted }) =>
    `la columna de 65 mi/h es la menos segura${limitIsPrinted ? '; que no hace falta factor por encima de un radio de 2950 ft lo imprime una guía pública para caminos militares' : ''}`,
}

function partText(part: CellPart): string {
  switch (part.kind) {
    case 'speed':
      return `${part.upTo ? 'hasta ' : ''}${part.speed} ${part.unit}`
    case 'volume': {
      const { from, to } = part
      if (from === 0) return `TPDA de menos de ${thousands(to!)}`
      return to === null ? `TPDA de más de ${thousands(from)}` : `TPDA ${thousands(from)} a ${thousands(to)}`
    }
    case 'slope': {
      const { steepest, flattest } = part
      const slope = part.slope === 'foreslope' ? 'talud descendente' : 'talud ascendente'
      if (flattest === null) return `${slope} 1V:${steepest}H o más tendido`
      return flattest === steepest ? `${slope} 1V:${steepest}H` : `${slope} 1V:${flattest}H a 1V:${steepest}H`
    }
    case 'radius':
      return `radio ${part.radius} ${part.unit}`
    case 'flare':
      return `${part.side === 'inside' ? 'dentro' : 'más allá'} de la línea de recelo${part.barrier === null ? '' : `, ${barrierWord[part.barrier]}`}`
  }
}

const barrierWord = { rigid: 'rígida', 'semi-rigid': 'semirrígida' } as const

const thousands = (count: number): string => String(count).replaceAll(/\B(?=(\d{3})+$)/g, ',')
