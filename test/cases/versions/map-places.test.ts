import { describe, expect, test } from 'vitest'
import { placesIn } from '../../../src/core/record/places-in.ts'
import { placeIdsIn } from '../../../src/core/record/version.ts'
import { readingsFromValue } from '../../../src/formats/readings/readings-file.ts'
import { type RunFile, readRun } from '../../../src/formats/run/run-file.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { pinRun } from '../../../src/operations/pin-run.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { type RevisedRun, reviseRun } from '../../../src/operations/revise-run.ts'
import { versionProblems } from '../../../src/operations/version-problems.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { runFile } from '../spanish/gather-runs.ts'

const asked = (changes: object): RunFile => {
  const read = readRun('run', runFile(changes))
  if (!read.ok) throw new Error('what is asked cannot be read', { cause: read.error })
  return read.value
}
const pinned = (changes: object): RunFile => {
  const made = pinRun('run', asked(changes), 'v1')
  if (!made.ok) throw new Error('the run cannot be pinned', { cause: made.error })
  return made.value
}
const next = (before: RunFile, changes: object, version = 'v2'): RevisedRun => {
  const revised = reviseRun({ before: 'before', asked: 'asked' }, before, asked(changes), version)
  if (!revised.ok) throw new Error('there is no such version', { cause: revised.error })
  return revised.value
}
const modelOf = (run: RunFile) => {
  const required = requireRun('run', run)
  if (!required.ok) throw new Error('the run cannot be laid out', { cause: required.error })
  return required.value
}
const first = pinned({})
const withSheet = (id: string, change: (sheet: never) => object) => ({
  sheets: shippedSheets
    .filter((one) => one.id === id)
    .map((sheet) => change(JSON.parse(JSON.stringify(sheet)) as never)),
})

describe('the next version of a run', () => {
  test('keeps every place where the same is asked again', () => {
    const { run, kept, gone, added, askedOtherwise } = next(first, {})
    expect([gone, added, askedOtherwise]).toEqual([[], [], []])
    expect(kept).toEqual(placeIdsIn(first.version!.layout))
    expect(run.version!.layout).toEqual(first.version!.layout)
    expect(run.version!.earlier).toEqual([{ id: 'v1', gone: [], askedOtherwise: [] }])
  })

  test('keeps the places that did not move, whatever their numbers are now, and lists the others', () => {
    // At a post of the run, which has to give way.
    const { posts, postOneAtInches } = first.version!.layout
    const at = postOneAtInches + posts.findLast(({ unit }) => unit === 'run')!.alongInches
    const pipe = { name: 'the pipe', from: at - 4, to: at + 4 }
    const { run, kept, gone, added } = next(first, {
      obstructions: [
        ...first.obstructions.map(({ name, fromInches, toInches }) => ({ name, from: fromInches, to: toInches })),
        pipe,
      ],
    })
    expect(gone.length).toBeGreaterThan(0)
    expect(added.every((id) => /^[a-z]+(-\d+)?~v2$/.test(id))).toBe(true)
    const [before, after] = [placesIn(modelOf(first).model), placesIn(modelOf(run).model)]
    for (const id of kept.filter((one) => one !== 'run')) expect(after.get(id)).toBe(before.get(id))
    const old = new Set(before.values())
    for (const id of added) expect(old.has(after.get(id)!)).toBe(false)
  })

  test('takes no post of another terminal for the one that stood in its place', () => {
    const { kept, gone } = next(first, { first: { sheet: 'tangent-terminal-31' } })
    const unit = first.version!.layout.posts.filter((post) => post.unit === 'first').map(({ id }) => id)
    expect(gone).toEqual(expect.arrayContaining([...unit, 'first']))
    expect(kept).toContain('second')
  })

  test('never uses an id again, along any chain', () => {
    const ever = new Set(placeIdsIn(first.version!.layout))
    const places = new Map(placesIn(modelOf(first).model))
    let run = first
    const wishes = [{ first: { sheet: 'tangent-terminal-31' } }, {}, { need: { from: '-90 ft', to: '25 ft' } }, {}]
    for (const [i, wish] of wishes.entries()) {
      const { run: later, added } = next(run, wish, `v${i + 2}`)
      for (const id of added) expect(ever.has(id), id).toBe(false)
      for (const [id, place] of placesIn(modelOf(later).model)) {
        if (places.has(id)) expect(places.get(id)).toBe(place)
        places.set(id, place)
        ever.add(id)
      }
      expect(versionProblems('run', later, `v${i + 2}`, run)).toEqual([])
      run = later
    }
    // What is back where it was has another id: the first one was taken away.
    expect(run.version!.layout.endIds.first).toMatch(/^first~/)
  })

  test('takes an answer to another question for none', () => {
    const torque = withSheet(
      'flared-terminal-31',
      (sheet: { id: string; version: string; parts: { rules: { look: { kind: string }; must: string }[] }[] }) => ({
        ...sheet,
        version: '9.0.0',
        translations: {},
        parts: sheet.parts.map((part) => ({
          ...part,
          rules: part.rules.map((rule) =>
            rule.look.kind === 'confirm' ? { ...rule, must: `${rule.must} Twice.` } : rule,
          ),
        })),
      }),
    )
    const { askedOtherwise, gone } = next(first, torque)
    expect(gone).toEqual([])
    const confirmed = modelOf(first).requirements.filter(
      ({ look, sheet }) => look.kind === 'confirm' && sheet === 'flared-terminal-31',
    )
    expect(confirmed.length).toBeGreaterThan(0)
    expect(askedOtherwise).toEqual(confirmed.map(({ id }) => id))
  })

  test('judges what was read by its own limits, and by no other', () => {
    const higher = withSheet('w-beam-midspan-31', (sheet: { railHeight: object }) => ({
      ...sheet,
      version: '9.0.0',
      railHeight: { ...sheet.railHeight, low: 31, nominal: 33, high: 34 },
    }))
    const { run, askedOtherwise } = next(first, higher)
    expect(askedOtherwise).toEqual([])
    const reading = {
      ...{
        id: 'r1',
        of: 'post-12/rail-height',
        instrument: null,
        by: 'R. Quist',
        at: '2026-05-04T15:30Z',
        where: null,
      },
      ...{ photos: [], corrects: null, rechecks: null, together: null, version: 'v1' },
      uncertainty: { value: 0.01, unit: 'in' },
      answer: { kind: 'measured', value: 30 * 25_400_000 + 12_700_000, unit: 'in', resolution: null },
    } as const
    const verdict = (file: RunFile) =>
      judgeKnown(modelOf(file), [reading]).judgement.verdicts.find(({ requirement }) => requirement === reading.of)!
        .verdict
    expect([verdict(first), verdict(run)]).toEqual(['meets', 'fails'])
  })
})

