import type { Site } from '../../core/site/site.ts'
import type { PlanHandle } from '../../drawing/views/plan/handles.ts'
import { inUnit, lengthWords, stationWords } from '../../drawing/views/plan/site-words.ts'
import { movementOf } from './move-handle.ts'
import { words } from './words.ts'

/** What a handle stands at: its number, in ft or m or as the a of a:1, and all of it in words. */
export function handleValue(site: Site, handle: PlanHandle): { readonly now: number; readonly text: string } {
  const { plan } = words()
  const long = (length: number): string => lengthWords(length, site.units)
  const number = (length: number): number => Number(inUnit(length, site.units).toFixed(2))
  const { station, lateral, place } = handle
  const { flare } = site.barrier
  const movement = movementOf(place)
  switch (movement.kind) {
    case 'corner':
      return { now: number(lateral), text: plan.corner(stationWords(site, station), long(lateral)) }
    case 'offset':
      return { now: number(lateral), text: plan.offset(long(lateral)) }
    case 'parallel length':
      return { now: number(flare!.parallelLength), text: plan.parallel(long(flare!.parallelLength)) }
    case 'rate':
      return { now: flare!.rate, text: plan.rate(String(Number(flare!.rate.toFixed(2)))) }
    default:
      return movement satisfies never
  }
}
