import { describe, expect, it } from 'vitest'
import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import type { EndSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { crewSheetContents } from '../../../src/documents/crew-sheet-contents.ts'
import { stripDrawing } from '../../../src/drawing/views/strip.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { runFromValue } from '../../../src/formats/run/run-file.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { computeNeed } from '../../../src/operations/compute-need.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { type PlacedRun, placeRun, type RoadPlace } from '../../../src/operations/place-run.ts'
import type { RequiredRun } from '../../../src/operations/require-by.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { stripInput } from '../../../src/operations/strip-input.ts'
import { writeStakeCsv } from '../../../src/operations/write-exports.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'

const foot = 0.3048

const shipped = (id: string) => shippedSheets.find((sheet) => sheet.id === id) as EndSheet

/** A terminal that stands on its line, so that every offset is the run's. */
const plain: EndSheet = { ...shipped('tangent-terminal-31'), id: 'plain-terminal', flare: 'none', translations: {} }

/** Handbook F1: barrier 10 ft from the edge, 25 ft of it parallel, flared 14:1; X = 113.8060 ft, Y = 16.3433 ft. */
function siteF1(changes: object = {}, units: 'us' | 'metric' = 'us') {
  const long = (feet: number): number => (units === 'us' ? feet : feet * foot)
  const speed = units === 'us' ? 60 : 95
  const road = { speed, adt: 8000, traffic: 'one-way', lanes: 2, laneWidth: long(12), shoulderWidth: long(8) }
  return {
    format: 'lapwise-site/1',
    units,
    road,
    runoutLength: long(250),
    clearZone: long(40),
    hazards: [{ name: 'box', from: 0, to: long(10), near: long(22), far: long(30) }],
    barrier: {
      offset: long(10),
      flare: { rate: 14, parallelLength: long(25) },
      approachEnd: plain.id,
      departureEnd: 'trailing-anchor-31',
    },
    hardware: { system: 'w-beam-midspan-31' },
    sheets: [plain],
    ...changes,
  }
}

function runFor(site: object) {
  const read = siteFromValue('site', site)
  if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
  const need = computeNeed(read.value)
  if (!need.ok) throw new Error(need.error.kind)
  return {
    need: need.value,
    run: need.value.run as {
      readonly flare: unknown
      readonly road: object
      readonly need: { from: number; to: number }
    },
  }
}

function required(run: object): RequiredRun {
  const read = runFromValue('run', run)
  if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
  const found = requireRun('run', read.value)
  if (!found.ok) throw new Error(found.error.map((one) => printProblem(one, english(null))).join('\n'))
  return found.value
}

const straight = { offset: 10 * foot, road: null, unit: 'foot' } as const

function placed(run: RequiredRun, road: RoadPlace | null = null): PlacedRun {
  const found = placeRun('run', run, { ...straight, road })
  if (!found.ok) throw new Error(found.error.map((one) => printProblem(one, english(null))).join('\n'))
  return found.value
}

const refusal = (run: RequiredRun, road: RoadPlace | null = null): string => {
  const found = placeRun('run', run, { ...straight, road })
  return found.ok ? 'staked' : found.error.map((one) => printProblem(one, english(null))).join('\n')
}

// By hand, with a tape along the rail: nothing leaves the line for the 25 ft before the hazard (the datum); each foot of
// rail beyond it goes 14 / sqrt(197) ft up the road and 1 / sqrt(197) ft away from it.
const [up, away] = [14 / Math.sqrt(197), 1 / Math.sqrt(197)]
const onFlare = (feetFromDatum: number) => Math.max(0, -feetFromDatum - 25)

describe('a flared design is staked as it was designed', () => {
  it.each(['us', 'metric'] as const)('hands the flare to the run, %s', (units) => {
    expect(runFor(siteF1({}, units)).run.flare).toEqual({ rate: 14, firstFrom: -300, secondFrom: null })
  })

  it('puts every post where a tape and the flare put it', () => {
    const run = required(runFor(siteF1()).run)
    const { posts, postOneAtInches } = run.model.layout
    const { staking } = placed(run)
    expect(posts.filter(({ alongInches }) => postOneAtInches + alongInches < -300).length).toBeGreaterThan(10)
    for (const [i, { alongInches }] of posts.entries()) {
      const at = (postOneAtInches + alongInches) / 12
      const stake = staking.stakes[i]!
      expect(stake.offset / foot, `post ${i + 1}`).toBeCloseTo(10 + onFlare(at) * away, 9)
      expect(stake.station / foot, `post ${i + 1}`).toBeCloseTo(at + onFlare(at) * (1 - up), 9)
    }
    expect(staking.closure.largest).toBeLessThan(1e-6)
  })

  // X and Y of the need: where 114.0323 ft of rail end, and where the rail begins to count.
  it('reaches the end of need where the need has it', () => {
    const { need, run } = runFor(siteF1())
    expect(need.approach.lengthOfNeed).toBeCloseTo(113.806, 3)
    const rail = -run.need.from / 12
    expect(25 + (rail - 25) * up).toBeCloseTo(need.approach.lengthOfNeed, 1)
    expect(10 + (rail - 25) * away).toBeCloseTo(need.approach.lateralAtEnd, 2)
  })

  it('flares both ends where opposing traffic reaches the hazards', () => {
    const two = { ...siteF1().road, traffic: 'two-way', adt: 8000 }
    const barrier = { ...siteF1().barrier, departureEnd: plain.id }
    const { run } = runFor(siteF1({ road: two, barrier }))
    // the hazard is 10 ft long: its far end lies 10 ft down the rail, the second flare 25 ft beyond it
    expect(run.flare).toEqual({ rate: 14, firstFrom: -300, secondFrom: 420 })
    const model = required(run)
    const { posts, postOneAtInches } = model.model.layout
    const last = posts.at(-1)!
    const beyond = (postOneAtInches + last.alongInches - 420) / 12
    expect(beyond).toBeGreaterThan(37.5)
    const stake = placed(model).staking.stakes.at(-1)!
    expect(stake.offset / foot).toBeCloseTo(10 + beyond * away, 9)
    expect(stake.station / foot).toBeCloseTo(35 + beyond * up, 9)
  })

  it('goes away from the road on the left too, and up-station of a two-way road', () => {
    const run = runFor(siteF1()).run
    const left = required({ ...run, road: { ...run.road, side: 'left', traffic: 'two-way' } })
    const found = placeRun('run', left, { ...straight, offset: -10 * foot })
    if (!found.ok) throw new Error('not staked')
    const stake = found.value.staking.stakes[0]!
    const at = left.model.layout.postOneAtInches / 12
    expect(stake.offset / foot).toBeCloseTo(-10 - onFlare(at) * away, 9)
    expect(stake.station / foot).toBeCloseTo(-at - onFlare(at) * (1 - up), 9)
  })

  it('begins the flare at the first hazard inside the clear zone, as the need does', () => {
    const far = { name: 'far wall', from: -60, to: -50, near: 45, far: 50 }
    const { need, run } = runFor(siteF1({ hazards: [far, ...siteF1().hazards] }))
    // the datum is at -60: the box lies 60 ft down the rail, the flare begins 25 ft before it
    expect(run.flare).toEqual({ rate: 14, firstFrom: 35 * 12, secondFrom: null })
    expect(need.approach.lengthOfNeed).toBeCloseTo(113.806, 3)
    const rail = 60 - run.need.from / 12
    expect(25 + (rail - 25) * up).toBeCloseTo(need.approach.lengthOfNeed, 1)
  })

  it('is straight where the run file says nothing, as old ones do', () => {
    const { flare: _, ...old } = runFor(siteF1()).run
    for (const { offset } of placed(required(old)).staking.stakes) expect(offset / foot).toBeCloseTo(10, 9)
  })
})

describe('with an end unit that is flared itself', () => {
  const barrier = { ...siteF1().barrier, approachEnd: 'flared-terminal-31' }
  const run = required(runFor(siteF1({ barrier })).run)
  const sheet = shipped('flared-terminal-31')
  const flare = sheet.flare === 'none' ? null : sheet.flare

  // The unit's own line is the flared line carried on: x along it and y off it, turned by the angle of the flare.
  it('carries the flared line on and lays the unit off it', () => {
    const { posts, panels, postOneAtInches } = run.model.layout
    // It runs out at the splice nearest to what the sheet states, the first after its adapter.
    const over = panels.find(({ role }) => role === 'adapter')!.toInches
    expect(Math.abs(over - flare!.overInches)).toBeLessThanOrEqual(37.5)
    const own = { length: over / 12, offset: (flare!.offset.nominal as number) / 12 }
    expect(flare!.shape).toBe('straight')
    const stakes = placed(run).staking.stakes
    const begins = (postOneAtInches + over) / 12
    for (const [i, { alongInches }] of posts.entries()) {
      const at = (postOneAtInches + alongInches) / 12
      const inUnit = Math.max(0, begins - at)
      const y = (inUnit * own.offset) / own.length
      const x = Math.sqrt(inUnit * inUnit - y * y)
      const before = onFlare(Math.max(at, begins)) + x
      expect(stakes[i]!.offset / foot, `post ${i + 1}`).toBeCloseTo(10 + before * away + y * up, 9)
      const along = Math.max(at, begins) + onFlare(Math.max(at, begins)) - before * up + y * away
      expect(stakes[i]!.station / foot, `post ${i + 1}`).toBeCloseTo(along, 9)
    }
    expect(placed(run).staking.closure.largest).toBeLessThan(1e-6)
  })

  it('closes where the flare of the unit begins between two posts, too', () => {
    const between: EndSheet = { ...sheet, id: 'between-posts', flare: { ...flare!, overInches: 413 } }
    const ends = { ...siteF1().barrier, approachEnd: between.id }
    const other = required(runFor(siteF1({ barrier: ends, sheets: [plain, between] })).run)
    expect(placed(other).staking.closure.largest).toBeLessThan(1e-6)
  })

  it("judges the unit's offset from the flared line, by its posts alone", () => {
    const { posts, postOneAtInches } = run.model.layout
    const look = run.requirements.find(({ id }) => id === 'post-1/flare-offset')!.look
    if (look.kind !== 'measure' || look.orFrom?.kind !== 'offset from line') throw new Error('not computed')
    const flared = posts.filter((post) => post.unit === 'run' && postOneAtInches + post.alongInches <= -300)
    expect(flared.length).toBeGreaterThan(1)
    expect(look.orFrom.line.map(({ alongInches }) => alongInches)).toEqual(flared.map(({ alongInches }) => alongInches))
  })
})

describe('where a flare cannot be staked', () => {
  const designed = runFor(siteF1()).run
  const flareFrom = (feet: number) => required({ ...designed, flare: { rate: 14, firstFrom: feet * 12 } })
  const { layout } = required(designed).model
  const inner =
    (layout.postOneAtInches +
      Math.max(...layout.panels.filter(({ unit }) => unit === 'first').map(({ toInches }) => toInches))) /
    12

  it('refuses one that would bend the end unit, says where the unit ends, and takes the next sixteenth', () => {
    expect(refusal(flareFrom(inner - 1 / 192))).toMatch(
      /^run: flare.firstFrom: expected a flare that begins on the run's own rail/,
    )
    expect(refusal(flareFrom(inner))).toBe('staked')
    expect(refusal(flareFrom(inner + 1 / 192))).toBe('staked')
  })

  it('has no flare where it would begin beyond the rail', () => {
    const { postOneAtInches } = layout
    expect(refusal(flareFrom(postOneAtInches / 12 - 5))).toBe('staked')
    for (const { offset } of placed(flareFrom(postOneAtInches / 12 - 5)).staking.stakes)
      expect(offset / foot).toBeCloseTo(10, 9)
  })

  it('refuses one toward a bridge or a run that stands', () => {
    const bridge = { ...designed, second: { sheet: 'bridge-end-31', at: 300 }, flare: { rate: 14, secondFrom: 60 } }
    expect(refusal(required(bridge))).toMatch(/one toward a bridge end$/)
    const standing = { standingSplice: { at: -1500, position: 'midspan' } }
    expect(refusal(required({ ...designed, first: standing }))).toMatch(/one toward a run that stands$/)
  })

  it('refuses one beside a curve, not one beside the straight before or after it', () => {
    const straightPart = (length: number) => ({ length, curvatureStart: 0, curvatureEnd: 0 })
    const curve = (length: number) => ({ length, curvatureStart: 1 / 500, curvatureEnd: 1 / 500 })
    const road = (elements: Parameters<typeof layAlignment>[1]): RoadPlace => ({
      horizontal: layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }, elements),
      equations: [],
      surface: null,
    })
    // 328 ft is 99.9744 m
    const run = required({ ...designed, road: { ...designed.road, datumStation: '3+28.00' } })
    const tip = layout.postOneAtInches / 12
    const tipStation = 99.9744 + (tip + onFlare(tip) * (1 - up)) * foot
    const curveEnds = (at: number) => refusal(run, road([curve(at), straightPart(400)]))
    expect(curveEnds(tipStation + 0.001)).toMatch(
      /^run: flare.firstFrom: expected a straight road .* a radius of 500.000 m$/,
    )
    expect(curveEnds(tipStation - 0.001)).toBe('staked')
    // The 25 ft from bend to datum lie 10 ft inside the curve: as much station as 25 ft x 500 m / (500 m - 10 ft).
    const bendStation = 99.9744 - (25 * foot * 500) / (500 - 10 * foot)
    const curveBegins = (at: number) => refusal(run, road([straightPart(at), curve(300)]))
    expect(curveBegins(bendStation - 0.001)).toMatch(/a radius of 500.000 m$/)
    expect(curveBegins(bendStation + 0.001)).toBe('staked')
  })

  it('refuses them at the second end alike', () => {
    const { layout: whole } = required({
      ...designed,
      second: { sheet: plain.id },
      need: { from: -600, to: 1200 },
    }).model
    const joint = Math.min(...whole.panels.filter(({ unit }) => unit === 'second').map(({ fromInches }) => fromInches))
    const at = (inches: number) =>
      required({
        ...designed,
        ...{ second: { sheet: plain.id }, need: { from: -600, to: 1200 } },
        road: { ...designed.road, datumStation: '3+28.00' },
        flare: { rate: 14, secondFrom: whole.postOneAtInches + joint + inches },
      })
    expect(refusal(at(0.0625))).toMatch(/^run: flare.secondFrom: expected a flare that begins on the run's own rail/)
    expect(refusal(at(0))).toBe('staked')
    expect(refusal(at(-0.0625))).toBe('staked')
    const horizontal = layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }, [
      { length: 300, curvatureStart: 1 / 500, curvatureEnd: 1 / 500 },
    ])
    expect(refusal(at(0), { horizontal, equations: [], surface: null })).toMatch(
      /^run: flare.secondFrom: .* a radius of 500.000 m$/,
    )
  })
})

