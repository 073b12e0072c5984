import { type BrokenFile, changed } from '../fixtures.ts'

/** The least that a site file says. */
const leastSite = {
  format: 'lapwise-site/1',
  units: 'us',
  road: { speed: 55, adt: 4750, traffic: 'two-way', lanes: 2, laneWidth: 12, shoulderWidth: 8 },
  clearZone: 34,
  hazards: [{ name: 'river', from: 0, to: 100, near: 20, beyondClearZone: true }],
  barrier: { offset: 8 },
}

/** Every field of a site file. */
const fullSite = {
  ...leastSite,
  name: 'County Road 7, river',
  edition: 'rdg-2006',
  interpolateSpeeds: true,
  runoutOnCurves: 'path',
  road: { ...leastSite.road, alignment: { kind: 'curve', radius: 2000, turn: 'left', radiusOf: 'edge' } },
  clearZone: { foreslope: '1V:6H', take: 'low' },
  runoutLength: 185,
  shyLine: 7,
  flareLimits: { inside: 24, beyond: 12 },
  barrier: {
    offset: 8,
    flare: { rate: '14:1', parallelLength: 25, ends: 'approach' },
    approachEnd: 'flared-terminal-31',
    departureEnd: 'trailing-anchor-31',
  },
  driveways: [{ name: 'farm lane', from: '1+50', to: '1+70' }],
  hardware: {
    system: 'w-beam-midspan-31',
    spacing: 'half',
    work: 'new',
    letting: '2026-01-15',
    adjoining: { railHeight: '27 3/4 in', splice: 'post' },
    ground: {
      platformSlope: 10,
      behindPostOne: 5,
      recoveryLength: 75,
      recoveryWidth: 20,
      besideSlope: 3,
      breakBehindPost: 2,
      slopeBehind: 2,
    },
    curb: { height: 4, face: 'sloping', faceSlope: 3, toRail: '6 in' },
  },
}

export const validSites: readonly unknown[] = [leastSite, fullSite]

const broken = (
  title: string,
  path: readonly (string | number)[],
  value: unknown,
  problems: readonly string[],
  inSchema = true,
): BrokenFile => ({
  title,
  raw: changed(fullSite, path, value),
  problems,
  inSchema,
})

export const brokenSites: readonly BrokenFile[] = [
  broken('no units', ['units'], undefined, ['units: expected "us" or "metric", found nothing']),
  broken('a negative lane', ['road', 'laneWidth'], -12, ['road.laneWidth: expected a value of at least 1, found -12']),
  broken('half a lane', ['road', 'lanes'], 1.5, ['road.lanes: expected an integer, found 1.5']),
  broken('a speed of nothing', ['road', 'speed'], 0, ['road.speed: expected a value of at least 5, found 0']),
  broken('a speed that no road has', ['road', 'speed'], 9999, [
    'road.speed: expected a value of at most 200, found 9999',
  ]),
  broken('a flare without an angle', ['barrier', 'flare', 'rate'], 1e-308, [
    'barrier.flare.rate: expected a value of at least 1, found 1e-308',
  ]),
  broken(
    'the same as a text',
    ['barrier', 'flare', 'rate'],
    '0.001:1',
    ['barrier.flare.rate: expected a value of at least 1, found "0.001:1"'],
    false,
  ),
  broken('a hazard beyond the horizon', ['hazards', 0, 'near'], 1e17, [
    'hazards[0].near: expected a value of at most 5000, found 100000000000000000',
  ]),
  broken('a station beyond all counting', ['hazards', 0, 'from'], -100_000_000, [
    'hazards[0].from: expected a value of at least -5000000, found -100000000',
  ]),
  broken(
    'an alignment that ends beyond all counting',
    ['road', 'alignment'],
    { kind: 'elements', elements: Array(20).fill({ kind: 'tangent', length: 1_000_000 }) },
    [
      'road.alignment.elements: expected an alignment that ends at a length of -5000000 m to 5000000 m, found 20 elements',
    ],
    false,
  ),
  broken('a curve that is none', ['road', 'alignment', 'radius'], 1e15, [
    'road.alignment.radius: expected a value of at most 10000000, found 1000000000000000',
  ]),
  broken(
    'a rail below ground',
    ['hardware', 'adjoining', 'railHeight'],
    '-31 in',
    ['hardware.adjoining.railHeight: expected a length of 0.1 m to 3 m, found "-31 in"'],
    false,
  ),
  broken('an unknown edition', ['edition'], 'rdg-1989', [
    'edition: expected "rdg-2011" or "rdg-2006", found "rdg-1989"',
  ]),
  broken('no hazards', ['hazards'], [], ['hazards: expected a list of at least 1, found []']),
  broken('a letting that is no date', ['hardware', 'letting'], 'last year', [
    'hardware.letting: expected a date such as 2017-03-15, found "last year"',
  ]),
  broken('an unknown spacing', ['hardware', 'spacing'], 'third', [
    'hardware.spacing: expected "full" or "half" or "quarter", found "third"',
  ]),
  broken('a curb without a face', ['hardware', 'curb'], { height: 4, toRail: 0 }, [
    'hardware.curb.face: expected "vertical" or "sloping", found nothing',
  ]),
  broken(
    'a slope of a vertical face',
    ['hardware', 'curb', 'face'],
    'vertical',
    ['hardware.curb.faceSlope: expected no slope of a face that is vertical, found 3'],
    false,
  ),
  broken('a rail height that is no length', ['hardware', 'adjoining', 'railHeight'], '6-3', [], false),
  broken('a hazard in the lane', ['hazards', 0, 'near'], -2, [
    'hazards[0].near: expected a hazard outside the travelled way, 0 or more from its edge (this one stands in the lane), found -2',
  ]),
  broken('a barrier behind the hazard', ['barrier', 'offset'], 30, [], false),
]
