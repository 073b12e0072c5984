import { describe, expect, it } from 'vitest'
import type { EndSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { computeNeed } from '../../../src/operations/compute-need.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'

const shipped = (id: string) => shippedSheets.find((sheet) => sheet.id === id) as EndSheet

/** The handbook's constructed case B1: a 25-ft transition, a 50-ft terminal that counts from 12.5 ft behind post 1. */
function sheetsOfB1(): EndSheet[] {
  const terminal = shipped('flared-terminal-27-3-4')
  const bridge = shipped('bridge-end-31')
  const plain = terminal.posts[2]!
  const posts = [3, 4, 5, 6, 7, 8, 9].map((number) => ({ ...plain, number, along: (number - 1) * 75 }))
  return [
    {
      ...terminal,
      id: 'terminal-50-ft',
      flare: 'none',
      translations: {},
      posts: [...terminal.posts.slice(0, 2), ...posts],
      panels: { own: [...terminal.panels.own, terminal.panels.own[2]!], adapters: [] },
      listedLength: { ...terminal.listedLength, inches: 600 },
    },
    {
      ...bridge,
      id: 'bridge-25-ft',
      translations: {},
      joins: ['w-beam-post-splice-27-3-4'],
      posts: bridge.posts.map((post) => (post.number === 10 ? { ...post, along: 300 } : post)),
    },
  ]
}

function needOf(changes: object) {
  // Montana DOT Road Design Manual, appendix K, example 9-3 (a)
  const site = {
    format: 'lapwise-site/1',
    units: 'us',
    interpolateSpeeds: true,
    road: { speed: 55, adt: 4750, traffic: 'two-way', lanes: 2, laneWidth: 12, shoulderWidth: 8 },
    clearZone: 34,
    hazards: [{ name: 'river at the bridge end', from: 0, to: 0, near: 8, beyondClearZone: true }],
    barrier: { offset: 8, approachEnd: 'terminal-50-ft', departureEnd: 'bridge-25-ft' },
    hardware: { system: 'w-beam-post-splice-27-3-4' },
    sheets: sheetsOfB1(),
    ...changes,
  }
  const read = siteFromValue('site.json', site)
  if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
  const need = computeNeed(read.value)
  if (!need.ok) throw new Error(need.error.kind)
  return need.value
}

// Constructed arithmetic case B1 of the handbook, built on the printed 141.5 ft of Montana example 9-3 (a).
describe('from need to layout, case B1', () => {
  it('adds 7 plain panels of 12 ft 6 in to transition and terminal, 162.5 ft installed, 150.0 ft that count', () => {
    const { approach, installed } = needOf({})
    expect(approach.lengthOfNeed).toBeCloseTo(141.4706, 4)
    expect(installed?.plainRail).toBe(87.5)
    expect(installed?.length).toBe(162.5)
    expect(installed?.counts).toBe(150)
    expect(installed!.plainPanels.reduce((sum, inches) => sum + inches, 0)).toBe(7 * 150)
  })

  it('needs the site in metres to come to the same rail', () => {
    const metres = (feet: number) => feet * 0.3048
    const metric = needOf({
      units: 'metric',
      runoutLength: metres(185),
      road: { speed: 90, adt: 4750, traffic: 'two-way', lanes: 2, laneWidth: metres(12), shoulderWidth: metres(8) },
      clearZone: metres(34),
      hazards: [{ name: 'river', from: 0, to: 0, near: metres(8), beyondClearZone: true }],
      barrier: { offset: metres(8), approachEnd: 'terminal-50-ft', departureEnd: 'bridge-25-ft' },
    })
    expect(metric.installed!.length).toBeCloseTo(metres(162.5), 9)
  })
})

describe('the run that a need asks for', () => {
  // A run's datum is where adjacent traffic first meets the hazards: the lower station on the right, the upper on the left.
  it.each([
    ['right', '12+34.56'],
    ['left', '13+00.00'],
  ])('of a straight road has the station of its datum from the site, on the %s', (side, station) => {
    const hazards = [{ name: 'river', from: '12+34.56', to: '13+00', near: 8, side, beyondClearZone: true }]
    const barrier = { offset: 8, approachEnd: 'terminal-50-ft', departureEnd: 'terminal-50-ft' }
    expect(needOf({ hazards, barrier }).run).toMatchObject({ road: { datumStation: station, side } })
  })

  it('of a curve says none, as its rail is no difference of stations', () => {
    const alignment = { kind: 'curve', radius: 2000, turn: 'right' }
    const road = { speed: 55, adt: 4750, traffic: 'two-way', lanes: 2, laneWidth: 12, shoulderWidth: 8, alignment }
    expect((needOf({ road }).run as { road: object }).road).not.toHaveProperty('datumStation', expect.any(String))
  })
})

describe('the rail of a flare', () => {
  it('is longer than its length along the road by the slope', () => {
    // handbook F1: X = 113.8060 ft, L1 = 25 ft, 14:1, so 25 + 88.8060 sqrt(1 + 1/14^2) = 114.0323 ft of rail
    const need = needOf({
      runoutLength: 250,
      clearZone: 40,
      hazards: [{ name: 'box', from: 0, to: 10, near: 22, far: 30 }],
      barrier: {
        offset: 10,
        flare: { rate: 14, parallelLength: 25 },
        approachEnd: 'flared-terminal-31',
        departureEnd: 'trailing-anchor-31',
      },
      hardware: { system: 'w-beam-midspan-31' },
    })
    expect(need.approach.lengthOfNeed).toBeCloseTo(113.806, 3)
    const from = (need.run as { need: { from: number } }).need.from
    expect(-from / 12).toBeCloseTo(25 + (need.approach.lengthOfNeed - 25) * Math.hypot(1, 1 / 14), 1)
    expect(from * 16).toBe(Math.round(from * 16))
  })
})
