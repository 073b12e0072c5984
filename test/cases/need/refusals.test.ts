// Sites that are well formed but for which no need can be computed: the field to change and what it would have to be.
import { expect, test } from 'vitest'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { computeNeed, needProblem } from '../../../src/operations/compute-need.ts'
import { english } from '../../../src/words/english.ts'

const good = {
  format: 'lapwise-site/1',
  units: 'us',
  road: {
    speed: 55,
    adt: 4750,
    traffic: 'two-way',
    lanes: 2,
    laneWidth: 12,
    shoulderWidth: 8,
    alignment: { kind: 'straight' },
  },
  clearZone: 34 as unknown,
  runoutLength: null as number | null,
  hazards: [{ name: 'culvert', from: 1000, to: 1040, near: 10, far: 20 }],
  barrier: { offset: 8 },
}

type Loose = Record<string, unknown>
const curve = (radius: number, turn: string) => ({ kind: 'curve', radius, turn, radiusOf: 'edge' })
const tangent = (length: number) => ({ kind: 'elements', elements: [{ kind: 'tangent', length }] })
const onRoad = (more: Loose): Loose => ({ road: { ...good.road, ...more } })

test.each<[string, Loose, string]>([
  [
    'a curve tighter than its offset',
    onRoad({ alignment: curve(18, 'right') }),
    'road.alignment: expected a curve with a radius of more than 20 ft, the lateral distance to be reached on its inside, found a radius of 18 ft',
  ],
  [
    'a curve of elements tighter than its offset',
    onRoad({
      alignment: {
        kind: 'elements',
        elements: [
          { kind: 'tangent', length: 990 },
          { kind: 'curve', length: 60, radius: 19, turn: 'right' },
          { kind: 'tangent', length: 990 },
        ],
      },
    }),
    'road.alignment: expected a curve with a radius of more than 20 ft',
  ],
  [
    'a curve sharper than the curve factors',
    { ...onRoad({ alignment: curve(500, 'left') }), clearZone: { foreslope: 6 } },
    'road.alignment: expected a radius of at least 820 ft for the curve factor',
  ],
  [
    'a slope that the table does not hold',
    { clearZone: { foreslope: '1V:3H' } },
    'clearZone.foreslope: expected a slope no steeper than 1V:4H',
  ],
  [
    'a speed above the table',
    onRoad({ speed: 85 }),
    'road.speed: expected at most 80 mi/h, where RDG 2011 Table 5-10(b) ends, or runoutLength given as a length, found 85 mi/h',
  ],
  [
    'an alignment that begins too late',
    { ...onRoad({ alignment: tangent(2000) }), hazards: [{ ...good.hazards[0], from: 100, to: 120 }] },
    'road.alignment: expected an alignment that reaches station -110 ft',
  ],
  [
    'a hazard off the alignment',
    onRoad({ alignment: tangent(1020) }),
    'hazards[0].to: expected a station on the alignment, which runs from 0 to 1020',
  ],
  [
    'a runout length shorter than the hazard is deep',
    { ...onRoad({ alignment: curve(800, 'right') }), runoutLength: 19, runoutOnCurves: 'path' },
    'runoutLength: expected a runout length of more than the lateral extent, 20 ft, found 19 ft',
  ],
  [
    'a runout length that goes round the curve',
    onRoad({ alignment: curve(50, 'right') }),
    'road.alignment: expected a curve around which a runout length of 210 ft turns by less than half a circle',
  ],
])('%s', (_, spoil, expected) => {
  const site = siteFromValue('site.json', { ...good, ...spoil })
  const need = site.ok ? computeNeed(site.value) : null
  const found = !site.ok
    ? site.error.map((one) => printProblem(one, english(null)))
    : need !== null && !need.ok
      ? [printProblem(needProblem('site.json', need.error, 'us'), english(null))]
      : []
  expect(found).toEqual([expect.stringContaining(`site.json: ${expected}`)])
})
