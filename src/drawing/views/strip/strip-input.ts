import type { EndSheet, LongitudinalSheet } from '../../../core/hardware/hardware-sheet.ts'
import { sheetText } from '../../../core/hardware/sheet-text.ts'
import type { Layout, Obstruction, Unit } from '../../../core/layout/layout.ts'
import type { Verdict } from '../../../core/verdicts/verdict.ts'
import type { Print } from '../../../words/print.ts'

/** What closes one end of the run. */
export interface StripEnd {
  /** As it is said. */
  readonly name: string
  readonly kind: EndSheet['kind'] | 'standing splice' | 'unknown end'
  /** Null where the run joins one that stands, or nobody knows what ends it. */
  readonly sheet: EndSheet | null
}

/** What a person called the run and its road. */
interface StripTitles {
  readonly run: string
  readonly route: string
  /** Stations or mileposts, as the record writes them. */
  readonly stations: string
  /** What stands below them on paper; null where nobody said anything of it. */
  readonly block: StripBlock | null
}

/** The title block: what each thing is called and said, and the latest revision in a sentence. */
interface StripBlock {
  readonly cells: readonly { readonly name: string; readonly value: string }[]
  readonly revision: string | null
}

/** All that the strip shows. Obstructions and need are inches along the rail from the run's datum, as in the request. */
export interface StripInput {
  readonly layout: Layout
  readonly system: LongitudinalSheet
  readonly first: StripEnd
  readonly second: StripEnd
  /** False where an end is one that nobody looked at or that no sheet fits: then no rail counts for certain. */
  readonly areEndsKnown: boolean
  /** The run's own flare, which the strip draws straight; null where it has none. */
  readonly flareRate: number | null
  readonly traffic: 'one-way' | 'two-way' | 'divided' | null
  readonly obstructions: readonly Obstruction[]
  readonly need: { readonly fromInches: number; readonly toInches: number } | null
  /** Null before anything was judged: the strip then shows the layout alone. */
  readonly verdicts: readonly Verdict[] | null
  readonly titles: StripTitles
  readonly units: 'feet and inches' | 'metric'
  readonly print: Print
  /** Offsets are drawn this many times their size, and the strip says so; 1 is true. */
  readonly lateralExaggeration: number
}

export const unitName = (input: StripInput, unit: Unit): string =>
  unit === 'run' ? input.print.say(sheetText(input.system, input.system.name)) : input[unit].name

/** First end, system and second end, as the run is passed. */
export const unitNames = (input: StripInput): readonly string[] =>
  (['first', 'run', 'second'] as const).map((unit) => unitName(input, unit))
