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
    return direction === null ? text : `${direction === 'approach' ? 'Approach' : 'Departure'}: ${text}`
  },
  'table cell': ({ table, parts, confirmedBy }) =>
    [[table, ...parts.map(partText)].join(', '), ...(confirmedBy === null ? [] : [`confirmed by ${confirmedBy}`])].join(
      '; ',
    ),
  'flatter is always allowed': () =>
    'flatter is always allowed, steeper only where crash tested: 31 in W-beam to 5:1; 27 3/4 in W-beam is doubtful steeper than 15:1 at test level 3 (public answer 321)',
  'first printing differs': () =>
    'the first printing of the 2011 edition has wider backslope values at 40 mi/h and below; its errata correct them',
  'clear zones of both editions': () => 'used for the 2011 edition too; below 80 km/h and above 110 km/h least certain',
  'last column least certain': ({ limitIsPrinted }) =>
    `the 65 mi/h column is least certain${limitIsPrinted ? '; that no factor is needed above a radius of 2950 ft is printed in a public guide for military roads' : ''}`,
}

function partText(part: CellPart): string {
  switch (part.kind) {
    case 'speed':
      return `${part.upTo ? 'up to ' : ''}${part.speed} ${part.unit}`
    case 'volume': {
      const { from, to } = part
      if (from === 0) return `ADT below ${thousands(to!)}`
      return to === null ? `ADT above ${thousands(from)}` : `ADT ${thousands(from)} to ${thousands(to)}`
    }
    case 'slope': {
      const { slope, steepest, flattest } = part
      if (flattest === null) return `${slope} 1V:${steepest}H or flatter`
      return flattest === steepest ? `${slope} 1V:${steepest}H` : `${slope} 1V:${flattest}H to 1V:${steepest}H`
    }
    case 'radius':
      return `radius ${part.radius} ${part.unit}`
    case 'flare':
      return `${part.side} the shy line${part.barrier === null ? '' : `, ${part.barrier}`}`
  }
}

const thousands = (count: number): string => String(count).replaceAll(/\B(?=(\d{3})+$)/g, ',')
