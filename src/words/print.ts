import type { Language } from '../core/language.ts'
import type { LengthUnit } from '../core/units/exact-length.ts'
import type { Unit } from '../core/units/quantity-kinds.ts'
import type { OwnWords } from './own-words.ts'
import type { Saying } from './saying.ts'

/** The words of the model in one language, with lengths in the units asked for. */
export interface Print extends Lengths {
  readonly language: Language
  /** In which lengths are said first, as they are published behind; null for as they are published alone. */
  readonly units: 'us' | 'metric' | null
  readonly say: (said: Saying) => string
  /** What a person wrote, as it was written. */
  readonly theirs: (text: string) => string
  /** `12 May 2016, 10:05`, as the clock of this device shows it. */
  readonly moment: (at: string) => string
  /** A day as `2016-05-12`, with the name of its weekday. */
  readonly day: (day: string) => string
  /** Of words given in each language, those of this one. */
  readonly pick: <T>(words: Readonly<Record<Print['language'], T>>) => T
  /** Of one part of its own words, which come with the language unless that is English. */
  readonly own: <P extends keyof OwnWords>(part: P, english: OwnWords[P]) => OwnWords[P]
  /** `a, b and c` */
  readonly list: (parts: readonly string[], joint: 'and' | 'or') => string
}

/**
 * How a value is said: in the units asked for, and as it is published in brackets where that is in the other system,
 * `787.4 mm (31 in)`. What is judged is the published value.
 */
export interface Lengths {
  /** `27 3/4 in`, `4 ft`, `787 mm` */
  readonly length: (value: number, unit: LengthUnit) => string
  /** The same of whatever else is measured: `25 lbf·ft`, `2.5 %`, `15°`, and `8` for a count. */
  readonly quantity: (value: number, unit: Unit) => string
  /** `9 ft 4 1/2 in`, along the rail. */
  readonly feetInches: (inches: number) => string
  /** As a sentence writes the value, with a hyphen before a noun: `25 ft`, `6-ft`. */
  readonly written: (text: string, value: number, unit: Unit) => string
  /** As `quantity` where that is exact, in decimals otherwise, so that no value is rounded onto a limit. */
  readonly measured: (value: number, unit: Unit) => string
  /** `0.240 in` */
  readonly decimal: (value: number, unit: Unit) => string
  /** In the units asked for alone, for where there is room for one, as at a dimension line. */
  readonly short: Pick<Lengths, 'length' | 'feetInches' | 'written'>
}

/** One printer for each kind of a part's sayings. */
export type Printers<S extends { readonly kind: string }> = {
  readonly [K in S['kind']]: (saying: Extract<S, { readonly kind: K }>, print: Print) => string
}
