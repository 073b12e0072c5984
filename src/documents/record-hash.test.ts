import { expect, test } from 'vitest'
import { sampleInput, sampleRun } from '../../test/fixtures/record-inputs.ts'
import { recordHash } from './record-hash.ts'

const roadSaying = (changes: object) => ({ road: { ...sampleRun().road, ...changes } })
const textOf = (changes: object): string =>
  recordHash(
    sampleInput(() => [], sampleRun(changes)),
    (text) => text,
  )

test('a record of a run that leaves unsaid what the format did not have at first keeps its hash', () => {
  expect(textOf(roadSaying({ opposingReaches: null }))).not.toContain('opposingReaches')
})

test('a run without a flare of its own says nothing of it, one with it does', () => {
  expect(textOf({})).not.toContain('"flare":null')
  const flare = { rate: 15, firstFrom: -300 }
  expect(textOf({ flare })).toContain('"flare":{"firstFromInches":-300,"rate":15,"secondFromInches":null}')
})

test('what it says counts, either way', () => {
  expect(textOf(roadSaying({ opposingReaches: true }))).toContain('"opposingReaches":true')
  expect(textOf(roadSaying({ opposingReaches: false }))).toContain('"opposingReaches":false')
})
