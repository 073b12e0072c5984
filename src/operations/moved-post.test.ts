import { expect, it } from 'vitest'
import type { Reading } from '../core/measurement/reading.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { remedyOf } from '../core/verdicts/saying.ts'
import { readRun } from '../formats/run/run-file.ts'
import { english } from '../words/english.ts'
import { judgeKnown } from './judge-readings.ts'
import { requireRun } from './require-run.ts'

const read = readRun(
  'run',
  JSON.stringify({
    ...{ format: 'lapwise-run/1', name: 'a run with a moved post', system: 'w-beam-post-splice-27-3-4', need: null },
    first: { standingSplice: { at: 0, position: 'post' } },
    second: { standingSplice: { at: '125 ft', position: 'post' } },
    // Half a post of 3 in beside it: 445 to 460.
    obstructions: [{ name: 'a pipe', from: 448, to: 457 }],
    clearance: 0,
    curb: 'none',
  }),
)
const required = read.ok ? requireRun('run', read.value) : read
if (!required.ok) throw new Error(JSON.stringify(required.error))
const { layout } = required.value.model
const moved = layout.posts.find(({ state }) => state === 'moved')!

/** The findings when the spaces before and after post `number` are read with it `out` inches too far downstream. */
function remediesWith(number: number, out: number): readonly string[] {
  if (!required.ok) throw new Error('no run')
  const apart = (after: number) => layout.posts[after - 1]!.alongInches - layout.posts[after - 2]!.alongInches
  const reading = (of: string, inches: number): Reading => ({
    ...{ id: `reading ${of}`, of, by: 'J. Okafor', at: '2026-01-12T10:00:00Z', instrument: 'tape' },
    ...{ where: null, photos: [], corrects: null, rechecks: null, together: null, uncertainty: null },
    answer: { kind: 'measured', value: exactLength(inches, 'in'), unit: 'in', resolution: null },
  })
  return judgeKnown(required.value, [
    reading(`space-${number - 1}/spacing`, apart(number) + out),
    reading(`space-${number}/spacing`, apart(number + 1) - out),
  ]).judgement.findings.map((finding) => english(null).say(remedyOf(finding)))
}

it('the remedy of a moved post that stands where it was drawn before moving sends it to its new slot', () => {
  // the post at 450 is moved to 445; left at 450 it is 5 in too far downstream
  expect(moved.alongInches % 75).toBe(70)
  const [remedy, ...others] = remediesWith(moved.number, 5)
  expect(others).toEqual([])
  expect(remedy).toContain(`Move post ${moved.number} upstream by 5 in`)
  expect(remedy).toContain(`post ${moved.number}, which is moved by the layout, gets a new one`)
  expect(remedy).not.toContain('The rail slot may not be enlarged')
})

it('that of any other post sends it back to its own', () => {
  const [remedy] = remediesWith(moved.number + 5, 5)
  expect(remedy).toContain('The rail slot may not be enlarged in the field.')
  expect(remedy).not.toContain('new one')
})
