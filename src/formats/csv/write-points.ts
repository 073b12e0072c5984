import { type GroundUnit, groundFromMetres } from '../../core/units/ground-unit.ts'
import type { SurveyPoint } from './survey-point.ts'

/** The two orders in which survey programs take points. */
export const pointOrders = [
  'point, northing, easting, elevation, code',
  'point, easting, northing, elevation, code',
] as const

export interface PointColumns {
  readonly order: (typeof pointOrders)[number]
  /** Whether the first line names the columns, with the unit. */
  readonly header: boolean
  readonly unit: GroundUnit
}

/**
 * Points as plain text for survey programs: ASCII, commas, CRLF, numbers with four decimals and no thousands mark.
 *
 * Such programs understand no quotes, so that commas and line ends in a description become spaces and what ASCII lacks a
 * question mark. A height that is not known leaves its column empty. The last column is the code, then the description.
 */
export function writePoints(points: readonly SurveyPoint[], { order, header, unit }: PointColumns): string {
  const number = (length: number): string => printNumber(groundFromMetres(length, unit))
  const rows = points.map(({ name, position, elevation, code, description }) => {
    const northing = number(position.northing)
    const easting = number(position.easting)
    const plan = order.startsWith('point, northing') ? [northing, easting] : [easting, northing]
    return [plain(name), ...plan, elevation === null ? '' : number(elevation), plain(`${code} ${description}`)]
  })
  const names = order.split(', ').map((column) => (/ing$|elevation/.test(column) ? `${column} (${unit})` : column))
  return [...(header ? [names] : []), ...rows].map((row) => `${row.join(',')}\r\n`).join('')
}

const printNumber = (value: number): string => value.toFixed(4).replace(/^-(0\.0+)$/, '$1')

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[,\s"]+/g, ' ')
    .replace(/[^ -~]/gu, '?')
    .trim()
