import type { FitFacts, Ground } from '../core/fit/fit.ts'
import type { EndSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import type { Layout } from '../core/layout/layout.ts'
import type { Need } from '../core/need/need.ts'
import type { Site, SiteGround } from '../core/site/site.ts'
import type { Metres } from '../core/units/quantity.ts'
import { sheetShelf } from './sheet-shelf.ts'

const inches = (length: Metres): number => length / 0.0254
const feet = (length: Metres): number => length / 0.3048

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
      railHeightInches: inches(hardware.adjoining.railHeight),
      splice: hardware.adjoining.splice,
    },
    ground: groundOf(hardware.ground),
    curb: hardware.curb && {
      heightInches: inches(hardware.curb.height),
      face: hardware.curb.face,
      toRailInches: inches(hardware.curb.toRail),
    },
    runFeet: layout === null ? null : layout.score.railInches / 12,
  }
}

function nearestHazard({ hazards, barrier }: Site): FitFacts['nearest'] {
  const nearest = hazards.reduce((best, hazard) => (hazard.near < best.near ? hazard : best))
  return {
    hazard: nearest.name,
    clearInches: inches(nearest.near - barrier.offset),
    lengthFeet: feet(nearest.to - nearest.from),
  }
}

/** Null where opposing traffic was not judged. */
function opposingReaches({ approach, departure }: Need): boolean | null {
  if (departure !== null) return departure.notes.some(({ kind }) => kind === 'crashworthy-end')
  return approach.notes.some((note) => note.kind === 'opposing-traffic-not-judged') ? null : false
}

const groundOf = (ground: SiteGround): Ground => ({
  platformSlope: ground.platformSlope,
  behindPostOneFeet: ground.behindPostOne === null ? null : feet(ground.behindPostOne),
  recoveryLengthFeet: ground.recoveryLength === null ? null : feet(ground.recoveryLength),
  recoveryWidthFeet: ground.recoveryWidth === null ? null : feet(ground.recoveryWidth),
  besideSlope: ground.besideSlope,
  breakBehindPostFeet: ground.breakBehindPost === null ? null : feet(ground.breakBehindPost),
  slopeBehind: ground.slopeBehind,
})
