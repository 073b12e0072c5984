import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import { findNeed } from '../../../src/core/need/need.ts'
import type { Hazard, Site, SiteAlignment } from '../../../src/core/site/site.ts'
import { feet } from '../../../src/core/units/quantity.ts'
import type { PlanInput, SitePage } from '../../../src/drawing/views/plan/site-view.ts'
import { planInput } from '../../../src/operations/write-site-drawings.ts'
import { english } from '../../../src/words/english.ts'
import { hardwareNotSaid } from '../../fixtures/hardware-not-said.ts'

/** Sites for the pictures of plans and sections. */

const hazard = (name: string, from: number, to: number, near: number, far: number | null): Hazard => ({
  name,
  from: feet(from),
  to: feet(to),
  near: feet(near),
  far: far === null ? null : feet(far),
  beyondClearZone: far === null,
})

/** 60 mi/h, 3,000 vehicles a day: runout length 210 ft, shy line 8 ft. Two lanes of 12 ft, both directions. */
export const twoWaySite: Site = {
  units: 'us',
  edition: 'rdg-2011',
  interpolateSpeeds: false,
  runoutOnCurves: 'edge',
  road: {
    speed: 60,
    adt: 3000,
    traffic: 'two-way',
    lanes: 2,
    laneWidth: feet(12),
    shoulderWidth: feet(8),
    medianWidth: null,
    alignment: { kind: 'straight' },
  },
  clearZone: { kind: 'slope', slope: 'foreslope', run: 6, take: 'high' },
  runoutLength: null,
  shyLine: null,
  flareLimits: null,
  side: 'right',
  hazards: [hazard('culvert headwall', 1000, 1020, 13, 24), hazard('sign bridge leg', 1052, 1056, 16, 20)],
  barrier: {
    offset: feet(10),
    flare: { rate: 14, parallelLength: feet(25), ends: 'approach' },
    approachEnd: 'tangent-terminal-31',
    departureEnd: 'trailing-anchor-31',
  },
  driveways: [{ name: 'field access', from: feet(905), to: feet(925) }],
  hardware: { ...hardwareNotSaid, system: 'w-beam-midspan-31' },
  sheets: [],
}

/** The same seen in a mirror, as far as traffic that keeps to the right lets it: one way. */
export const mirrorPair = (): readonly [Site, Site] => {
  const right: Site = { ...twoWaySite, road: { ...twoWaySite.road, traffic: 'one-way' } }
  return [right, { ...right, side: 'left' }]
}

const onRoad = (site: Site, alignment: SiteAlignment): Site => ({ ...site, road: { ...site.road, alignment } })

/** Metric, divided, three lanes each way, a river that goes on beyond the clear zone. */
const dividedSite: Site = {
  ...twoWaySite,
  units: 'metric',
  road: {
    speed: 110,
    adt: 24_000,
    traffic: 'divided',
    lanes: 4,
    laneWidth: 3.65,
    shoulderWidth: 3,
    medianWidth: 6,
    alignment: { kind: 'straight' },
  },
  clearZone: { kind: 'width', width: 9 },
  hazards: [{ name: 'river', from: 1200, to: 1216, near: 5, far: null, beyondClearZone: true }],
  barrier: { offset: 3.6, flare: null, approachEnd: 'flared-terminal-31', departureEnd: null },
  driveways: [],
}

const outsideSite: Site = {
  ...onRoad(twoWaySite, { kind: 'curve', radius: feet(700), turn: 'left' }),
  clearZone: { kind: 'width', width: feet(40) },
  barrier: { ...twoWaySite.barrier, flare: null },
  driveways: [],
}

const insideSite: Site = {
  ...outsideSite,
  road: { ...outsideSite.road, alignment: { kind: 'curve', radius: feet(700), turn: 'right' } },
}

/** Tangent, spiral, curve, spiral, tangent along the centreline; hazards on the left. */
const spiralSite: Site = {
  ...onRoad(twoWaySite, {
    kind: 'elements',
    line: 'centreline',
    unit: 'foot',
    equations: [{ internal: feet(1100), back: feet(1100), ahead: feet(2000) }],
    horizontal: layAlignment({ point: { easting: 1000, northing: 2000 }, azimuth: 0.4, station: 0 }, [
      { length: feet(800), curvatureStart: 0, curvatureEnd: 0 },
      { length: 60, curvatureStart: 0, curvatureEnd: 1 / 250 },
      { length: 120, curvatureStart: 1 / 250, curvatureEnd: 1 / 250 },
      { length: 60, curvatureStart: 1 / 250, curvatureEnd: 0 },
      { length: 300, curvatureStart: 0, curvatureEnd: 0 },
    ]),
  }),
  clearZone: { kind: 'width', width: feet(30) },
  side: 'left',
}

export function siteInput(site: Site, page: SitePage): PlanInput {
  const need = findNeed(site)
  if (!need.ok) throw new Error(JSON.stringify(need.error))
  return planInput(site, need.value, page, english(site.units))
}

export const siteInputs = {
  twoWay: (page: SitePage) => siteInput(twoWaySite, page),
  divided: (page: SitePage) => siteInput(dividedSite, page),
  left: (page: SitePage) => siteInput(mirrorPair()[1], page),
  outside: (page: SitePage) => siteInput(outsideSite, page),
  inside: (page: SitePage) => siteInput(insideSite, page),
  spiral: (page: SitePage) => siteInput(spiralSite, page),
}
