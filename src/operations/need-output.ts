import type { FitCheck } from '../core/fit/fit-check.ts'
import type { NoteSaying } from '../core/need/need-saying.ts'
import type { Note } from '../core/need/note.ts'
import type { TableValue } from '../core/need/tables/table.ts'
import type { Print } from '../words/print.ts'
import { type DirectionReport, inUnit, type NeedReport } from './compute-need.ts'

/** What `lapwise need --json` prints: all that is said as text, lengths in notes in the report's unit. */
export const needOutput = (report: NeedReport, print: Print): unknown => ({
  ...report,
  approach: directionOutput(report.approach, print),
  departure: report.departure === null ? null : directionOutput(report.departure, print),
  checks: report.checks.map((check) => checkOutput(check, print)),
})

const directionOutput = ({ notes, sources, ...direction }: DirectionReport, print: Print) => ({
  ...direction,
  notes: notes.map((note) => noteOutput(note, print)),
  sources: sources.map((value) => cellOutput(value, print)),
})

const checkOutput = (check: FitCheck, print: Print) => ({
  ...check,
  what: print.say(check.what),
  limit: print.say(check.limit),
  value: print.say(check.value),
  source: print.say(check.source),
  smallestChange: check.smallestChange === null ? null : print.say(check.smallestChange),
})

const cellOutput = ({ remark, ...value }: TableValue, print: Print) => ({
  ...value,
  source: print.say(value.source),
  ...(remark === undefined ? {} : { remark: print.say(remark) }),
})

const noteOutput = (saying: NoteSaying, print: Print): object => ({
  ...converted(saying.note, (length) => inUnit(length, saying.units)),
  text: print.say(saying),
})

/** Fields that hold a length in every note and alternative that has them. */
const lengthFields: ReadonlySet<string> = new Set([
  'runoutLength',
  'narrowest',
  'widest',
  'clearZone',
  'radius',
  'near',
  'far',
  'offset',
  'shyLine',
  'at',
  'lengthOfNeed',
  'lateralAtEnd',
  'parallelLength',
  'lateralExtent',
  'straightFormula',
  'behindFirst',
  'available',
  'shortfall',
  'to',
])

/** `note`, or a part of it, with every length in it passed through `convert`. */
function converted(note: Note | object, convert: (length: number) => number): object {
  return Object.fromEntries(
    Object.entries(note).map(([field, entry]: [string, unknown]) => {
      if (typeof entry === 'number') return [field, lengthFields.has(field) ? convert(entry) : entry]
      if (Array.isArray(entry)) return [field, entry.map((item: object) => converted(item, convert))]
      return [field, typeof entry === 'object' && entry !== null ? converted(entry, convert) : entry]
    }),
  )
}
