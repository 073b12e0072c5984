import { agreementConditions, agreementDateOf } from './agreement-dates.ts'
import type { Criteria } from './hardware-sheet.ts'
import {
  isMash,
  type NeededTest,
  type NotSaid,
  neededTest,
  type TestAnswer,
  type TestedHardware,
  type WorkAtHand,
} from './tested-criteria.ts'

/** `MASH 2016, test level 3` */
export const testText = ({ standard, edition, testLevel }: Omit<Criteria, 'source' | 'confirmation'>): string =>
  `${standard === 'MASH' ? `MASH ${edition}` : standard}, test level ${testLevel}`

/** `MASH 2016, test level 3; NCHRP 350, test level 3` */
const testsText = (criteria: readonly Criteria[]): string =>
  criteria.length === 0 ? 'no crash test stated' : criteria.map(testText).join('; ')

/** What one crash test has to be, and why. */
export function neededTestText(hardware: TestedHardware, at: WorkAtHand): string {
  const needed = neededTest(hardware.category, at)
  return [levelText(needed, at), standardText(needed, hardware, at)].join('; ')
}

function levelText(needed: NeededTest, { speed }: WorkAtHand): string {
  return speed === null ? nameOf(needed) : `${nameOf(needed)}, for ${speed.value} ${speed.unit}`
}

/** `one test to MASH 2016 or later at level 3 or higher` */
const nameOf = ({ mash, testLevel }: NeededTest): string =>
  `one test ${mash === true ? 'to MASH 2016 or later ' : ''}at ${testLevel === null ? 'the level for the speed of the road' : `level ${testLevel} or higher`}`

function standardText({ mash }: NeededTest, { category }: TestedHardware, { work, letting }: WorkAtHand): string {
  if (work === 'standing') return 'standing work: the letting date does not apply'
  const date = `${agreementDateOf(category).lastLetting} (${category}); ${agreementConditions}`
  if (mash === null) return `MASH 2016 or later for new work let after ${date}`
  return `new work let ${letting}; MASH 2016 or later after ${date}`
}

/** Why the hardware is covered, is not, or may be. */
export function testReason(hardware: TestedHardware, at: WorkAtHand, answer: TestAnswer): string {
  const needed = neededTestText(hardware, at)
  switch (answer.verdict) {
    case 'meets':
      return isMash(answer.by) && at.speed === null
        ? `tested to ${testText(answer.by)}, which is enough for any work and speed`
        : `tested to ${testText(answer.by)}; needed is ${needed}`
    case 'fails':
      return `no one test is enough: tested to ${testsText(hardware.criteria)}; needed is ${needed}`
    case 'unread':
      return [
        `not said: ${answer.notSaid.map((one) => notSaidText[one]).join('; ')}`,
        ...(hardware.criteria.length === 0 ? [] : [`tested to ${testsText(hardware.criteria)}`]),
        `needed is ${needed}`,
      ].join('; ')
    default:
      return answer satisfies never
  }
}

const notSaidText: Readonly<Record<NotSaid, string>> = {
  test: 'a crash test on the sheet',
  work: 'whether the work is new',
  letting: 'when it was let',
  speed: 'the speed of the road',
}
