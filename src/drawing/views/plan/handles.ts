import { group, rectangle } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { siteWords } from '../../words/site-words.ts'
import type { PlanCanvas } from './plan-canvas.ts'
import type { RoadPlace } from './plan-frame.ts'

/** A place that can be moved by hand or by keys, and what moving it changes. */
export interface PlanHandle extends RoadPlace {
  /**
   * `hazard-1-near-from` … `hazard-1-far-to`: that side and that station of a hazard; `barrier-offset`: the lateral
   * distance of the parallel part; `flare-start`: its parallel length; `flare`: its rate.
   */
  readonly place: string
  readonly words: string
}

export function handlesOf({ input, barrier }: PlanCanvas): readonly PlanHandle[] {
  const { site, print } = input
  const words = siteWords(print)
  const handles = site.hazards.flatMap((hazard, i): PlanHandle[] =>
    (['near', 'far'] as const).flatMap((side) => {
      const lateral = hazard[side]
      if (lateral === null) return []
      return (['from', 'to'] as const).map((end) => ({
        place: `hazard-${i + 1}-${side}-${end}`,
        words: words.corner(print.theirs(hazard.name), side, end),
        station: hazard[end],
        lateral,
      }))
    }),
  )
  const { approach } = barrier
  const front =
    approach.outward === -1
      ? Math.min(...site.hazards.map((one) => one.from))
      : Math.max(...site.hazards.map((one) => one.to))
  handles.push({
    place: 'barrier-offset',
    words: words.offset,
    station: front,
    lateral: site.barrier.offset,
  })
  if (approach.flareFrom === null) return handles
  handles.push({
    place: 'flare-start',
    words: words.flareStart,
    station: approach.flareFrom,
    lateral: site.barrier.offset,
  })
  if (approach.outward * (approach.station - approach.flareFrom) > 0)
    handles.push({
      place: 'flare',
      words: words.flareEnd,
      station: approach.station,
      lateral: barrier.lateralAt(approach.station),
    })
  return handles
}

/** Squares, on a screen only. */
export function handleItems(canvas: PlanCanvas): readonly Item[] {
  if (canvas.scaleWords !== null) return []
  const half = (canvas.widths.isNarrow ? 1.8 : 2.6) * canvas.perPoint
  return handlesOf(canvas).map(({ place, words, station, lateral }) => {
    const { x, y } = canvas.frame.toDrawing(station, lateral)
    return group(place, words, [
      rectangle('handles', { minX: x - half, maxX: x + half, minY: y - half, maxY: y + half }, 'blank'),
    ])
  })
}
