import type { FitFacts, Ground } from '../core/fit/fit.ts'
import type { EndSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import type { Layout } from '../core/layout/layout.ts'
import type { Need } from '../core/need/need.ts'
import type { Site, SiteGround, SiteHardware } from '../core/site/site.ts'
import { exactLength, type Nanometres } from '../core/units/exact-length.ts'
import type { Metres } from '../core/units/quantity.ts'
import { sheetShelf } from './sheet-shelf.ts'

const exact = (length: Metres): Nanometres => exactLength(length, 'm')
const exactOrNull = (length: Metres | null): Nanometres | null => (length === null ? null : exact(length))

/** What of the site, its need and its layout decides whether the hardware is right. */
export function fitFacts(site: Site, need: Need, layout: Layout | null): FitFacts {
  const shelf = sheetShelf(site.sheets)
  const { barrier, hardware, road } = site
  const end = (id: string | null): EndSheet | null => {
    const sheet = id === null ? undefined : shelf.get(id)
    return sheet === undefined || sheet.kind === 'longitudinal' ? null : sheet
  }
  const system = hardware.system === null ? undefined : shelf.get(hardware.system)
  return {
    speed: { value: road.speed, unit: site.units === 'us' ? 'mi/h' : 'km/h' },
    system: system?.kind === 'longitudinal' ? (system satisfies LongitudinalSheet) : null,
    approach: end(barrier.approachEnd),
    departure: end(barrier.departureEnd),
    work: hardware.work,
    letting: hardware.letting,
    spacing: hardware.spacing,
    nearest: nearestHazard(site),
    twoWay: road.traffic === 'two-way',
    opposingReaches: opposingReaches(need),
    adjoining: hardware.adjoining && {
      railHeight: exact(hardware.adjoining.railHeight),
      splice: hardware.adjoining.splice,
    },
    ground: groundOf(hardware.ground),
    curb: curbOf(hardware.curb),
    runLength: layout === null ? null : exactLength(layout.score.railInches, 'in'),
  }
}

function nearestHazard({ hazards, barrier }: Site): FitFacts['nearest'] {
  const nearest = hazards.reduce((best, hazard) => (hazard.near < best.near ? hazard : best))
  return {
    hazard: nearest.name,
    clear: exact(nearest.near) - exact(barrier.offset),
    length: exact(nearest.to) - exact(nearest.from),
  }
}

/** Whether opposing traffic can reach the departure end; null where it was not judged. */
export function opposingReaches({ approach, departure }: Need): boolean | null {
  if (departure !== null) return departure.notes.some(({ kind }) => kind === 'crashworthy-end')
  return approach.notes.some((note) => note.kind === 'opposing-traffic-not-judged') ? null : false
}

const curbOf = (curb: SiteHardware['curb']): FitFacts['curb'] =>
  curb === null || curb === 'none'
    ? curb
    : { height: exact(curb.height), face: curb.face, faceSlope: curb.faceSlope, toRail: exact(curb.toRail) }

const groundOf = (ground: SiteGround): Ground => ({
  platformSlope: ground.platformSlope,
  behindPostOne: exactOrNull(ground.behindPostOne),
  recoveryLength: exactOrNull(ground.recoveryLength),
  recoveryWidth: exactOrNull(ground.recoveryWidth),
  besideSlope: ground.besideSlope,
  breakBehindPost: exactOrNull(ground.breakBehindPost),
  slopeBehind: ground.slopeBehind,
})
