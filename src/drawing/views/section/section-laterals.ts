import type { EndSheet } from '../../../core/hardware/hardware-sheet.ts'
import type { Hazard } from '../../../core/site/site.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import { siteWords } from '../../words/site-words.ts'
import { barrierLine } from '../plan/barrier-line.ts'
import type { SiteView } from '../plan/site-view.ts'
import { saidLength } from '../plan/site-words.ts'

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
export function barrierAt(view: SiteView, station: Metres): { lateral: Metres; unit: EndSheet | null } | null {
  const barrier = barrierLine(view)
  for (const { unit } of [barrier.approach, barrier.departure]) {
    if (unit === null) continue
    const [low, high] = [Math.min(unit.tip, unit.inner), Math.max(unit.tip, unit.inner)]
    if (station >= low - 1e-6 && station <= high + 1e-6) return { lateral: unit.lateralAt(station), unit: unit.sheet }
  }
  const ends = [barrier.approach, barrier.departure].map((end) => end.unit?.inner ?? end.station)
  const isBeside = station >= Math.min(...ends) - 1e-6 && station <= Math.max(...ends) + 1e-6
  return isBeside ? { lateral: barrier.lateralAt(station), unit: null } : null
}

/** From the nearest to the furthest. */
export function sectionLaterals(view: SiteView, station: Metres): readonly SectionLateral[] {
  const { site, clearZone, shyLine, print } = view
  const words = siteWords(print).laterals
  const all: SectionLateral[] = []
  const add = (id: string, said: (lateral: string) => string, lateral: Metres | null): void => {
    if (lateral !== null && lateral > 0) all.push({ id, lateral, words: said(saidLength(lateral, view)) })
  }
  add('shoulder', words.shoulder, site.road.shoulderWidth)
  add('shy-line', words.shyLine, shyLine)
  add('barrier', words.barrier, barrierAt(view, station)?.lateral ?? null)
  for (const [number, hazard] of hazardsAt(view, station)) {
    for (const side of ['near', 'far'] as const)
      add(`hazard-${number}`, (lateral) => words.hazard(print.theirs(hazard.name), side, lateral), hazard[side])
  }
  add('clear-zone', words.clearZone, clearZone)
  return all.sort((a, b) => a.lateral - b.lateral)
}
