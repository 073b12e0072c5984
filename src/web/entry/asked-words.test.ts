import { expect, test } from 'vitest'
import { demoVersions } from '../../../test/fixtures/three-versions.ts'
import { judgeKnown } from '../../operations/judge-readings.ts'
import { requireRun } from '../../operations/require-run.ts'
import { askedWords } from './asked-words.ts'

const [first, second] = demoVersions(['v1', 'v2'])
const required = requireRun('run', second!)
if (!required.ok) throw new Error('the run cannot be laid out')
const judged = judgeKnown(required.value, [], new Map([['v1', first!.version!]]))

test('what is asked stands under the name of its place: of today, or of the version that had it last', () => {
  expect(askedWords('post-9/rail-height', judged)).toBe('post 9, rail-height')
  expect(askedWords('post-9/along', judged)).toBe('Position along the rail of post 9')
  // Version v2 has its second end farther on, and other posts there.
  expect(askedWords('post-19/rail-height', judged)).toBe('post 19, version 1, rail-height')
  expect(askedWords('post-19/lateral-offset', judged)).toBe('Lateral offset of post 19, version 1')
  expect(askedWords('run/need', judged)).toBe('the run, need')
})

test('a place that no version at hand has keeps its id', () => {
  expect(askedWords('post-99/rail-height', judged)).toBe('post-99, rail-height')
  expect(askedWords('post-19/rail-height', { ...judged, versions: new Map() })).toBe('post-19, rail-height')
})
