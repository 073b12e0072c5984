import { describe, expect, test } from 'vitest'
import { inches, sampleInput, sampleReading, sampleRun, soundReadings } from '../../test/fixtures/record-inputs.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { type RecordContents, type RecordSide, recordContents } from './record-contents.ts'
import type { RecordInput } from './record-input.ts'
import { findingsSheet } from './xlsx/reading-sheets.ts'

const printing = { printedAt: '2016-05-13T09:00:00-06:00', author: 'M. Reyes', hash: 'abc' }
const contentsOf = (input: RecordInput, assignments: RecordSide['assignments'] = []): RecordContents =>
  recordContents(input, printing, {
    signed: [],
    photos: [],
    photoStrokes: [],
    ...{ photoHashes: {}, photosHash: '' },
    photosHere: new Set(),
    versions: [],
    assignments,
  })
const linesOf = ({ holdPoints, requirements }: RecordContents) => [...holdPoints, ...requirements]

/** Everywhere that the record shows a reading. */
const shownReadings = (contents: RecordContents): string[] =>
  [
    ...linesOf(contents).flatMap(({ readings }) => readings),
    ...contents.measured,
    ...contents.replaced.map(({ reading }) => reading),
  ].map(({ id }) => id)

describe('recordContents', () => {
  test('says how many verdicts rest on limits from memory, also where every requirement is read and decided', () => {
    const input = sampleInput(soundReadings)
    const contents = contentsOf(input)
    const count = input.requirements.filter(({ confirmation }) => confirmation === 'from memory').length
    expect(contents.unproven).toEqual([])
    expect(count).toBeGreaterThan(1)
    expect(contents.onMemory).toContain(`${count} verdicts rest on limits from memory, which nobody has confirmed`)
    const confirmed = input.requirements.map((one) => ({ ...one, confirmation: 'published' as const }))
    expect(contentsOf({ ...input, requirements: confirmed }).onMemory).toBeNull()
    // What nobody read is not decided, and is told as unproven.
    const looked = input.requirements.find(
      ({ confirmation, look }) => confirmation === 'from memory' && look.kind !== 'record',
    )!
    const fewer = sampleInput((all) => soundReadings(all).filter(({ of }) => of !== looked.id))
    expect(contentsOf(fewer).onMemory).toContain(`${count - 1} verdicts`)
  })

  const sound = sampleInput(soundReadings)

  test('holds every requirement once, hold points first, numbered through', () => {
    const contents = contentsOf(sound)
    expect(linesOf(contents).map(({ id }) => id)).toEqual(sound.requirements.map(({ id }) => id))
    expect(linesOf(contents).map(({ number }) => number)).toEqual(sound.requirements.map((_, i) => i + 1))
    expect(contents.holdPoints.length).toBe(sound.requirements.filter(({ hold }) => hold).length)
    expect(contents.holdPoints.length).toBeGreaterThan(0)
    expect(contents.acceptance.kind).toBe('acceptable')
  })

  test('holds every reading once: at its requirement, behind a computed value, or among those that no longer count', () => {
    const input = sampleInput((requirements) => [
      ...soundReadings(requirements).filter(({ of }) => of !== 'space-2/spacing'),
      sampleReading('a2', 'post-2/along', inches(75)),
      sampleReading('a3', 'post-3/along', inches(150)),
      sampleReading('wrong', 'post-4/rail-height', inches(20), { at: '2016-05-12T09:00:00-06:00' }),
      sampleReading('right', 'post-4/rail-height', inches(28.75), { corrects: 'wrong' }),
    ])
    const contents = contentsOf(input)
    expect([...shownReadings(contents)].sort()).toEqual(input.readings.map(({ id }) => id).sort())
    expect(contents.measured.map(({ id }) => id)).toEqual(['a2', 'a3'])
    const spacing = linesOf(contents).find(({ id }) => id === 'space-2/spacing')!
    expect(spacing.derived).toEqual({ value: '75 in', from: 'computed from distance along the rail at posts 2 and 3' })
    expect(spacing.verdict).toBe('meets')
  })

  test('shows a corrected reading with the one that counts instead', () => {
    const input = sampleInput((requirements) => [
      ...soundReadings(requirements).filter(({ of }) => of !== 'post-4/rail-height'),
      sampleReading('wrong', 'post-4/rail-height', inches(20)),
      sampleReading('right', 'post-4/rail-height', inches(28.75), { corrects: 'wrong' }),
    ])
    const contents = contentsOf(input)
    expect(contents.replaced).toMatchObject([{ reading: { id: 'wrong', answer: '20 in' }, by: 'right' }])
    const line = linesOf(contents).find(({ id }) => id === 'post-4/rail-height')!
    expect(line.readings.map(({ id }) => id)).toEqual(['right'])
    expect(line.verdict).toBe('meets')
  })

  test('proves nothing without readings: each requirement that needs one is listed with the reason', () => {
    const input = sampleInput(() => [])
    const contents = contentsOf(input)
    expect(contents.acceptance.kind).toBe('not yet known')
    const unread = input.judgement.verdicts.filter(({ verdict }) => verdict === 'unread').map((one) => one.requirement)
    expect(contents.unproven.flatMap(({ requirements }) => requirements).sort()).toEqual([...unread].sort())
    expect(unread.length).toBe(input.requirements.filter(({ look }) => look.kind !== 'record').length)
    expect(contents.facts).toContainEqual({ id: 'readings', name: 'Readings', value: 'none' })
    // what the run file decides: the tests of the system and of both ends, and that both ends are crashworthy or need not be
    expect(contents.counts.find(({ verdict }) => verdict === 'meets')!.count).toBe(5)
  })

  test('a finding says in record and workbook who sees to it and by when, as it was said last', () => {
    const low = (requirements: RecordInput['requirements']): readonly Reading[] =>
      soundReadings(requirements).map((one) => (one.of === 'post-8/rail-height' ? { ...one, answer: inches(26) } : one))
    const input = sampleInput(low)
    const said = (owner: string | null, due: string | null) => ({ body: { finding: 'post-8/rail-height', owner, due } })
    const assignments = [said('T. Alvarez', null), said('R. Quist', '2016-06-01')]
    const { columns, rows } = findingsSheet(input, assignments)
    const inWorkbook = rows[0]![columns.findIndex(({ header }) => header === 'Who sees to it')]
    const inRecord = contentsOf(input, assignments).findings[0]!.assigned
    expect([inRecord, inWorkbook]).toEqual([
      'seen to by R. Quist, due 2016-06-01',
      'seen to by R. Quist, due 2016-06-01',
    ])
    expect(contentsOf(input, [...assignments, said(null, null)]).findings[0]!.assigned).toBeNull()
    expect(findingsSheet(input, []).rows[0]).toContain(null)
  })

  // The sheet of the 27 3/4 in system states 27 3/4 in and 30 in as lowest and highest.
  test('shows a failed limit in its published unit, its finding and its remedy', () => {
    const low = (requirements: RecordInput['requirements']): readonly Reading[] =>
      soundReadings(requirements).map((one) => (one.of === 'post-8/rail-height' ? { ...one, answer: inches(26) } : one))
    const contents = contentsOf(sampleInput(low))
    const line = linesOf(contents).find(({ id }) => id === 'post-8/rail-height')!
    expect(line.limit).toBe('27 3/4 in to 30 in')
    expect(line.readings.map(({ answer }) => answer)).toEqual(['26 in'])
    expect(line.reason).toContain('1 3/4 in outside the limit')
    expect(contents.findings.map(({ requirements }) => requirements)).toEqual([['post-8/rail-height']])
    expect(contents.findings[0]!.remedy).toMatch(/post 8/)
    expect(contents.acceptance).toEqual({
      kind: 'not acceptable',
      text: 'not acceptable',
      means: '1 requirement not met: see the findings.',
    })
  })

  test('marks every limit that nobody confirmed and lists it', () => {
    const contents = contentsOf(sound)
    const remembered = sound.requirements.filter(({ confirmation }) => confirmation === 'from memory')
    expect(remembered.length).toBeGreaterThan(0)
    expect(contents.unconfirmed.flatMap(({ requirements }) => requirements).sort()).toEqual(
      remembered.map(({ id }) => id).sort(),
    )
    for (const line of linesOf(contents)) expect(contents.sources[line.source - 1]!.number).toBe(line.source)
  })

  test('shows who rechecked which finding and what holds now', () => {
    const input = sampleInput((requirements) => [
      ...soundReadings(requirements),
      sampleReading('again', 'post-8/rail-height', inches(28.75), { rechecks: 'post-8/rail-height' }),
    ])
    expect(contentsOf(input).rechecks).toMatchObject([
      { finding: 'post-8/rail-height', reading: { id: 'again', by: 'J. Okafor' }, verdict: 'meets' },
    ])
  })

  test('shows apart what a reading says of another finding or place, and that it counts for nothing', () => {
    const input = sampleInput((requirements) => [
      ...soundReadings(requirements).filter(({ of }) => of !== 'post-8/rail-height'),
      sampleReading('low', 'post-8/rail-height', inches(26)),
      sampleReading('astray', 'post-8/rail-height', inches(28.75), { rechecks: 'splice-2/lap' }),
      sampleReading('elsewhere', 'post-9/rail-height', inches(28.75), { corrects: 'low' }),
    ])
    const contents = contentsOf(input)
    expect(contents.acceptance.kind).toBe('not acceptable')
    expect(contents.rechecks).toEqual([])
    expect(contents.withoutEffect.map(({ reading, what }) => [reading.id, what])).toEqual([
      ['astray', 'rechecks splice-2/lap, without effect: this reading cannot prove that finding put right'],
      ['elsewhere', 'corrects low, without effect: that is no earlier reading of the same thing'],
    ])
    const elsewhere = linesOf(contents).find(({ id }) => id === 'post-9/rail-height')!.readings[0]!
    expect(elsewhere).toMatchObject({ id: 'elsewhere', corrects: null, rechecks: null })
    // What failed is taken again by the next, not replaced by the reading of another place.
    expect(contents.replaced.find(({ reading }) => reading.id === 'low')!.by).toBe('astray')
    expect([...new Set(shownReadings(contents))].sort()).toEqual(input.readings.map(({ id }) => id).sort())
  })

  test('says in words why a run is not acceptable whose finding was only read again', () => {
    const low = sampleReading('low', 'post-8/rail-height', inches(26))
    const again = sampleReading('again', 'post-8/rail-height', inches(28.75))
    const log = (requirements: RecordInput['requirements']) =>
      soundReadings(requirements).flatMap((one) => (one.of === 'post-8/rail-height' ? [low, again] : [one]))
    const contents = contentsOf(sampleInput(log))
    expect(contents.acceptance).toEqual({
      kind: 'not acceptable',
      text: 'not acceptable',
      means: '1 requirement failed, reread but not as recheck of the finding.',
    })
    expect(contents.unproven.map(({ requirements }) => requirements)).toEqual([['post-8/rail-height']])
  })

  describe('of what is set aside', () => {
    const because = 'the block was left out by order of the engineer'
    const asideBy = (names: Readonly<Record<string, string>>) => (requirements: RecordInput['requirements']) =>
      soundReadings(requirements).map((one) =>
        names[one.of] === undefined
          ? one
          : { ...one, by: names[one.of]!, answer: { kind: 'does not apply', because } as const },
      )

    test('says on its first page who did it and why, and counts it as not proven', () => {
      const names = { 'post-8/block': 'J. Okafor', 'post-9/block': 'J. Okafor', 'post-11/block': 'M. Reyes' }
      const contents = contentsOf(sampleInput(asideBy(names), sampleRun(), ['block']))
      expect(contents.acceptance).toEqual({
        kind: 'acceptable except',
        text: 'acceptable except for 3 set aside by J. Okafor, M. Reyes',
        means: expect.stringMatching(/^Every other requirement meets its limit[.]/),
      })
      expect(contents.setAside).toMatchObject([
        { places: 'posts 8 and 9', by: 'J. Okafor', because, requirements: ['post-8/block', 'post-9/block'] },
        { places: 'post 11', by: 'M. Reyes', because, requirements: ['post-11/block'] },
      ])
      const line = linesOf(contents).find(({ id }) => id === 'post-8/block')!
      expect([line.verdict, line.reason, line.readings[0]!.answer]).toEqual([
        'does not apply',
        'set aside by J. Okafor',
        `does not apply: ${because}`,
      ])
      expect(contents.unproven.flatMap(({ requirements }) => requirements).sort()).toEqual(Object.keys(names).sort())
    })

    test('has nothing of it where the sheet does not allow it, and says so', () => {
      const contents = contentsOf(sampleInput(asideBy({ 'post-8/block': 'J. Okafor', 'first/criteria': 'J. Okafor' })))
      expect(contents.acceptance.kind).toBe('not yet known')
      expect(contents.setAside).toEqual([])
      expect(linesOf(contents).find(({ id }) => id === 'post-8/block')).toMatchObject({
        verdict: 'unread',
        reason: `set aside by J. Okafor, which the sheet does not allow: ${because}`,
      })
      expect(contents.withoutEffect.map(({ what }) => what)).toEqual([
        'sets post-8/block aside, without effect: that may not be set aside',
      ])
    })

    test('shows a reading that sets aside what the run file decides only with what counts for nothing', () => {
      const contents = contentsOf(
        sampleInput((requirements) => [
          ...soundReadings(requirements),
          sampleReading('astray', 'first/criteria', { kind: 'does not apply', because }),
        ]),
      )
      expect(contents.acceptance.kind).toBe('acceptable')
      expect(contents.withoutEffect.map(({ reading }) => reading.id)).toEqual(['astray'])
      expect([...contents.measured, ...contents.replaced.map(({ reading }) => reading)]).toEqual([])
    })
  })

  test('names the sheets with version and criteria, and the decision rule of the run', () => {
    const contents = contentsOf(sampleInput(soundReadings, sampleRun({ decisionRule: { kind: 'simple' } })))
    expect(contents.sheets.map(({ id }) => id)).toEqual([
      'flared-terminal-27-3-4',
      'w-beam-post-splice-27-3-4',
      'trailing-anchor-27-3-4',
    ])
    for (const sheet of contents.sheets)
      expect(sheet).toMatchObject({
        version: shippedSheets.find(({ id }) => id === sheet.id)!.version,
        notice: expect.stringContaining('Example'),
      })
    expect(contents.sheets[0]!.criteria).toContain('NCHRP 350, test level 3')
    expect(contents.decisionRule).toMatch(/^Simple acceptance/)
  })
})
