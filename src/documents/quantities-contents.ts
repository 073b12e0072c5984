import { feetInchesText } from '../core/hardware/dimension-text.ts'
import { type PayRounding, payStep } from '../core/quantities/pay-length.ts'
import type { Quantity, QuantityPiece } from '../core/quantities/quantity.ts'
import { type Boundaries, boundarySaying } from '../core/quantities/run-length.ts'
import type { Quantities } from '../core/quantities/take-quantities.ts'
import type { Barrier } from '../core/staking/barrier.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import { type TitleBlockContents, titleBlockContents } from './title-block.ts'
import { documentWords } from './words/document-words.ts'

/** The quantities of a run and what to order for it, for any writer. */
export interface QuantitiesContents {
  readonly title: string
  readonly run: string
  readonly titleBlock: TitleBlockContents | null
  /** Where the run begins and ends for pay, in words. */
  readonly boundaries: string
  readonly rounding: PayRounding
  /** The rounding in words. */
  readonly roundingText: string
  readonly paidFeet: number
  /** `75 ft to be paid` */
  readonly paidText: string
  readonly sections: readonly QuantitySection[]
  readonly materials: readonly MaterialLine[]
}

export interface QuantitySection {
  readonly title: string
  readonly lines: readonly QuantityLine[]
}

export interface QuantityLine {
  readonly id: string
  readonly name: string
  /** Lengths are decimal feet. */
  readonly unit: 'ft' | 'each'
  readonly amount: number
  /** `87.5 ft (87 ft 6 in)`, `12` */
  readonly amountText: string
  readonly pieces: readonly { readonly what: string; readonly amount: number }[]
  /** The pieces in few words: `panels 4 to 10`. */
  readonly piecesText: string
  readonly source: string | null
  readonly note: string | null
}

/** One piece or bundle with room for the marks that its supplier rolled or tagged on it. */
export interface MaterialLine {
  readonly item: string
  readonly count: number
  readonly where: string
  /** What has to be written down: heat and coating marks on rail, one mark of the bundle on anything else. */
  readonly marks: readonly ('heat' | 'coating' | 'bundle')[]
}

export function quantitiesContents(
  run: Pick<RunFile, 'name' | 'project' | 'titleBlock'>,
  barrier: Barrier,
  quantities: Quantities,
  rule: { readonly boundaries: Boundaries; readonly rounding: PayRounding },
  print: Print,
): QuantitiesContents {
  const { first, second } = rule.boundaries
  const words = documentWords(print).quantities
  const section = (title: string, lines: readonly Quantity[]): QuantitySection => ({
    title,
    lines: lines.map((line) => lineOf(line, print)),
  })
  return {
    title: words.title,
    run: print.theirs(run.name),
    titleBlock: titleBlockContents(run, print),
    boundaries: words.boundaries(
      print.say(boundarySaying(barrier, 'first', first)),
      print.say(boundarySaying(barrier, 'second', second)),
    ),
    rounding: rule.rounding,
    roundingText: words.rounding(rule.rounding === '12.5 ft', feetText(payStep(rule.rounding), print)),
    paidFeet: quantities.paidFeet,
    paidText: words.paid(feetText(quantities.paidFeet, print)),
    sections: [
      section(words.sections.length, [quantities.run.length, quantities.installed]),
      section(words.sections.ends, quantities.ends),
      section(words.sections.posts, [...quantities.posts, quantities.blocks]),
      section(words.sections.panels, quantities.panels),
      section(words.sections.bolts, quantities.bolts),
      section(words.sections.spares, quantities.spares),
    ],
    materials: materialLines(quantities, print),
  }
}

function lineOf({ id, name, unit, amount, pieces, source, note }: Quantity, print: Print): QuantityLine {
  const isLength = unit === 'in'
  return {
    id,
    name: print.say(name),
    unit: isLength ? 'ft' : 'each',
    amount: isLength ? amount / 12 : amount,
    amountText: isLength ? lengthText(amount, print) : `${amount}`,
    pieces: pieces.map((piece) => ({
      what: print.say(piece.what),
      amount: isLength ? piece.amount / 12 : piece.amount,
    })),
    piecesText: piecesText(pieces, print),
    source:
      source &&
      `${source.confirmation === 'published' ? '' : `${documentWords(print).frame.confirmations[source.confirmation]}: `}${print.say(source.said)}`,
    note: note && print.say(note),
  }
}

const feetText = (feet: number, print: Print): string => print.written(`${feet} ft`, feet, 'ft')

/** As it is paid, with the trade's way of saying it. */
const lengthText = (inches: number, print: Print): string =>
  print.units === 'metric'
    ? print.feetInches(inches)
    : `${Math.round((inches / 12) * 1e4) / 1e4} ft (${feetInchesText(inches)})`

/** One line for each panel, since rail carries its marks panel by panel; bundles of everything else. */
function materialLines({ panels, posts, blocks, bolts, ends }: Quantities, print: Print): readonly MaterialLine[] {
  const toOrder = ({ id, amount }: Quantity): boolean => amount > 0 && !/\/(standing|hung)\//.test(id)
  return [
    ...panels.filter(toOrder).flatMap(({ name, pieces }) =>
      pieces.map(
        ({ what, amount }): MaterialLine => ({
          item: print.say(name),
          count: amount,
          where: print.say(what),
          marks: ['heat', 'coating'],
        }),
      ),
    ),
    ...[...ends, ...posts, blocks, ...bolts.filter(({ id }) => id.startsWith('bolts/'))].filter(toOrder).map(
      ({ name, amount, pieces }): MaterialLine => ({
        item: print.say(name),
        count: amount,
        where: piecesText(pieces, print),
        marks: ['bundle'],
      }),
    ),
  ]
}

/** `panels 4 to 10 and 12; splice to the standing run` */
const piecesText = (pieces: readonly QuantityPiece[], print: Print): string =>
  print.say({ kind: 'pieces', pieces: pieces.map(({ what }) => what) })
