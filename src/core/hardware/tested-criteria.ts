import { agreementDateOf, agreementSource } from './agreement-dates.ts'
import type { AgreementCategory, Confirmation, Criteria, Source } from './hardware-sheet.ts'

export interface Speed {
  readonly value: number
  readonly unit: 'mi/h' | 'km/h'
}

/** The work that hardware is used for; null where nobody says. */
export interface WorkAtHand {
  /** New work falls under the agreement's letting dates; standing work does not. */
  readonly work: 'new' | 'standing' | null
  /** ISO date of the letting. */
  readonly letting: string | null
  readonly speed: Speed | null
}

/** What one crash test has to be; null where the work does not tell. */
export interface NeededTest {
  /** Whether MASH 2016 or a later edition is in force. */
  readonly mash: boolean | null
  readonly testLevel: 1 | 2 | 3 | null
}

export type NotSaid = 'test' | 'work' | 'letting' | 'speed'

export type TestAnswer =
  | { readonly verdict: 'meets'; readonly by: Criteria }
  | { readonly verdict: 'fails' }
  | { readonly verdict: 'unread'; readonly notSaid: readonly NotSaid[] }

export type TestedHardware = { readonly category: AgreementCategory; readonly criteria: readonly Criteria[] }

/**
 * Whether one and the same crash test covers both the standard in force for the work and the level for its speed. Two
 * tests that each cover one of them prove nothing of the hardware as it was tested.
 */
export function findTest({ category, criteria }: TestedHardware, at: WorkAtHand): TestAnswer {
  const needed = neededTest(category, at)
  const covers = criteria.map((test) => [coversStandard(test, needed), coversLevel(test, needed)] as const)
  const by = criteria[covers.findIndex(([standard, level]) => standard === true && level === true)]
  if (by !== undefined) return { verdict: 'meets', by }
  if (criteria.length === 0) return { verdict: 'unread', notSaid: ['test'] }
  const open = covers.filter(([standard, level]) => standard !== false && level !== false)
  if (open.length === 0) return { verdict: 'fails' }
  const notSaid: NotSaid[] = []
  if (open.some(([standard]) => standard === null)) notSaid.push(at.work === null ? 'work' : 'letting')
  if (open.some(([, level]) => level === null)) notSaid.push('speed')
  return { verdict: 'unread', notSaid }
}

export const neededTest = (category: AgreementCategory, at: WorkAtHand): NeededTest => ({
  mash: isMashInForce(category, at),
  testLevel: at.speed === null ? null : levelFor(at.speed).testLevel,
})

/** Standing work may serve out its life; new work let after the agreement's date needs MASH 2016. Null where not said. */
export function isMashInForce(
  category: AgreementCategory,
  { work, letting }: Omit<WorkAtHand, 'speed'>,
): boolean | null {
  if (work === 'standing') return false
  return work === null || letting === null ? null : letting > agreementDateOf(category).lastLetting
}

export const isMash = ({ standard, edition }: Criteria): boolean => standard === 'MASH' && edition >= 2016

const coversStandard = (test: Criteria, { mash }: NeededTest): boolean | null =>
  isMash(test) ? true : mash === null ? null : !mash

const coversLevel = ({ testLevel }: Criteria, { testLevel: needed }: NeededTest): boolean | null =>
  testLevel >= 3 ? true : needed === null ? null : testLevel >= needed

interface LevelSpeed {
  readonly testLevel: 1 | 2 | 3
  /** Highest speed of the road for which the level is enough. */
  readonly highest: Readonly<Record<Speed['unit'], number>>
  readonly confirmation: Confirmation
}

/**
 * Which test level the speed of a road asks for. Level 1 on a road of up to 31 mi/h is recalled; that level 2 is enough
 * up to 45 mi/h, and level 3 above it, is printed, and so are the speeds of the tests.
 * @source Texas DOT Bridge Railing Manual, table A.1 (45 mi/h); FHWA, conference in Idaho, April 2011 (tests at 50, 70
 * and 100 km/h)
 */
const levelSpeeds: readonly LevelSpeed[] = [
  { testLevel: 1, highest: { 'mi/h': 31, 'km/h': 50 }, confirmation: 'from memory' },
  { testLevel: 2, highest: { 'mi/h': 45, 'km/h': 70 }, confirmation: 'published' },
  { testLevel: 3, highest: { 'mi/h': Infinity, 'km/h': Infinity }, confirmation: 'published' },
]

const levelFor = ({ value, unit }: Speed): LevelSpeed => levelSpeeds.find(({ highest }) => value <= highest[unit])!

/** Where the rules for standard and level are printed. */
export const testSource: Source = {
  title: `${agreementSource.title}; Texas DOT Bridge Railing Manual, table A.1, and FHWA test speeds (2011)`,
  edition: agreementSource.edition,
}

/** How far the answer can be trusted: as far as the least trusted of what it rests on. */
export function testConfirmation(hardware: TestedHardware, at: WorkAtHand, answer: TestAnswer): Confirmation {
  const tests = answer.verdict === 'meets' ? [answer.by] : hardware.criteria
  const isEnoughAtAnySpeed = answer.verdict === 'meets' && answer.by.testLevel >= 3
  return leastTrusted([
    ...tests.map(({ confirmation }) => confirmation),
    ...(answer.verdict === 'meets' && isMash(answer.by) ? [] : [agreementDateOf(hardware.category).confirmation]),
    ...(at.speed === null || isEnoughAtAnySpeed ? [] : [levelFor(at.speed).confirmation]),
  ])
}

const leastTrusted = (all: readonly Confirmation[]): Confirmation =>
  (['from memory', 'common practice'] as const).find((one) => all.includes(one)) ?? 'published'
