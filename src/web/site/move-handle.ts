import { adjacentView } from '../../core/need/traffic-view.ts'
import type { Site } from '../../core/site/site.ts'
import type { PlanHandle } from '../../drawing/views/plan/handles.ts'
import type { RoadPlace } from '../../drawing/views/plan/plan-frame.ts'
import { type Draft, valueAt, withValue } from '../form/draft.ts'
import { stationLike } from './station-value.ts'

/** What moving a handle moves: a place, or one number. */
export type Movement =
  | { readonly kind: 'corner'; readonly hazard: number; readonly side: 'near' | 'far'; readonly end: 'from' | 'to' }
  | { readonly kind: 'offset' }
  | { readonly kind: 'parallel length' }
  | { readonly kind: 'rate' }

export function movementOf(place: string): Movement {
  const corner = /^hazard-(\d+)-(near|far)-(from|to)$/.exec(place)
  if (corner !== null) {
    const [, number, side, end] = corner
    return { kind: 'corner', hazard: Number(number) - 1, side: side as 'near', end: end as 'from' }
  }
  if (place === 'barrier-offset') return { kind: 'offset' }
  return place === 'flare-start' ? { kind: 'parallel length' } : { kind: 'rate' }
}

/**
 * The draft with a handle of the plan of `site` moved to another place by the road: the numbers that it stands for are
 * changed, as far as they stay possible (a near side in front of the far side, a barrier in front of the hazards).
 * @param grid  to which numbers that change are rounded, ft or m; flare rates become whole
 */
export function movedHandle(draft: Draft, site: Site, handle: PlanHandle, to: RoadPlace, grid: number): Draft {
  const metres = site.units === 'us' ? 0.3048 : 1
  const moved = (from: number, target: number): number => {
    const [was, wanted] = [from / metres, target / metres]
    return clean(Math.abs(wanted - was) < grid / 2 ? was : Math.round(wanted / grid) * grid)
  }
  const movement = movementOf(handle.place)
  const { barrier, hazards } = site
  switch (movement.kind) {
    case 'corner': {
      const { hazard, side, end } = movement
      const { near, far, from, to: until } = hazards[hazard]!
      const lateral = side === 'near' ? between(to.lateral, barrier.offset, far) : Math.max(to.lateral, near)
      const station = end === 'from' ? Math.min(to.station, until) : Math.max(to.station, from)
      const place = `hazards[${hazard}]`
      const written = site.road.alignment.kind === 'elements' ? null : valueAt(draft, `${place}.${end}`)
      const next = withValue(draft, `${place}.${side}`, moved(handle.lateral, lateral))
      const stationed = stationLike(written, moved(handle.station, station), site.units)
      return withValue(next, `${place}.${end}`, stationed)
    }
    case 'offset': {
      const nearest = Math.min(...hazards.map(({ near }) => near))
      return withValue(draft, 'barrier.offset', moved(handle.lateral, between(to.lateral, 0, nearest)))
    }
    case 'parallel length': {
      const length = barrier.flare!.parallelLength
      const longer = upstream(site) * (to.station - handle.station)
      return withValue(draft, 'barrier.flare.parallelLength', moved(length, Math.max(length + longer, 0)))
    }
    case 'rate': {
      const { rate } = barrier.flare!
      const across = handle.lateral - barrier.offset
      const along = across * rate + upstream(site) * (to.station - handle.station)
      const wanted = along / Math.max(to.lateral - barrier.offset, 0.01)
      return withValue(draft, 'barrier.flare.rate', Math.round(between(wanted, 1, flattest)))
    }
    default:
      return movement satisfies never
  }
}

/**
 * The draft with a handle moved by a key.
 * @param along  1 up-station, -1 down-station
 * @param away   1 away from the road, -1 towards it
 * @param times  how many steps at once; one is 1 ft or 0.25 m, of a flare rate 1
 */
export function nudgedHandle(
  draft: Draft,
  site: Site,
  handle: PlanHandle,
  { along, away, times }: { readonly along: number; readonly away: number; readonly times: number },
): Draft {
  if (movementOf(handle.place).kind === 'rate') {
    const { rate } = site.barrier.flare!
    return withValue(draft, 'barrier.flare.rate', clean(between(rate - away * times, 1, flattest)))
  }
  const step = times * (site.units === 'us' ? 0.3048 : 0.25)
  const to = { station: handle.station + along * step, lateral: handle.lateral + away * step }
  return movedHandle(draft, site, handle, to, 1e-6)
}

/** Flatter than any table asks for: our judgement. */
const flattest = 60

/** 1 where the approach end lies up-station of the hazards, -1 where it lies down-station. */
const upstream = (site: Site): number => -adjacentView(site).direction

const between = (value: number, least: number, most: number | null): number =>
  Math.max(Math.min(value, most ?? Number.POSITIVE_INFINITY), least)

/** Without the noise of feet in metres. */
const clean = (value: number): number => Math.round(value * 1e6) / 1e6 + 0