test('an offset at a post that a later version added has a side, as at any other', () => {
  // The flared terminal stands 45 to 51 in off the line of the run, away from traffic.
  const straight = pinned({ first: { sheet: 'tangent-terminal-31' } })
  const { run } = next(straight, {})
  const required = modelOf(run)
  const of = required.requirements.find(({ topic, place }) => topic === 'flare-offset' && place.number === 1)!.id
  expect(of).not.toBe('post-1/flare-offset')
  const read = (said: object) => {
    const reading = { of, value: '48 in', by: 'R. Quist', at: '2026-05-04T15:30Z', version: 'v2', ...said }
    return readingsFromValue('readings', { format: 'lapwise-readings/3', run: run.name, readings: [reading] })
  }
  expect(read({})).toMatchObject({ ok: false, error: [{ place: 'readings[0].side' }] })
  const verdict = (side: string) => {
    const list = read({ side })
    if (!list.ok) throw new Error('the reading cannot be read', { cause: list.error })
    const { verdicts } = judgeKnown(required, list.value.readings).judgement
    return verdicts.find(({ requirement }) => requirement === of)!.verdict
  }
  expect([verdict('away'), verdict('toward'), verdict('not stated')]).toEqual(['meets', 'fails', 'unread'])
})

describe('a version that somebody hands in', () => {
  const { run } = next(first, { first: { sheet: 'tangent-terminal-31' } })
  const version = run.version!
  const placesOf = (changes: object, id = 'v2') =>
    versionProblems('run', { ...run, version: { ...version, ...changes } }, id, first).map(({ place }) => place)

  test('is taken when it says what became of every place', () => expect(placesOf({})).toEqual([]))
  test('has the id of its entry', () => expect(placesOf({}, 'v3')).toEqual(['version']))
  test('has the history of the one before', () => {
    expect(placesOf({ earlier: [] })).toEqual(['earlier'])
    expect(placesOf({ earlier: [{ id: 'v0', gone: [], askedOtherwise: [] }] })).toEqual(['earlier'])
  })
  test('leaves no place that is gone unsaid', () => {
    const [step] = version.earlier
    const places = placesOf({ earlier: [{ ...step!, gone: step!.gone.slice(1) }] })
    expect(places).toEqual(['earlier'])
  })
  test('gives the id of one place to no other', () => {
    const [one, other] = version.layout.posts.slice(-2)
    const posts = version.layout.posts.map((post) =>
      post === one ? { ...post, id: other!.id } : post === other ? { ...post, id: one!.id } : post,
    )
    expect(placesOf({ layout: { ...version.layout, posts } })).toEqual(['layout', 'layout'])
  })
})
