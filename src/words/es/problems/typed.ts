import type { LengthUnit } from '../../../core/units/exact-length.ts'
import type { Difference, LengthProblem, TextPlace } from '../../../core/units/length-problem.ts'
import type { StationProblem } from '../../../core/units/station.ts'
import type { ValueProblem } from '../../../core/units/value-problem.ts'
import type { Printers } from '../../print.ts'
import type { TypedProblem } from '../../problems/typed.ts'

export const typedProblems: Printers<TypedProblem> = {
  'no length': ({ problem }) => `En ${at(problem)}: ${noLength(problem)}.`,
  'no station': ({ problem }) => `En ${at(problem)}: ${noStation(problem)}.`,
  'no value': ({ problem }) => `En ${noValue(problem)}.`,
  'a value with its unit': ({ not }) => `un valor con su unidad (en ${noValue(not)})`,
  'a length': ({ not }) => `una longitud (en ${at(not)}: ${noLength(not)})`,
  'a station': ({ not }) => `una estación (en ${at(not)}: ${noStation(not)})`,
  'a station as': ({ as, not }) => `una estación (${as}). En ${at(not)}: ${noStation(not)}`,
}

const at = (place: TextPlace): string => `el carácter ${place.at + 1}${place.found === '' ? '' : `, “${place.found}”`}`

const unitNames: Readonly<Record<LengthUnit, string>> = { in: 'pulgadas', ft: 'pies', mm: 'milímetros', m: 'metros' }

function noLength(problem: LengthProblem): string {
  switch (problem.kind) {
    case 'empty':
      return 'el texto está vacío, se espera una longitud'
    case 'not-a-number':
      return 'aquí se espera un número'
    case 'exponent':
      return 'las potencias de diez no se leen como longitudes, escriba el número entero'
    case 'comma':
      return 'una coma puede ser decimales o miles, escriba punto decimal y nada para los miles'
    case 'ambiguous':
      return `puede ser ${problem.readings[0]} o ${otherReading(problem.readings[1])}, escriba cuál`
    case 'zero-denominator':
      return 'la fracción divide por cero'
    case 'unknown-denominator':
      return 'solo se leen fracciones de medios, 4os, 8avos, 16avos, 32avos o 64avos'
    case 'improper-fraction':
      return 'la fracción no es menor que uno, quizá falta un espacio o una cifra'
    case 'decimal-with-fraction':
      return 'punto decimal y fracción no van juntos'
    case 'fraction-in-unit':
      return problem.unit === 'ft'
        ? 'una fracción delante de la marca de pies; escriba " si son pulgadas, o ft si son pies'
        : `no se leen fracciones de ${unitNames[problem.unit]}, escriba decimales`
    case 'feet-not-whole':
      return 'los pies seguidos de pulgadas tienen que ser un número entero'
    case 'inches-not-below-twelve':
      return 'las pulgadas después de pies tienen que ser menos de 12'
    case 'unit-missing':
      return 'falta la unidad (in, ft, mm o m)'
    case 'unknown-unit':
      return 'no es una de las unidades in, ft, mm y m'
    case 'two-units':
      return `la longitud ya está dada en ${unitNames[problem.first]} y sigue en ${unitNames[problem.second]}; solo se leen pies y después pulgadas`
    case 'trailing-text':
      return 'la longitud termina antes de este texto'
    case 'too-fine':
      return 'más fino que un nanómetro, escriba menos decimales'
    case 'too-large':
      return 'más de 9007 km, más de lo que se guarda con exactitud'
    default:
      return problem satisfies never
  }
}

const otherReading = (reading: string | Difference): string =>
  typeof reading === 'string' ? reading : `${reading.from} menos ${reading.less}`

function noStation(problem: StationProblem): string {
  switch (problem.kind) {
    case 'empty':
      return 'el texto está vacío, se espera una estación'
    case 'not-a-number':
      return 'aquí se espera un número'
    case 'comma':
      return 'una coma puede ser decimales o miles, escriba punto decimal y nada para los miles'
    case 'stations-not-whole':
      return 'las estaciones delante del + tienen que ser un número entero'
    case 'digits-after-plus':
      return `entre el + y el punto decimal una estación tiene exactamente ${problem.needed} cifras`
    case 'trailing-text':
      return 'la estación termina antes de este texto'
    case 'too-fine':
      return 'más fino que un nanómetro, escriba menos decimales'
    case 'too-large':
      return 'más de 9007 km, más de lo que se guarda con exactitud'
    default:
      return problem satisfies never
  }
}

const noValue = (problem: ValueProblem): string =>
  problem.kind === 'length'
    ? `${at(problem.problem)}: ${noLength(problem.problem)}`
    : `${at(problem)}: ${valueReasons[problem.kind]}`

const valueReasons: Readonly<Record<Exclude<ValueProblem['kind'], 'length'>, string>> = {
  empty: 'el texto está vacío, se espera un valor',
  fraction: 'solo se leen fracciones de longitudes, escriba decimales',
  'not whole': 'una cantidad es un número entero',
  'below zero': 'solo longitudes, pendientes y ángulos bajan de 0',
  'too fine': 'más de seis decimales',
  'too large': 'más de lo que se guarda con exactitud',
  'unknown unit': 'esta no es una de las unidades in, ft, mm, m, %, °, lbf·ft, N·m, lbf y kN',
}
