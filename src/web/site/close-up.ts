import type { Site } from '../../core/site/site.ts'
import type { Drawing, Item } from '../../drawing/drawing.ts'
import type { PlanFrame } from '../../drawing/views/plan/plan-frame.ts'
import type { Stretch } from '../../drawing/views/plan/site-view.ts'

/** The hazards with a little road before and behind them: 40 ft or 12 m (our judgement). */
export function aroundHazards({ hazards, units }: Site): Stretch {
  const lead = units === 'us' ? 12.192 : 12
  return {
    from: Math.min(...hazards.map(({ from }) => from)) - lead,
    to: Math.max(...hazards.map(({ to }) => to)) + lead,
  }
}

/** What of a plan lies within the stretch of its frame, from the lane beside the hazards outward, without words. */
export function closeUp(drawing: Drawing, frame: PlanFrame, site: Site): Drawing {
  const { from, to } = frame.range
  const out = Math.max(...site.hazards.map(({ near, far }) => far ?? near), site.barrier.offset) + 2
  const corners = [from, (from + to) / 2, to].flatMap((station) =>
    [-site.road.laneWidth, out].map((lateral) => frame.toDrawing(station, lateral)),
  )
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)]
  return {
    ...drawing,
    extent: { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) },
    items: withoutWords(drawing.items),
  }
}

const wordLayers: ReadonlySet<string> = new Set(['text', 'leaders', 'dimensions'])

const withoutWords = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item): readonly Item[] => {
    if (item.kind !== 'group') return wordLayers.has(item.layer) ? [] : [item]
    const left = withoutWords(item.items)
    return left.length === 0 ? [] : [{ ...item, items: left }]
  })
