import { describe, expect, test } from 'vitest'
import { recordTextOf, sha256 } from '../../test/fixtures/record-text-of.ts'
import { demoJudged, demoRun, entryOf } from '../../test/fixtures/roadside.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { type SignOff, signOffOf } from '../formats/entry/sign-off.ts'
import { type JudgedRun, judgeKnown } from './judge-readings.ts'
import { pinned } from './pin-run.ts'
import { recordText } from './record-hash.ts'
import { photoHashes, photosNamed } from './record-photos.ts'
import { holdsWithoutPhoto, signedVersions } from './sign-off.ts'

const idsOf = ({ readings }: JudgedRun): readonly string[] => readings.map(({ id }) => id)

describe('holdsWithoutPhoto', () => {
  test('are none where every reading of a hold point has a photo', () => {
    expect(holdsWithoutPhoto(demoJudged(), new Set())).toEqual([])
  })

  test('are all of them where nothing was read', () => {
    const { required } = demoRun()
    const holds = required.requirements.filter(({ hold }) => hold)
    expect(holds.length).toBeGreaterThan(0)
    expect(holdsWithoutPhoto(judgeKnown(required, []), new Set())).toEqual(holds)
    expect(holdsWithoutPhoto(judgeKnown(required, []), new Set(holds.map(({ id }) => id)))).toEqual([])
  })

  test('do not ask for a photo of what was set aside as its sheet allows, and else they do', () => {
    const strict = demoRun().required
    const hold = strict.requirements.find((one) => one.hold)!
    const answer = { kind: 'does not apply', because: 'rock' } as const
    const aside = { ...demoRun().readings[0]!, of: hold.id, photos: [], answer }
    const idsOfHolds = (required: typeof strict) =>
      holdsWithoutPhoto(judgeKnown(required, [aside]), new Set()).map(({ id }) => id)
    expect(idsOfHolds(demoRun([hold.topic]).required)).not.toContain(hold.id)
    expect(idsOfHolds(strict)).toContain(hold.id)
  })
})

describe('a hold point that could not be seen', () => {
  const required = demoRun().required
  const hold = required.requirements.find((one) => one.hold)!
  const reading = { ...demoRun().readings[0]!, of: hold.id, photos: [] }
  const asked = (work: 'new' | 'standing', answer: Reading['answer']) =>
    holdsWithoutPhoto(
      judgeKnown({ ...required, run: { ...required.run, work } }, [{ ...reading, answer }]),
      new Set(),
    ).some(({ id }) => id === hold.id)

  test('keeps new work from being signed, and standing work, whose ground was closed, not', () => {
    expect(asked('new', { kind: 'cannot see' })).toBe(true)
    expect(asked('standing', { kind: 'cannot see' })).toBe(false)
  })

  test('and one that was seen needs its photo in either', () => {
    expect(asked('standing', { kind: 'confirmed', yes: true })).toBe(true)
  })

  test('stands among what is not proven', () => {
    const judged = judgeKnown({ ...required, run: { ...required.run, work: 'standing' } }, [
      { ...reading, answer: { kind: 'cannot see' } },
    ])
    const unproven = judged.judgement.unproven.find(({ requirement }) => requirement === hold.id)
    expect(unproven?.because.kind).toBe('could not be seen')
  })
})

