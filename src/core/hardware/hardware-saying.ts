import { agreementDateOf } from './agreement-dates.ts'
import type { CrashworthyEnd, EndExposure } from './crashworthy-end.ts'
import type { AgreementCategory, Cited, Criteria, EndSheet, HardwareSheet, Source } from './hardware-sheet.ts'
import { type LimitsSaying, limitsOf } from './limits-saying.ts'
import { nameOf, type SheetText, sheetText } from './sheet-text.ts'
import {
  isMash,
  type NeededTest,
  neededTest,
  type TestAnswer,
  type TestedHardware,
  type WorkAtHand,
} from './tested-criteria.ts'
import { type Title, title } from './title.ts'

/** What is said of hardware at design and at judging. */
export type HardwareSaying =
  | SourceSaying
  | Title
  | TestsSaying
  | NeededTestSaying
  | TestAnswerSaying
  | NeededEndSaying
  | EndExposureSaying
  | HardwareAtHeight

/** Where something is printed. */
export interface SourceSaying {
  readonly kind: 'source'
  readonly title: Title
  /** Null where it has none. */
  readonly edition: Title | null
}

/** The crash tests that a sheet states. */
export interface TestsSaying {
  readonly kind: 'crash tests'
  readonly tests: readonly Criteria[]
}

/** What one crash test has to be, and why. */
export interface NeededTestSaying extends NeededTest {
  readonly kind: 'needed crash test'
  readonly at: WorkAtHand
  readonly category: AgreementCategory
  /** The last letting without MASH 2016 for this class of hardware; ISO date. */
  readonly lastLetting: string
}

/** Whether one test covers what is needed. */
export interface TestAnswerSaying {
  readonly kind: 'crash test found'
  readonly answer: TestAnswer
  /** Whether it does for any work and speed, where the speed is not said. */
  readonly forAny: boolean
  readonly tests: readonly Criteria[]
  readonly needed: NeededTestSaying
}

/** What an end has to be where it stands. */
export interface NeededEndSaying {
  readonly kind: 'needed end'
  readonly end: EndExposure['end']
}

/** What an end is, and which traffic can reach it. */
export interface EndExposureSaying extends EndExposure {
  readonly kind: 'exposed end'
  readonly crashworthy: boolean
  readonly of: EndSheet['kind']
}

/** A system or an end unit with the height at which its rail stands. */
export interface HardwareAtHeight {
  readonly kind: 'hardware at height'
  readonly name: SheetText
  readonly limits: LimitsSaying
}

export const atHeight = (sheet: HardwareSheet): HardwareAtHeight => ({
  kind: 'hardware at height',
  name: nameOf(sheet),
  limits: limitsOf(sheet.railHeight),
})

/** What one crash test has to be, to be said with its reason. */
export const neededTestSaying = ({ category }: Pick<TestedHardware, 'category'>, at: WorkAtHand): NeededTestSaying => ({
  kind: 'needed crash test',
  ...neededTest(category, at),
  ...{ at, category, lastLetting: agreementDateOf(category).lastLetting },
})

/** Why the hardware is covered, is not, or may be. */
export const testAnswerSaying = (hardware: TestedHardware, at: WorkAtHand, answer: TestAnswer): TestAnswerSaying => ({
  kind: 'crash test found',
  forAny: answer.verdict === 'meets' && isMash(answer.by) && at.speed === null,
  ...{ answer, tests: hardware.criteria, needed: neededTestSaying(hardware, at) },
})

/** What is said of an end unit where it stands. */
export const endExposure = (
  { crashworthy, kind }: CrashworthyEnd,
  { end, opposingReaches }: EndExposure,
): EndExposureSaying => ({ kind: 'exposed end', crashworthy, of: kind, end, opposingReaches })

/** A document by its title and edition, to be said. */
export const sourceSaying = (source: Source): SourceSaying => cited(source, title)

/** What a statement of a sheet cites, to be said. */
export const sourceIn = (sheet: HardwareSheet, { source }: Pick<Cited, 'source'>): SourceSaying =>
  cited(sheet.sources[source] ?? { title: source, edition: '' }, (text) => title(sheetText(sheet, text)))

const cited = (source: Source, said: (text: string) => Title): SourceSaying => ({
  kind: 'source',
  title: said(source.title),
  edition: source.edition === '' ? null : said(source.edition),
})