describe('what is written from it', () => {
  const run = required(runFor(siteF1()).run)

  it('crew sheet: the flare and the offset of each post, to 1/8 in', () => {
    const contents = crewSheetContents(recordInput(judgeKnown(run, []), english(null)), null)
    const { posts, postOneAtInches } = run.model.layout
    const bend = -300 - postOneAtInches
    expect(contents.flare).toContain(`Run: flare 14:1 from ${Math.floor(bend / 12)} ft`)
    expect(contents.posts.at(-1)!.offset).toBe('0 in')
    const first = onFlare(postOneAtInches / 12) * away * 12
    expect(first).toBeGreaterThan(60)
    expect(contents.posts[0]!.offset).toMatch(new RegExp(`^${Math.floor(Math.round(first * 8) / 8)}( \\d/\\d)? in$`))
    expect(posts.length).toBe(contents.posts.length)
  })

  it('points and rail: at the offsets of the stakes, the bend a corner of the rail', () => {
    const found = placed(run)
    const bend = found.rail.find(({ alongInches }) => alongInches === -300 - run.model.layout.postOneAtInches)
    expect(bend?.offset).toBeCloseTo(10 * foot, 9)
    const lines = writeStakeCsv(
      found,
      {
        order: 'point, northing, easting, elevation, code',
        header: false,
        unit: 'foot',
      },
      english(null),
    )
      .trim()
      .split('\r\n')
    // On a straight road without coordinates easting is the offset.
    const easting = lines.map((line) => Number(line.split(',')[2]))
    for (const [i, { alongInches }] of run.model.layout.posts.entries())
      expect(easting[i]).toBeCloseTo(10 + onFlare((run.model.layout.postOneAtInches + alongInches) / 12) * away, 3)
  })

  it('strip: says that the flare of the run is drawn straight', () => {
    expect(JSON.stringify(stripDrawing(stripInput(run, english(null))))).toContain(
      'the flare of the run, 14:1, is drawn straight',
    )
    expect(
      JSON.stringify(stripDrawing(stripInput(required({ ...runFor(siteF1()).run, flare: null }), english(null)))),
    ).not.toContain('the flare of the run')
  })
})
