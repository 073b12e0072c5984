// The files of a packet as the first program with rule 2 wrote them, never written anew, and their hash as the script of
// test/acceptance, which is no part of this program, computed it from them. What was signed by this rule stands for good.
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { recordText } from '../../../src/operations/record-hash.ts'
import { photoHashes, photosNamed } from '../../../src/operations/record-photos.ts'
import { sha256 } from '../../fixtures/record-text-of.ts'

const text = (name: string): string => readFileSync(new URL(`demo/${name}`, import.meta.url), 'utf8')

test('a record that was signed by rule 2 has the same hash whenever it is read again', () => {
  const run = readRun('run.json', text('run.json'))
  const read = readReadings('readings.json', text('readings.json'))
  if (!run.ok || !read.ok) throw new Error('the files of the packet cannot be read')
  const log = read.value.readings
  const record = recordText(
    { run: run.value, log, freeFindings: read.value.findings },
    photoHashes(photosNamed(log, [], []), new Map()),
    read.value.photoStrokes,
  )
  expect(sha256(record)).toBe('b63b82e7f96a4edbaf657c88716e49645583c626b150c3be655033de33cf6877')
})

test('a run that is not pinned has no record', () => {
  const { version: _, earlier: _e, layout: _l, ...asked } = JSON.parse(text('run.json'))
  const run = readRun('run.json', JSON.stringify({ ...asked, format: 'lapwise-run/1' }))
  if (!run.ok) throw new Error('the run as asked cannot be read')
  expect(() => recordText({ run: run.value, log: [], freeFindings: [] }, {}, [])).toThrow(RangeError)
})
