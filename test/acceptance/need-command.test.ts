import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { changed } from '../fixtures/broken-files.ts'
import { lapwise as call } from './lapwise.ts'

const folder = mkdtempSync(join(tmpdir(), 'lapwise-need-'))

const lapwise = (words: readonly string[], input = '') => call(folder, words, input)

// Montana DOT Road Design Manual, appendix K, example 9-3 (a): printed 141.5 ft
const montana = {
  format: 'lapwise-site/1',
  units: 'us',
  interpolateSpeeds: true,
  road: { speed: 55, adt: 4750, traffic: 'two-way', lanes: 2, laneWidth: 12, shoulderWidth: 8 },
  clearZone: 34,
  hazards: [{ name: 'river', from: '10+00', to: '10+40', near: 9, beyondClearZone: true }],
  barrier: { offset: 8, approachEnd: 'tangent-terminal-31', departureEnd: 'tangent-terminal-31' },
  hardware: { system: 'w-beam-midspan-31', work: 'new', letting: '2026-01-15' },
}

describe('lapwise need', () => {
  it('prints the agreed shape, and reproduces the printed 141.5 ft', async () => {
    const { code, out, said } = await lapwise(['need', '-', '--json'], JSON.stringify(montana))
    expect([code, said]).toEqual([0, ''])
    const need = JSON.parse(out)
    expect(need.unit).toBe('ft')
    expect(need.approach.lengthOfNeed.toFixed(1)).toBe('141.5')
    for (const key of ['lengthOfNeed', 'lateralAtEnd', 'runoutLength', 'governs', 'path', 'notes']) {
      expect(need.approach).toHaveProperty(key)
      expect(need.departure).toHaveProperty(key)
    }
    expect(need.checks.length).toBeGreaterThan(5)
    for (const key of ['what', 'verdict', 'limit', 'value', 'source', 'confirmation', 'smallestChange'])
      expect(need.checks[0]).toHaveProperty(key)
  })

  it('hands its result to the layout in one step', async () => {
    const need = await lapwise(['need', '-', '--json'], JSON.stringify(montana))
    const { code, out } = await lapwise(['layout', '-', '--json', '--limit', '1'], need.out)
    expect(code).toBe(0)
    const [run] = JSON.parse(out).runs
    expect(run.postOneAtInches + run.countsFromInches).toBeLessThanOrEqual(-141.4706 * 12 + 0.1)
    expect(run.postOneAtInches + run.countsToInches).toBeGreaterThanOrEqual(40 * 12)
  })

  it('draws plan and cross section', async () => {
    writeFileSync(join(folder, 'site.json'), JSON.stringify(montana))
    expect((await lapwise(['plan', 'site.json', '-o', 'plan.svg'])).code).toBe(0)
    expect(readFileSync(join(folder, 'plan.svg'), 'utf8')).toContain('<svg')
    expect((await lapwise(['plan', 'site.json', '--station', '10+20', '-o', 'section.svg'])).code).toBe(0)
  })

  const site = (path: readonly (string | number)[], value: unknown): string =>
    JSON.stringify(changed(montana, path, value))

  it.each([
    ['a negative lane', site(['road', 'laneWidth'], -12), /road\.laneWidth: expected/],
    [
      'a hazard in the lane',
      site(['hazards', 0, 'near'], -1),
      /hazards\[0\]\.near: expected a hazard outside the travelled way/,
    ],
    [
      'a barrier behind the hazard',
      site(['barrier', 'offset'], 12),
      /barrier\.offset: expected a barrier in front of "river"/,
    ],
    [
      'stations that go backwards',
      site(['hazards', 0, 'to'], '9+00'),
      /hazards\[0\]\.to: expected a station at or after/,
    ],
    [
      'a curve tighter than its offset',
      site(['road', 'alignment'], { kind: 'curve', radius: 6, turn: 'right' }),
      /road\.alignment.*: expected/,
    ],
    ['a speed beyond the table', site(['road', 'speed'], 95), /road\.speed: expected at most/],
  ] as const)('refuses %s with 2 and says what was expected', async (_, broken, message) => {
    const { code, out, said } = await lapwise(['need', '-'], broken)
    expect([code, out]).toEqual([2, ''])
    expect(said).toMatch(message)
  })
})

describe('lapwise alignment', () => {
  const road = (units: string) =>
    `<?xml version="1.0"?><LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2" date="2026-01-01" time="00:00:00">${units}<Alignments><Alignment name="a" length="100" staStart="0"><CoordGeom><Line><Start>0 0</Start><End>100 0</End></Line></CoordGeom></Alignment></Alignments></LandXML>`

  it('gives the short form of a road file, in the feet that the file names', async () => {
    const { code, out } = await lapwise(
      ['alignment', '-'],
      road('<Units><Imperial linearUnit="USSurveyFoot"/></Units>'),
    )
    expect(code).toBe(0)
    const [one] = JSON.parse(out).alignments
    // 1 US survey foot is 1200/3937 m, so 100 of them are 100.0002 international feet
    expect(one.alignment.foot).toBe('US survey')
    expect(one.alignment.elements[0].length).toBeCloseTo((100 * 1200) / 3937 / 0.3048, 9)
  })

  it('refuses a road file without units', async () => {
    const { code, said } = await lapwise(['alignment', '-'], road(''))
    expect(code).toBe(2)
    expect(said).toContain('expected Units with Metric or Imperial')
  })

  it('writes the alignment of a site as LandXML that it reads again', async () => {
    const withRoad = {
      ...montana,
      road: {
        ...montana.road,
        alignment: {
          kind: 'elements',
          elements: [
            { kind: 'tangent', length: 2000 },
            { kind: 'curve', length: 300, radius: 1000, turn: 'left' },
          ],
        },
      },
    }
    writeFileSync(join(folder, 'road-site.json'), JSON.stringify(withRoad))
    expect((await lapwise(['alignment', 'road-site.json', '-o', 'road.xml'])).code).toBe(0)
    const again = JSON.parse((await lapwise(['alignment', 'road.xml'])).out)
    expect(again.alignments[0].alignment.elements.map(({ kind }: { kind: string }) => kind)).toEqual([
      'tangent',
      'curve',
    ])
    expect(again.alignments[0].alignment.elements[1].radius).toBeCloseTo(1000, 6)
  })
})
