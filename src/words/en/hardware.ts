import type { HardwareSaying } from '../../core/hardware/hardware-saying.ts'
import type { Criteria } from '../../core/hardware/hardware-sheet.ts'
import type { NeededTest, NotSaid } from '../../core/hardware/tested-criteria.ts'
import type { Printers } from '../print.ts'
import { withValues } from '../text-in.ts'

export const hardware: Printers<HardwareSaying> = {
  source: ({ title, edition }, print) =>
    edition === null ? print.say(title) : `${print.say(title)}, ${print.say(edition)}`,
  title: ({ of }, print) => print.theirs(typeof of === 'string' ? of : withValues(of.others.en ?? of.own, print)),
  'crash tests': ({ tests }) => (tests.length === 0 ? 'no crash test stated' : tests.map(testText).join('; ')),
  'needed crash test': ({ at: { speed, work, letting }, category, lastLetting, ...needed }) => {
    const level = `${neededTestName(needed)}${speed === null ? '' : `, for ${speed.value} ${speed.unit}`}`
    if (work === 'standing') return `${level}; standing work: the letting date does not apply`
    const date = `${lastLetting} (${category}); ${agreementConditions}`
    return needed.mash === null
      ? `${level}; MASH 2016 or later for new work let after ${date}`
      : `${level}; new work let ${letting}; MASH 2016 or later after ${date}`
  },
  'crash test found': ({ answer, forAny, tests, needed }, print) => {
    const testedTo = `tested to ${print.say({ kind: 'crash tests', tests })}`
    const neededIs = `needed is ${print.say(needed)}`
    switch (answer.verdict) {
      case 'meets': {
        const by = `tested to ${testText(answer.by)}`
        return forAny ? `${by}, which is enough for any work and speed` : `${by}; ${neededIs}`
      }
      case 'fails':
        return `no one test is enough: ${testedTo}; ${neededIs}`
      case 'unread':
        return [
          `not said: ${answer.notSaid.map((one) => notSaidWords[one]).join('; ')}`,
          ...(tests.length === 0 ? [] : [testedTo]),
          neededIs,
        ].join('; ')
    }
  },
  'needed end': ({ end }) =>
    end === 'approach'
      ? 'crashworthy: adjacent traffic meets it first'
      : 'crashworthy where opposing traffic can reach it',
  'hardware at height': ({ name, limits }, print) => `${print.say(name)} (top of rail ${print.say(limits)})`,
  'exposed end': ({ crashworthy, of, end, opposingReaches }) => {
    const reached =
      end === 'approach'
        ? 'adjacent traffic meets it first'
        : of === 'bridge end'
          ? 'traffic passes along it'
          : opposingReaches === null
            ? 'not said whether opposing traffic can reach it'
            : opposingReaches
              ? 'opposing traffic can reach it'
              : 'opposing traffic cannot reach it'
    return `${crashworthy ? 'crashworthy' : 'not crashworthy'}; ${reached}`
  },
}

/** `MASH 2016, test level 3` */
const testText = ({ standard, edition, testLevel }: Criteria): string =>
  `${standard === 'MASH' ? `MASH ${edition}` : standard}, test level ${testLevel}`

/** `one test to MASH 2016 or later at level 3 or higher` */
export const neededTestName = ({ mash, testLevel }: NeededTest): string =>
  `one test ${mash === true ? 'to MASH 2016 or later ' : ''}at ${testLevel === null ? 'the level for the speed of the road' : `level ${testLevel} or higher`}`

/**
 * What a verdict that rests on one of the agreement's dates has to say with it.
 * @source list of FHWA policy memoranda on roadside hardware (exceptions for W-beam terminals and for cable in 2018; their
 * text was not read); Washington's tracking sheet of January 2018 counts by the day of advertisement
 */
const agreementConditions =
  "the date binds contracts on the National Highway System; exceptions by memorandum exist; a state's own date may differ"

const notSaidWords: Readonly<Record<NotSaid, string>> = {
  test: 'a crash test on the sheet',
  work: 'whether the work is new',
  letting: 'when it was let',
  speed: 'the speed of the road',
}
