import { expect, test } from 'vitest'
import { demoVersions } from '../../../test/fixtures/three-versions.ts'
import { judgeKnown } from '../../operations/judge-readings.ts'
import { requireRun } from '../../operations/require-run.ts'
import { fetchWords } from '../messages.ts'
import { askedWords } from './asked-words.ts'

await fetchWords()

const [first, second] = demoVersions(['v1', 'v2'])
const held = new Map([['v1', { ...first!.version!, sheets: first!.sheets }]])
const required = requireRun('run', second!)
if (!required.ok) throw new Error('the run cannot be laid out')
const judged = judgeKnown(required.value, [], held)
const nameOf = askedWords(judged)

test('what is asked stands under the name of its place: of today, or of the version that had it last', () => {
  expect(nameOf('post-9/rail-height', null)).toBe('post 9, rail height')
  expect(nameOf('post-9/along', 'v1')).toBe('post 9, position along the rail')
  expect(nameOf('post-9', null)).toBe('post 9')
  // Version v2 has its second end farther on, and other posts there.
  expect(nameOf('post-19/rail-height', 'v1')).toBe('post 19, version 1, rail height')
  expect(nameOf('post-19/lateral-offset', null)).toBe('post 19, version 1, lateral offset')
  expect(nameOf('run/need', null)).toBe('the run, length of need')
})

test('a rule of a sheet is the sentence of the edition that its person saw', () => {
  const rule = first!.sheets.flatMap(({ parts }) => parts.flatMap(({ rules }) => rules)).find(({ at }) => at !== null)!
  const said = (seen: string | null, sheets = first!.sheets) => {
    const versions = new Map([['v1', { ...first!.version!, sheets }]])
    return askedWords({ ...judged, versions })(`post-9/${rule.id}`, seen)
  }
  expect(said(null)).toBe(`post 9, ${rule.must}`)
  const other = first!.sheets.map((sheet) => ({
    ...sheet,
    parts: sheet.parts.map((part) => ({ ...part, rules: part.rules.map((one) => ({ ...one, must: 'It is so.' })) })),
  }))
  expect(said('v1', other)).toBe('post 9, It is so.')
  expect(said('no such version')).toBe(`post-9, ${rule.id}`)
})

test('a place that no version at hand has, or that a version of another beginning has, keeps its id', () => {
  expect(nameOf('post-99/rail-height', null)).toBe('post-99, rail height')
  expect(askedWords({ ...judged, versions: new Map() })('post-19/rail-height', 'v1')).toBe('post-19, rail height')
  const elsewhere = new Map([['w1', { ...first!.version!, id: 'w1', sheets: first!.sheets }]])
  expect(askedWords({ ...judged, versions: elsewhere })('post-9/rail-height', 'w1')).toBe(
    'post 9, of another version, rail height',
  )
  expect(nameOf('post-9/rail-height', 'w1')).toBe('post-9, rail height')
})
