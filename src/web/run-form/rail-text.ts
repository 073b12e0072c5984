import { english } from '../../words/english.ts'
import { meaningOf, textOf } from '../form/draft.ts'

type UnitSystem = 'us' | 'metric'

const millimetresPerInch = 25.4

/** A length along the rail as a field shows it: text that a run file reads back to the same sixteenth. */
export function railText(value: unknown, units: UnitSystem): string {
  if (typeof value !== 'number') return textOf(value)
  return units === 'us' ? english(null).feetInches(value) : `${Number((value * millimetresPerInch).toFixed(4))} mm`
}

/** What a typed length means: a number of inches, or a text with its unit; in a metric run a bare number is millimetres. */
export function readRail(text: string, units: UnitSystem): number | string | undefined {
  const meaning = meaningOf(text)
  return units === 'metric' && typeof meaning === 'number' ? `${meaning} mm` : meaning
}

/** Lengths one after the other: `3 x 12 ft 6 in, 25 ft`. */
export function railsText(values: unknown, units: UnitSystem): string {
  const groups: { readonly text: string; count: number }[] = []
  for (const value of Array.isArray(values) ? values : []) {
    const text = railText(value, units)
    const last = groups.at(-1)
    if (last?.text === text) last.count += 1
    else groups.push({ text, count: 1 })
  }
  return groups.map(({ text, count }) => (count === 1 ? text : `${count} x ${text}`)).join(', ')
}

/** More of one length than any run has are a slip of the finger, and stay as they are written. */
const mostAlike = 1000

/** Decimals have a point, so that a comma or a semicolon parts two lengths. */
export function readRails(text: string, units: UnitSystem): readonly unknown[] | undefined {
  const parts = text
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
  if (parts.length === 0) return undefined
  return parts.flatMap((part) => {
    const [, count, length] = /^(\d+)\s*[x×]\s*(.+)$/i.exec(part) ?? []
    if (count === undefined || length === undefined || Number(count) > mostAlike) return [readRail(part, units)]
    return Array.from({ length: Number(count) }, () => readRail(length, units))
  })
}
