import type { Hazard } from '../../../core/site/site.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import { barrierLine } from '../plan/barrier-line.ts'
import type { SiteView } from '../plan/site-view.ts'
import { lengthWords } from '../plan/site-words.ts'

/** A lateral distance that a cross section dimensions, m from the edge of travelled way. */
export interface SectionLateral {
  readonly id: string
  readonly lateral: Metres
  /** What it is, with its value. */
  readonly words: string
}

/** The hazards that a station cuts, with their numbers from 1. */
export const hazardsAt = ({ site }: SiteView, station: Metres): readonly (readonly [number, Hazard])[] =>
  site.hazards
    .map((hazard, i) => [i + 1, hazard] as const)
    .filter(([, { from, to }]) => station >= from - 1e-6 && station <= to + 1e-6)

/** Lateral distance of the face of rail at a station, m, and whether an end unit stands there; null past its ends. */
export function barrierAt(view: SiteView, station: Metres): { lateral: Metres; unit: string | null } | null {
  const barrier = barrierLine(view)
  for (const { unit } of [barrier.approach, barrier.departure]) {
    if (unit === null) continue
    const [low, high] = [Math.min(unit.tip, unit.inner), Math.max(unit.tip, unit.inner)]
    if (station >= low - 1e-6 && station <= high + 1e-6)
      return { lateral: unit.lateralAt(station), unit: unit.sheet.name }
  }
  const ends = [barrier.approach, barrier.departure].map((end) => end.unit?.inner ?? end.station)
  const isBeside = station >= Math.min(...ends) - 1e-6 && station <= Math.max(...ends) + 1e-6
  return isBeside ? { lateral: barrier.lateralAt(station), unit: null } : null
}

/** From the nearest to the furthest. */
export function sectionLaterals(view: SiteView, station: Metres): readonly SectionLateral[] {
  const { site, clearZone, shyLine } = view
  const all: SectionLateral[] = []
  const add = (id: string, what: string, lateral: Metres | null): void => {
    if (lateral !== null && lateral > 0) all.push({ id, lateral, words: `${what} ${lengthWords(lateral, site.units)}` })
  }
  add('shoulder', 'shoulder', site.road.shoulderWidth)
  add('shy-line', 'shy line', shyLine)
  add('barrier', 'face of barrier', barrierAt(view, station)?.lateral ?? null)
  for (const [number, hazard] of hazardsAt(view, station)) {
    add(`hazard-${number}`, `${hazard.name}, near`, hazard.near)
    add(`hazard-${number}`, `${hazard.name}, far`, hazard.far)
  }
  add('clear-zone', 'clear zone', clearZone)
  return all.sort((a, b) => a.lateral - b.lateral)
}
