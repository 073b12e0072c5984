import type { Printers } from '../print.ts'
import { amountText } from '../problems/amount-text.ts'
import type { ProblemSaying, UnusualValue, WholeProblem, WithinProblem } from '../problems/problem-saying.ts'
import { together } from '../together.ts'
import { fileProblems } from './problems/file.ts'
import { needProblems } from './problems/need.ts'
import { readingProblems } from './problems/reading.ts'
import { roadProblems } from './problems/road.ts'
import { runProblems } from './problems/run.ts'
import { shapeProblems } from './problems/shape.ts'
import { sheetProblems } from './problems/sheet.ts'
import { siteProblems } from './problems/site.ts'
import { typedProblems } from './problems/typed.ts'
import { versionProblems } from './problems/version.ts'

const within: Printers<WithinProblem | WholeProblem | UnusualValue> = {
  'in these words': ({ words }) => words,
  'field name': ({ that }, print) => `${print.say(that)} as field name`,
  either: ({ ways }, print) =>
    ways.map(({ that, at }) => (at === '' ? print.say(that) : `${print.say(that)} in ${at}`)).join(' or '),
  unusual: ({ place, value, unit, low, high }, print) => {
    const text = (number: number): string => amountText(number, unit, print)
    return `${JSON.stringify(place)}: ${text(value)} is unusual, usual is ${text(low)} to ${text(high)}`
  },
  problem: ({ file, place, expected, found }, print) =>
    `${file}: ${place === '' ? '' : `${place}: `}expected ${print.say(expected)}${found === null ? '' : `, found ${print.say(found)}`}`,
}

/** What is wrong with what somebody handed in: what was expected, and what stood there. */
export const problems: Printers<ProblemSaying> = together(
  typedProblems,
  shapeProblems,
  fileProblems,
  roadProblems,
  sheetProblems,
  runProblems,
  siteProblems,
  needProblems,
  readingProblems,
  versionProblems,
  within,
)
