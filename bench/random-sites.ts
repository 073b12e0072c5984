import { layAlignment } from '../src/core/alignment/horizontal-alignment.ts'
import type { Site, SiteAlignment } from '../src/core/site/site.ts'
import { hardwareNotSaid } from '../test/fixtures/hardware-not-said.ts'

/** A small seeded generator (mulberry32): the same sites on every machine. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

export type RoadKind = 'straight' | 'curve' | 'spiral'

const speeds = [40, 50, 60, 70] as const
const foot = 0.3048

/** Tangent, spiral, curve to the left, spiral, tangent, and the same to the right. */
const spiralRoad: SiteAlignment = {
  kind: 'elements',
  line: 'edge',
  equations: [],
  unit: 'metre',
  horizontal: layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }, [
    { length: 100, curvatureStart: 0, curvatureEnd: 0 },
    { length: 80, curvatureStart: 0, curvatureEnd: -1 / 500 },
    { length: 150, curvatureStart: -1 / 500, curvatureEnd: -1 / 500 },
    { length: 80, curvatureStart: -1 / 500, curvatureEnd: 0 },
    { length: 60, curvatureStart: 0, curvatureEnd: 0 },
    { length: 80, curvatureStart: 0, curvatureEnd: 1 / 500 },
    { length: 150, curvatureStart: 1 / 500, curvatureEnd: 1 / 500 },
    { length: 80, curvatureStart: 1 / 500, curvatureEnd: 0 },
    { length: 300, curvatureStart: 0, curvatureEnd: 0 },
  ]),
}

/** An invented two-lane road with one hazard, drawn from `random`. */
export function randomSite(random: () => number, road: RoadKind): Site {
  const near = (8 + 12 * random()) * foot
  const from = (800 + 400 * random()) * foot
  return {
    units: 'us',
    edition: 'rdg-2011',
    interpolateSpeeds: false,
    runoutOnCurves: 'edge',
    road: {
      speed: speeds[Math.floor(random() * speeds.length)]!,
      adt: 200 + 12_000 * random(),
      traffic: 'two-way',
      lanes: 2,
      laneWidth: 12 * foot,
      shoulderWidth: 6 * foot,
      medianWidth: null,
      alignment: alignmentOf(random, road),
    },
    clearZone: { kind: 'width', width: 30 * foot },
    runoutLength: null,
    shyLine: null,
    flareLimits: null,
    side: 'right',
    hazards: [
      {
        name: 'hazard',
        from,
        to: from + 40 * foot * random(),
        near,
        far: near + 15 * foot * random(),
        beyondClearZone: false,
      },
    ],
    barrier: { offset: 6 * foot, flare: null, approachEnd: null, departureEnd: null },
    driveways: [],
    hardware: hardwareNotSaid,
    sheets: [],
  }
}

function alignmentOf(random: () => number, road: RoadKind): SiteAlignment {
  switch (road) {
    case 'straight':
      return { kind: 'straight' }
    case 'curve':
      return { kind: 'curve', radius: (800 + 4000 * random()) * foot, turn: random() < 0.5 ? 'left' : 'right' }
    case 'spiral':
      return spiralRoad
  }
}