describe('signedVersions', () => {
  const body = (changes: Partial<SignOff>): SignOff => ({
    name: 'J. Okafor',
    role: 'inspector',
    signature: { kind: 'drawn', strokes: [[[0, 0]]] },
    recordHash: hashOf(demoJudged()),
    hashRule: 2,
    version: 'v1',
    photos: [],
    readings: idsOf(demoJudged()),
    acceptance: { kind: 'not acceptable' },
    unproven: [],
    statement: null,
    ...changes,
  })

  const hashOf = (judged: JudgedRun): string => sha256(recordTextOf(judged))
  const none = { 1: null, 2: null }
  const hashesOf = (judged: JudgedRun) => ({ ...none, 2: hashOf(judged) })

  test('stand by the rule that each names, and by no other', () => {
    const judged = demoJudged()
    const hash = hashOf(judged)
    const [second, first] = [entryOf('s1', body({})), entryOf('s2', body({ hashRule: 1 }))]
    const current = (hashes: { readonly 1: string | null; readonly 2: string | null }) =>
      signedVersions([second, first], judged, hashes).map(({ isCurrent }) => isCurrent)
    expect(current({ 1: null, 2: hash })).toEqual([false, true])
    expect(current({ 1: hash, 2: null })).toEqual([true, false])
    expect(current({ 1: hash, 2: hash })).toEqual([true, true])
  })

  test('stay when something is read later, and are no longer current', () => {
    const signed = [entryOf('s1', body({}))]
    const before = demoJudged()
    expect(signedVersions(signed, before, hashesOf(before))).toMatchObject([
      { version: 1, isCurrent: true, readingsSince: 0 },
    ])
    const after = demoJudged([{ ...before.readings[0]!, id: 'later' }])
    const both = [...signed, entryOf('s2', body({ recordHash: hashOf(after), readings: idsOf(after) }))]
    expect(signedVersions(both, after, hashesOf(after))).toMatchObject([
      { version: 2, isCurrent: true, readingsSince: 0 },
      { version: 1, isCurrent: false, readingsSince: 1 },
    ])
  })

  test('name what the record took in, so that an earlier one can be made again', () => {
    const before = pinned(demoJudged(), sha256)
    const photos = photosNamed(before.log, [], [])
    const signed = body({
      version: before.run.version!.id,
      readings: idsOf(before),
      photos,
      recordHash: hashOf(before),
    })
    const later = [{ ...before.log[0]!, id: 'later', photos: ['f'.repeat(64)] }]
    const after = judgeKnown(before, [...later, ...before.log])
    expect(hashOf(after)).not.toBe(signed.recordHash)
    const log = after.log.filter(({ id }) => signed.readings!.includes(id))
    expect(after.run.version!.id).toBe(signed.version)
    expect(sha256(recordText({ ...after, log }, photoHashes(signed.photos!, new Map()), []))).toBe(signed.recordHash)
  })

  test('count also readings that arrived late and stand before what was signed', () => {
    const before = demoJudged()
    const { required, readings } = demoRun()
    const late = judgeKnown(required, [{ ...readings[0]!, id: 'late' }, ...readings])
    expect(signedVersions([entryOf('s1', body({}))], late, hashesOf(late))).toMatchObject([
      { isCurrent: false, readingsSince: 1 },
    ])
    expect(signedVersions([entryOf('s1', body({ readings: idsOf(late) }))], before, none)).toMatchObject([
      { readingsSince: null },
    ])
  })

  test('open in their first versions, a typed name as what it was, their hash by the first rule', () => {
    const first = { name: 'J. Okafor', role: 'inspector', recordHash: '0'.repeat(64), upTo: 'r7' }
    const rest = { acceptance: 'acceptable', unproven: [], statement: null }
    const line = [
      [
        [0, 0.3],
        [1, 0.3],
      ],
    ]
    expect(signOffOf(1, { ...first, ...rest, strokes: line })).toMatchObject({
      signature: { kind: 'typed' },
      readings: null,
    })
    expect(signOffOf(1, { ...first, ...rest, strokes: [[[0, 0]]] }).signature).toEqual({
      kind: 'drawn',
      strokes: [[[0, 0]]],
    })
    const third = { ...first, ...rest, acceptance: { kind: 'acceptable' }, signature: { kind: 'typed' }, readings: [] }
    expect(signOffOf(3, third)).toMatchObject({ hashRule: 1, version: null, photos: null, readings: [] })
    const second = { ...first, ...rest, signature: { kind: 'typed' }, readings: ['r7'] }
    for (const opened of [signOffOf(1, { ...first, ...rest, strokes: line }), signOffOf(2, second)])
      expect(opened).toMatchObject({ acceptance: { kind: 'acceptable' }, hashRule: 1, version: null, photos: null })
    const signed = [entryOf('s1', signOffOf(1, { ...first, ...rest, strokes: line }))]
    expect(signedVersions(signed, demoJudged(), { 1: '0'.repeat(64), 2: null })).toMatchObject([
      { isCurrent: true, readingsSince: null },
    ])
  })

  test('do not guess what was read since, when a reading signed is not at hand', () => {
    const judged = demoJudged()
    expect(signedVersions([entryOf('s1', body({ readings: ['elsewhere'] }))], judged, none)).toMatchObject([
      { readingsSince: null },
    ])
  })
})
