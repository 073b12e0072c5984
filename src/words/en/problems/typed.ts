import type { LengthUnit } from '../../../core/units/exact-length.ts'
import type { Difference, LengthProblem, TextPlace } from '../../../core/units/length-problem.ts'
import type { StationProblem } from '../../../core/units/station.ts'
import type { ValueProblem } from '../../../core/units/value-problem.ts'
import type { Printers } from '../../print.ts'
import type { TypedProblem } from '../../problems/typed.ts'

export const typedProblems: Printers<TypedProblem> = {
  'no length': ({ problem }) => `At ${at(problem)}: ${noLength(problem)}.`,
  'no station': ({ problem }) => `At ${at(problem)}: ${noStation(problem)}.`,
  'no value': ({ problem }) => `At ${noValue(problem)}.`,
  'a value with its unit': ({ not }) => `a value with its unit (at ${noValue(not)})`,
  'a length': ({ not }) => `a length (at ${at(not)}: ${noLength(not)})`,
  'a station': ({ not }) => `a station (at ${at(not)}: ${noStation(not)})`,
  'a station as': ({ as, not }) => `a station (${as}). At ${at(not)}: ${noStation(not)}`,
}

/** Characters are counted from 1, as people do. */
const at = (place: TextPlace): string => `character ${place.at + 1}${place.found === '' ? '' : `, “${place.found}”`}`

const unitNames: Readonly<Record<LengthUnit, string>> = { in: 'inches', ft: 'feet', mm: 'millimetres', m: 'metres' }

function noLength(problem: LengthProblem): string {
  switch (problem.kind) {
    case 'empty':
      return 'the text is empty, a length is expected'
    case 'not-a-number':
      return 'a number is expected here'
    case 'exponent':
      return 'powers of ten are not read as lengths, write the number out'
    case 'comma':
      return 'a comma can mean decimals or thousands, write a decimal point and no thousands mark'
    case 'ambiguous':
      return `this can mean ${problem.readings[0]} or ${otherReading(problem.readings[1])}, write which`
    case 'zero-denominator':
      return 'the fraction divides by zero'
    case 'unknown-denominator':
      return 'a fraction is read in halves, 4ths, 8ths, 16ths, 32nds or 64ths only'
    case 'improper-fraction':
      return 'the fraction is not below one, perhaps a space or a digit is missing'
    case 'decimal-with-fraction':
      return 'a decimal point and a fraction do not go together'
    case 'fraction-in-unit':
      return problem.unit === 'ft'
        ? 'a fraction before a foot mark; write " if inches are meant, or ft if feet are'
        : `fractions of ${unitNames[problem.unit]} are not read, write decimals`
    case 'feet-not-whole':
      return 'feet followed by inches must be a whole number'
    case 'inches-not-below-twelve':
      return 'inches that follow feet must be below 12'
    case 'unit-missing':
      return 'the unit is missing (in, ft, mm or m)'
    case 'unknown-unit':
      return 'this is not one of the units in, ft, mm and m'
    case 'two-units':
      return `the length is already given in ${unitNames[problem.first]} and goes on in ${unitNames[problem.second]}; only feet then inches are read`
    case 'trailing-text':
      return 'the length ends before this text'
    case 'too-fine':
      return 'finer than a nanometre, write fewer decimals'
    case 'too-large':
      return 'larger than 9007 km, which is more than is kept exactly'
    default:
      return problem satisfies never
  }
}

const otherReading = (reading: string | Difference): string =>
  typeof reading === 'string' ? reading : `${reading.from} minus ${reading.less}`

function noStation(problem: StationProblem): string {
  switch (problem.kind) {
    case 'empty':
      return 'the text is empty, a station is expected'
    case 'not-a-number':
      return 'a number is expected here'
    case 'comma':
      return 'a comma can mean decimals or thousands, write a decimal point and no thousands mark'
    case 'stations-not-whole':
      return 'the stations before the + must be a whole number'
    case 'digits-after-plus':
      return `between + and the decimal point a station has exactly ${problem.needed} digits`
    case 'trailing-text':
      return 'the station ends before this text'
    case 'too-fine':
      return 'finer than a nanometre, write fewer decimals'
    case 'too-large':
      return 'larger than 9007 km, which is more than is kept exactly'
    default:
      return problem satisfies never
  }
}

const noValue = (problem: ValueProblem): string =>
  problem.kind === 'length'
    ? `${at(problem.problem)}: ${noLength(problem.problem)}`
    : `${at(problem)}: ${valueReasons[problem.kind]}`

const valueReasons: Readonly<Record<Exclude<ValueProblem['kind'], 'length'>, string>> = {
  empty: 'the text is empty, a value is expected',
  fraction: 'fractions are read of lengths only, write decimals',
  'not whole': 'a count is a whole number',
  'below zero': 'only lengths, slopes and angles go below 0',
  'too fine': 'more than six decimals',
  'too large': 'more than is kept exactly',
  'unknown unit': 'this is not one of the units in, ft, mm, m, %, °, lbf·ft, N·m, lbf and kN',
}
