import { expect, test } from 'vitest'
import { valueAt, withValue } from '../form/draft.ts'
import { inUnits } from './convert-units.ts'
import { exampleSite } from './example-site.ts'
import { solveSite } from './solve-site.ts'

test('lengths, stations and speed are converted and rounded, and what is no number stays', () => {
  const draft = withValue(exampleSite, 'barrier.offset', 'nine')
  const metric = inUnits(draft, 'metric')
  expect(valueAt(metric, 'road')).toMatchObject({ speed: 100, laneWidth: 3.66, shoulderWidth: 2.44, lanes: 2 })
  expect(valueAt(metric, 'hazards[0]')).toMatchObject({ from: '0+365.76', to: '0+373.08', near: 4.88, far: 7.92 })
  expect(valueAt(metric, 'barrier')).toMatchObject({ offset: 'nine', flare: { rate: 15, parallelLength: 7.62 } })
  expect(valueAt(inUnits(metric, 'us'), 'road.speed')).toBe(60)
})

test('the tables are those of the new unit: 76 m at 100 km/h, not 250 ft', () => {
  // RDG 2011 Table 5-10(a), 100 km/h, ADT 5,000 to 10,000, as in the handbook's constructed case P6: L_R 76 m.
  expect(solveSite(exampleSite).results?.().report.approach.runoutLength).toBe(250)
  expect(solveSite(inUnits(exampleSite, 'metric')).results?.().report.approach.runoutLength).toBe(76)
})

test('the elements of an alignment are not rounded, so that they still meet', () => {
  const alignment = {
    kind: 'elements',
    line: 'edge',
    start: { easting: 10, northing: 0, azimuth: 30, station: '0+00' },
    elements: [
      { kind: 'tangent', length: 1000.1 },
      { kind: 'tangent', length: 20, start: { easting: 520.5, northing: 870, azimuth: 31 } },
    ],
    stationEquations: [],
  }
  const metric = inUnits(withValue(exampleSite, 'road.alignment', alignment), 'metric')
  expect(valueAt(metric, 'road.alignment')).toMatchObject({
    start: { easting: 3.048, azimuth: 30, station: '0+000' },
    elements: [
      { length: 1000.1 * 0.3048 },
      { length: 20 * 0.3048, start: { easting: 520.5 * 0.3048, northing: 870 * 0.3048, azimuth: 31 } },
    ],
  })
})
