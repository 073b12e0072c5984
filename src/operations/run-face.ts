import { flareBends } from '../core/layout/run-flare.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import type { Verdict } from '../core/verdicts/verdict.ts'
import { verdictOrder } from '../drawing/verdict-signs.ts'
import type { RunFace } from '../protocol/runs.ts'

/** Stretches of a face at most: as many as can be told apart on a phone. */
const mostStretches = 32

/** The line of a run and the worst verdict on each stretch of it; what is asked of the run as a whole lies on none. */
export function runFace({ layout, first, second, flare }: RunModel, verdicts: readonly Verdict[]): RunFace {
  const { posts, panels } = layout
  const share = shareAlong(layout)
  const count = Math.max(1, Math.min(mostStretches, posts.length))
  const worst = Array<number>(count).fill(verdictOrder.indexOf('does not apply'))
  for (const { place, verdict } of verdicts) {
    if (place.kind === 'run') continue
    const stretch = Math.min(count - 1, Math.floor(share(place.alongInches) * count))
    worst[stretch] = Math.min(worst[stretch]!, verdictOrder.indexOf(verdict))
  }
  const bends = flareBends(layout, flare)
  const ofUnit = (unit: 'first' | 'second'): number | null => {
    const end = unit === 'first' ? first : second
    if (end.kind !== 'unit' || end.sheet.flare === 'none') return bends[unit]
    const own = panels.filter((panel) => panel.unit === unit)
    return unit === 'first' ? (own.at(-1)?.toInches ?? null) : (own[0]?.fromInches ?? null)
  }
  const bend = (unit: 'first' | 'second'): number | null => {
    const inches = ofUnit(unit)
    return inches === null ? null : Math.round(share(inches) * 1000) / 1000
  }
  return { bends: { first: bend('first'), second: bend('second') }, stretches: worst.join('') }
}

/** Where on the line of a face something lies that is so far along the run: 0 at its beginning, 1 at its end. */
export function shareAlong({ posts, panels }: RunModel['layout']): (inches: number) => number {
  const along = [...posts.map(({ alongInches }) => alongInches), ...panels.map(({ toInches }) => toInches)]
  const [from, to] = [Math.min(...along), Math.max(...along)]
  return (inches) => Math.min(1, Math.max(0, (inches - from) / (to - from || 1)))
}
