import type { Requirement } from '../../core/requirements/requirement.ts'
import {
  exactValue,
  isSigned,
  kindOf,
  type QuantityKind,
  type Steps,
  type Unit,
  valueIn,
} from '../../core/units/quantity-kinds.ts'
import type { ShapeProblem } from '../../words/problems/shape.ts'

interface ReadingRange {
  readonly least: Steps
  readonly most: Steps
  readonly usual: readonly [low: Steps, high: Steps]
  readonly unit: Unit
}

/** What cannot be below nothing: a rail stands on the ground or above it, and posts have a distance. */
const neverNegative: readonly string[] = ['rail-height', 'spacing']

/** By kind of quantity: how far away a reading may be though its limits are small, and how far off though they are. */
const atLeast: Readonly<Record<QuantityKind, { readonly away: number; readonly off: number; readonly unit: Unit }>> = {
  length: { away: 120, off: 4, unit: 'in' },
  slope: { away: 200, off: 5, unit: '%' },
  angle: { away: 180, off: 10, unit: '°' },
  torque: { away: 1500, off: 50, unit: 'N·m' },
  force: { away: 200, off: 5, unit: 'kN' },
  count: { away: 100, off: 4, unit: 'count' },
}

/**
 * What can be read for a requirement that is measured; null for another. Our judgement: no reading is more than three
 * times its limits or 10 ft away, and one more than half of them or 4 in off is worth a second look, which is far
 * beyond any fault of building.
 */
export function readingRange({ look, topic }: Requirement): ReadingRange | null {
  if (look.kind !== 'measure') return null
  const { low, nominal, high, unit } = look.limits
  const stated = [low, nominal, high].flatMap((one) => (one === 'notStated' ? [] : [exactValue(one, unit)]))
  const [lowest, highest] = [Math.min(...stated), Math.max(...stated)]
  const size = Math.max(...stated.map(Math.abs))
  const kind = kindOf(unit)
  const { away, off: small, unit: at } = atLeast[kind]
  const most = Math.max(3 * size, exactValue(away, at))
  const off = Math.round(size / 2) + exactValue(small, at)
  const mayBeNegative = kind === 'length' ? !neverNegative.includes(topic) : isSigned(kind)
  return { least: mayBeNegative ? -most : 0, most, usual: [lowest - off, highest + off], unit }
}

/** What was expected of a reading of `value` for this requirement; null when it can be one. */
export function readingFault(requirement: Requirement, value: Steps): ShapeProblem | null {
  const range = readingRange(requirement)
  if (range === null || (value >= range.least && value <= range.most)) return null
  const inUnit = (limit: Steps): number => Number(valueIn(limit, range.unit).toFixed(3))
  return { kind: 'value between', least: inUnit(range.least), most: inUnit(range.most), unit: range.unit }
}
