import type { Requirement } from '../../core/requirements/requirement.ts'
import { exactLength, type LengthUnit, lengthIn, type Nanometres } from '../../core/units/exact-length.ts'

interface ReadingRange {
  readonly least: Nanometres
  readonly most: Nanometres
  readonly usual: readonly [low: Nanometres, high: Nanometres]
  readonly unit: LengthUnit
}

/** What cannot be below nothing: a rail stands on the ground or above it, and posts have a distance. */
const neverNegative: readonly string[] = ['rail-height', 'spacing']

/**
 * What can be read for a requirement that is measured; null for another. Our judgement: no reading is more than three
 * times its limits or 10 ft away, and one more than half of them or 4 in off is worth a second look, which is far
 * beyond any fault of building.
 */
export function readingRange({ look, topic }: Requirement): ReadingRange | null {
  if (look.kind !== 'measure') return null
  const { low, nominal, high, unit } = look.limits
  const stated = [low, nominal, high].flatMap((one) => (one === 'notStated' ? [] : [exactLength(one, unit)]))
  const [lowest, highest] = [Math.min(...stated), Math.max(...stated)]
  const size = Math.max(...stated.map(Math.abs))
  const most = Math.max(3 * size, exactLength(10, 'ft'))
  const off = Math.round(size / 2) + exactLength(4, 'in')
  return { least: neverNegative.includes(topic) ? 0 : -most, most, usual: [lowest - off, highest + off], unit }
}

/** What was expected of a reading of `value` for this requirement; null when it can be one. */
export function readingFault(requirement: Requirement, value: Nanometres): string | null {
  const range = readingRange(requirement)
  if (range === null || (value >= range.least && value <= range.most)) return null
  const text = (length: Nanometres): string => `${Number(lengthIn(length, range.unit).toFixed(3))} ${range.unit}`
  return `a length of ${text(range.least)} to ${text(range.most)}`
}
