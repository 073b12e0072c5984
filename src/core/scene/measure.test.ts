import { expect, it } from 'vitest'
import { demoRun } from '../../../test/fixtures/roadside.ts'
import { buildScene } from './build-scene.ts'
import { measureScene, type TouchedPoint } from './measure.ts'
import { standingAsAsked } from './standing.ts'

const inch = 0.0254
const touched = (x: number, y: number, z: number, fineness = 0): TouchedPoint => ({
  at: { x: x * inch, y: y * inch, z: z * inch },
  fineness,
})
const inchesOf = (...asked: Parameters<typeof measureScene>): number => measureScene(...asked)!.length / inch

it('tapes 3, 4 and 12 as 13, to the nearest sixteenth', () => {
  expect(inchesOf('tape', [touched(0, 0, 0), touched(3, 4, 12)], 1)).toBeCloseTo(13, 9)
  expect(inchesOf('tape', [touched(0, 0, 0), touched(10.04, 0, 0)], 1)).toBeCloseTo(10.0625, 9)
  expect(inchesOf('tape', [touched(0, 0, 0), touched(10.03, 0, 0)], 1)).toBeCloseTo(10, 9)
})

it('levels a point above finish grade, and needs no second', () => {
  expect(inchesOf('level', [touched(50, 31, 3)], 1)).toBeCloseTo(31, 9)
})

it('takes an offset from a string, away from the road positive, from either end of it and on either side', () => {
  const [a, b] = [touched(0, 20, 0), touched(100, 31, 0)]
  const away = touched(40, 5, 6)
  expect(inchesOf('string line', [a, b, away], 1)).toBeCloseTo(6, 9)
  expect(inchesOf('string line', [b, a, away], 1)).toBeCloseTo(6, 9)
  expect(inchesOf('string line', [a, b, away], -1)).toBeCloseTo(-6, 9)
  expect(measureScene('string line', [a, a, away], 1)).toBeNull()
  expect(measureScene('string line', [a, b], 1)).toBeNull()
})

it('doubts a reading by the step of its tape, and by what it was touched with', () => {
  // 2 x (1/16) / sqrt(12) = 0.03608; with two points of 1 in: 2 x sqrt((1/256 + 2) / 12) = 0.81730
  expect(measureScene('level', [touched(0, 31, 0)], 1)!.doubt / inch).toBeCloseTo(0.03608, 5)
  expect(measureScene('tape', [touched(0, 0, 0, inch), touched(9, 0, 0, inch)], 1)!.doubt / inch).toBeCloseTo(0.8173, 4)
})

it('tapes the space of two posts of a scene as the layout has it', () => {
  const { model } = demoRun().required
  const scene = buildScene(model, standingAsAsked(model), 1)
  const [a, b] = model.layout.posts.filter(({ unit }) => unit === 'run')
  const at = (id: string): TouchedPoint => ({ at: scene.places.find((one) => one.id === id)!.at, fineness: 0 })
  expect(inchesOf('tape', [at(a!.id), at(b!.id)], 1)).toBeCloseTo(b!.alongInches - a!.alongInches, 6)
})
