import type { Layout } from '../../../core/layout/layout.ts'
import type { Range } from './frame.ts'

/**
 * `whole` cut into stretches of at most `longest` inches.
 * A cut lies midway between two posts (or the place of an omitted one), away from splices if it can be.
 *
 * @param clear how far from a splice a cut should lie, inches
 */
export function breakRun(layout: Layout, whole: Range, longest: number, clear: number): Range[] {
  const places = [...layout.posts, ...layout.omitted].map((one) => one.alongInches).sort((a, b) => a - b)
  const middles = places.slice(1).map((place, i) => (place + places[i]!) / 2)
  const isClear = (along: number): boolean =>
    layout.splices.every((splice) => Math.abs(splice.alongInches - along) >= clear)
  const ranges: Range[] = []
  let from = whole.from
  while (whole.to - from > longest) {
    const fitting = middles.filter((along) => along > from + longest / 2 && along <= from + longest)
    const to = fitting.findLast(isClear) ?? fitting.at(-1) ?? from + longest
    ranges.push({ from, to })
    from = to
  }
  return [...ranges, { from, to: whole.to }]
}
