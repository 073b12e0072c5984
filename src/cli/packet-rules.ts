import { type Language, languages } from '../core/language.ts'
import { payRoundings } from '../core/quantities/pay-length.ts'
import type { Boundary } from '../core/quantities/run-length.ts'
import { type PaperName, paperNames } from '../core/units/paper-names.ts'
import { pointOrders } from '../formats/csv/write-points.ts'
import { day } from '../formats/range/ranged.ts'
import type { PacketOptions } from '../operations/packet-options.ts'
import { type PacketPurpose, packetPurposes } from '../protocol/packet-purposes.ts'
import { english } from '../words/english.ts'
import type { Print } from '../words/print.ts'
import { spanish } from '../words/spanish.ts'
import { badWords, type CommandOptions } from './command.ts'

/** The paper that text stands on; letter where none is asked for. */
export function paperOf({ page }: CommandOptions): PaperName {
  const paper = paperNames.find((one) => one === (page ?? 'letter'))
  if (paper === undefined) throw badWords(`--page ${paperNames.join(', ')}`, page!)
  return paper
}

/** What the packet is made for; null for all that can be true now. */
export function purposeOf({ for: asked }: CommandOptions): PacketPurpose | null {
  if (asked === null) return null
  const purpose = packetPurposes.find((one) => one === asked)
  if (purpose === undefined) throw badWords(`--for ${packetPurposes.join(', ')}`, asked)
  return purpose
}

/** To what pay lengths are rounded and where the run begins and ends for pay. */
export function payOf({ pay, boundaries }: CommandOptions): PacketOptions['pay'] {
  const rounding = payRoundings.find((one) => one === (pay ?? payRoundings[0]))
  if (rounding === undefined) throw badWords(`--pay ${payRoundings.join(', ')}`, pay!)
  const [first = '', second = first, ...rest] = (boundaries ?? 'splice').split(',').map((one) => one.trim())
  if (rest.length > 0) throw badWords('--boundaries FIRST,SECOND', boundaries!)
  return { boundaries: { first: boundaryOf(first), second: boundaryOf(second) }, rounding }
}

function boundaryOf(words: string): Boundary {
  if (words === 'splice' || words === 'listed length') return { kind: words }
  const [, number] = /^post (\d{1,3})$/.exec(words) ?? []
  if (number === undefined) throw badWords('--boundaries with splice, listed length or post N', words)
  return { kind: 'post', number: Number(number) }
}

/** Columns of the stakes. */
export function stakeColumnsOf(options: CommandOptions): PacketOptions['stakes'] {
  const wanted = options['stake-order'] ?? 'northing'
  const order = pointOrders.find((one) => one.startsWith(`point, ${wanted},`))
  if (order === undefined) throw badWords('--stake-order northing or easting', wanted)
  return { order, header: !options['no-header'] }
}

/** The words of a document: its language, English where none is asked for, and its units. */
export function wordsOf({ language, units }: CommandOptions, ownUnits: Print['units']): Print {
  const wanted = units ?? ownUnits
  if (wanted !== null && wanted !== 'us' && wanted !== 'metric') throw badWords('--units us or metric', wanted)
  if (language !== null && !isLanguage(language)) throw badWords('--language en or es', language)
  return (language === 'es' ? spanish : english)(wanted)
}

const isLanguage = (word: string): word is Language => (languages as readonly string[]).includes(word)

/** When it is printed and by whom, as its files state it. */
export function printingOf({ date, author }: CommandOptions): Pick<PacketOptions, 'printedAt' | 'author'> {
  const form = /^\d{4}-\d\d-\d\d(T\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)?)?$/
  if (
    date !== null &&
    !(form.test(date) && day.safeParse(date.slice(0, 10)).success && !Number.isNaN(Date.parse(date)))
  )
    throw badWords('--date as 2026-05-12 or 2026-05-12T10:05-06:00', date)
  return { printedAt: date ?? new Date().toISOString(), author: author ?? '' }
}
