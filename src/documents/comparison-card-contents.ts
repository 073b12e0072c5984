import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import type { SheetThing, SheetValue } from '../core/hardware/sheet-statements.ts'
import { nameOf, sheetText } from '../core/hardware/sheet-text.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { figureFacts } from '../drawing/views/figures/figure-facts.ts'
import { figureHalves } from '../drawing/views/figures.ts'
import type { Print } from '../words/print.ts'
import { thingWords, valueWords } from '../words/say-sheet.ts'
import { cautions } from './cautions.ts'
import { documentWords } from './words/document-words.ts'

/** One thing that two sheets state otherwise. */
export interface ComparedItem {
  readonly about: SheetThing
  readonly sides: readonly [ComparedSide | null, ComparedSide | null]
}

/** What one of them states there that the other does not, and what it requires by it. */
export interface ComparedSide {
  readonly values: readonly SheetValue[]
  readonly asks: readonly Asked[]
}

type Asked = Omit<Requirement, 'source'>

/** A field of the whole sheet, or what no statement with a source says, in words. */
export interface ComparedField {
  readonly what: string
  readonly one: string | null
  readonly other: string | null
}

/** What differs between two sheets, item by item, for one sheet of paper. */
export interface ComparisonCardContents {
  readonly title: string
  /** Both, in the head of each page. */
  readonly run: string
  readonly sheets: readonly [ComparedHead, ComparedHead]
  readonly items: readonly ItemLine[]
  readonly fields: readonly ComparedField[]
  /** What else differs, in a sentence; null where nothing does. */
  readonly besides: string | null
  readonly caution: string
}

interface ComparedHead {
  readonly name: string
  readonly edition: string
  readonly notice: string
}

interface ItemLine {
  readonly what: string
  /** Why it matters, as the sheets say. */
  readonly why: readonly string[]
  readonly sides: readonly [SideLine | null, SideLine | null]
  /** The same thing as it is right by each of them. */
  readonly pictures: readonly (readonly [Drawing, Drawing])[]
}

interface SideLine {
  readonly values: readonly string[]
  readonly asks: readonly string[]
}

interface Compared {
  readonly items: readonly ComparedItem[]
  readonly fields: readonly ComparedField[]
  /** Statements that differ in words or source alone. */
  readonly others: { readonly texts: number; readonly sources: number }
}

export function comparisonCardContents(
  sheets: readonly [HardwareSheet, HardwareSheet],
  { items, fields, others }: Compared,
  print: Print,
): ComparisonCardContents {
  const words = documentWords(print).comparisonCard
  const [one, other] = [headOf(sheets[0], print), headOf(sheets[1], print)]
  return {
    title: words.title,
    run: `${one.name} / ${other.name}`,
    sheets: [one, other],
    items: items.map((item) => itemLine(sheets, item, print)),
    fields,
    besides: others.texts + others.sources === 0 ? null : words.besides(others.texts, others.sources),
    caution: cautions(print)[0]!,
  }
}

const headOf = (sheet: HardwareSheet, print: Print): ComparedHead => ({
  name: print.say(nameOf(sheet)),
  edition: documentWords(print).sheetList.edition(print.theirs(sheet.version)),
  notice: print.say(sheetText(sheet, sheet.notice)),
})

function itemLine(
  sheets: readonly [HardwareSheet, HardwareSheet],
  { about, sides }: ComparedItem,
  print: Print,
): ItemLine {
  const asks = sides.flatMap((side) => side?.asks ?? [])
  return {
    what: thingWords(about, print),
    why: [...new Set(asks.map(({ why }) => print.say(why)))],
    sides: [sideLine(sides[0], print), sideLine(sides[1], print)],
    pictures: (sides[0]?.asks ?? []).flatMap((one) => {
      const other = sides[1]?.asks.find(({ topic }) => topic === one.topic)
      const [here, there] = [rightOf(sheets[0], one, print), other && rightOf(sheets[1], other, print)]
      return here && there ? [[here, there] as const] : []
    }),
  }
}

const sideLine = (side: ComparedSide | null, print: Print): SideLine | null =>
  side && {
    values: side.values.map((value) => valueWords(value, print)),
    asks: side.asks.map(({ must }) => print.say(must)),
  }

/** How it is right; null where no figure tells. */
const rightOf = (sheet: HardwareSheet, requirement: Asked, print: Print): Drawing | null =>
  requirement.figure && (figureHalves(requirement.figure, figureFacts(requirement, sheet, print))?.right ?? null)
