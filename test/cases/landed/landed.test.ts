import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { HardwareSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { solveLayout } from '../../../src/core/layout/solve-layout.ts'
import { readDeviceFile } from '../../../src/formats/entry/device-file.ts'
import type { Entry } from '../../../src/formats/entry/entry-kinds.ts'
import { inLogOrder } from '../../../src/formats/entry/log-order.ts'
import { runEntries } from '../../../src/formats/entry/run-entries.ts'
import { entryIdAfter } from '../../../src/formats/entry-id.ts'
import { readHandover } from '../../../src/formats/handover/read-handover.ts'
import { entryReadings } from '../../../src/formats/readings/entry-readings.ts'
import { readingsFromValue } from '../../../src/formats/readings/readings-file.ts'
import { type RunFile, runFromValue } from '../../../src/formats/run/run-file.ts'
import { writeRun } from '../../../src/formats/run/write-run.ts'
import { deviceRun } from '../../../src/operations/device-run.ts'
import { type JudgedRun, judgeKnown, judgeReadings } from '../../../src/operations/judge-readings.ts'
import { type LayoutMeans, meansOfToday } from '../../../src/operations/means-of-today.ts'
import { pinsOf } from '../../../src/operations/pin-entry.ts'
import { firstRecordText } from '../../../src/operations/record-hash.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { reviseRun } from '../../../src/operations/revise-run.ts'
import { runHistory, versionsOf } from '../../../src/operations/run-history.ts'
import { signedVersions } from '../../../src/operations/sign-off.ts'
import { landedSheets } from '../../../src/sheets/landed-sheets.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'
import { recordTextOf, sha256 } from '../../fixtures/record-text-of.ts'

// The demo store as the program before versions wrote it, with a correction, a recheck and a signature, and what that
// program made of it. Neither is ever written anew.
const text = (name: string): string => readFileSync(new URL(`demo/${name}`, import.meta.url), 'utf8')
const device = readDeviceFile('device.json', text('device.json'))
if (!device.ok) throw new Error('the landed entries cannot be read', { cause: device.error })
const entries = device.value.entries.map(({ entry }) => entry)
const expected = JSON.parse(text('expected.json'))
const [first] = entries.filter(({ kind }) => kind === 'run') as [Entry]

async function migrated(): Promise<readonly Entry[]> {
  const pins = await pinsOf(entries, landedSheets, sha256)
  if (pins.length !== 1) throw new Error('the landed run cannot be pinned')
  return [...entries, ...pins]
}

function historyOf(held: readonly Entry[]) {
  const history = runHistory(first.id, held)
  if (!history?.ok) throw new Error('the run cannot be read')
  return history.value
}

function judged(run: RunFile, held: readonly Entry[], means?: LayoutMeans): JudgedRun {
  const required = requireRun('run', run, means)
  const bodies = inLogOrder(held.filter(({ kind }) => kind === 'reading'))
  const read = readingsFromValue('readings', entryReadings(run, bodies))
  if (!required.ok || !read.ok) throw new Error('the run cannot be judged')
  const history = historyOf(held)
  return judgeKnown(required.value, read.value.readings, versionsOf(history), history.firstAsked)
}

const compact = ({ judgement, askedEarlier }: JudgedRun) => ({
  acceptance: judgement.acceptance,
  verdicts: judgement.verdicts.map(({ requirement, verdict, because, readings }) => {
    const measured = because.kind === 'measured' ? because : { value: null, margin: null }
    return { requirement, verdict, value: measured.value, margin: measured.margin, readings }
  }),
  findings: judgement.findings.map(({ id, requirements, steps }) => ({
    id,
    requirements,
    steps: steps.map((step) => ('how' in step ? { ...step, how: english(null).say(step.how) } : step)),
  })),
  unproven: judgement.unproven.map(({ requirement }) => requirement),
  failures: [...judgement.failures.keys()],
  askedEarlier,
})
const { recordHash, ...then } = expected
const asThen = { ...then, askedEarlier: [] }

/** The shelf of a later day: every height a little higher, and an edition of everything. */
const laterShelf: ReadonlyMap<string, HardwareSheet> = new Map(
  shippedSheets.map((sheet) => [
    sheet.id,
    {
      ...sheet,
      version: '9.0.0',
      railHeight: { ...sheet.railHeight, low: 31, nominal: 31.5, high: 33 },
    } as HardwareSheet,
  ]),
)
/** A solver of a later day, to which another of the best runs is the best. */
const otherSolver: LayoutMeans['solve'] = (request) => {
  const solved = solveLayout(request)
  if (!solved.ok) return solved
  const runs = []
  for (const layout of solved.value.runs) if (runs.push(layout) === 12) break
  return { ok: true, value: { ...solved.value, runs: runs.reverse() } }
}

describe('the landed demo store', () => {
  test('is judged as before once it is migrated: every verdict, finding and acceptance', async () => {
    const held = await migrated()
    expect(compact(judged(historyOf(held).run, held))).toEqual(asThen)
  })

  test('stands under the signature that was given before it was migrated, and no longer once something is read', async () => {
    const held = await migrated()
    const { signatures } = runEntries(held)
    const whole = judged(historyOf(held).run, held)
    expect(sha256(firstRecordText(whole)!)).toBe(recordHash)
    const isCurrent = (run: JudgedRun): readonly boolean[] =>
      signedVersions(signatures, run, { 1: sha256(firstRecordText(run)!), 2: sha256(recordTextOf(run)) }).map(
        (one) => one.isCurrent,
      )
    expect(isCurrent(whole)).toEqual([true])
    expect(isCurrent(judgeKnown(whole, whole.log.slice(1), new Map(), whole.firstAsked))).toEqual([false])
  })

  test('is migrated to one and the same entry by whoever does it', async () => {
    const [one, other] = [await migrated(), await migrated()]
    expect(one.at(-1)).toEqual(other.at(-1))
    const { forks, inForce } = historyOf([...one, ...other.slice(-1)])
    expect([forks, inForce.id]).toEqual([[], one.at(-1)!.id])
    expect(inForce).toMatchObject({ supersedes: first.id, author: first.author, device: 'migration' })
  })

  test('does not move when a limit on the shelf, an edition and the solver have changed', async () => {
    const held = await migrated()
    const { run, asked } = historyOf(held)
    const means = { shelf: laterShelf, solve: otherSolver, keepsClear: true }
    expect(compact(judged(run, held, means))).toEqual(asThen)
    // As it was recorded it would have moved, with either: what this test would not see it could not show.
    const bare = judged(asked!, entries, { shelf: laterShelf, solve: solveLayout, keepsClear: true })
    expect(compact(bare).verdicts).not.toEqual(then.verdicts)
    const solved = requireRun('run', asked!, {
      shelf: new Map(landedSheets.map((sheet) => [sheet.id, sheet])),
      solve: otherSolver,
      keepsClear: true,
    })
    expect(solved.ok && solved.value.model.layout).not.toEqual(run.version!.layout)
  })
})

describe('a file of the device beside the run as it was recorded', () => {
  const asked = runFromValue('run.json', first.body)
  if (!asked.ok) throw new Error('the landed run cannot be read')
  const reading = (version: string | undefined): Entry => {
    const id = first.id.replace(/^(.{9})..../, '$10fff')
    const { author: by, capturedAt: at } = first
    const body = { id, of: 'post-1/stub-height', value: '3 in', by, at, corrects: null, version }
    return { ...first, id, kind: 'reading', schemaVersion: 3, supersedes: null, body: JSON.parse(JSON.stringify(body)) }
  }
  const judgedWith = (held: readonly Entry[]) => {
    const device = deviceRun('device.json', { entries: held }, asked.value)
    if (!device.ok) return device
    const { history, readings } = device.value
    const required = requireRun('run.json', history.run)
    return required.ok
      ? judgeReadings('device.json', required.value, readings, { history, means: meansOfToday })
      : required
  }

  test('is judged by the version that pins it, which its readings may name', async () => {
    const held = await migrated()
    const whole = judgedWith(held)
    expect(whole.ok && compact(whole.value)).toEqual(asThen)
    const pin = held.at(-1)!.id
    for (const version of [pin, undefined]) {
      const more = judgedWith([...held, reading(version)])
      expect(more.ok && more.value.readings.map(({ id }) => id)).toContain(reading(version).id)
      expect(more.ok && more.value.run.version!.id).toBe(pin)
    }
    const unknown = judgedWith([...held, reading('another version')])
    expect(unknown.ok ? [] : unknown.error).toMatchObject([{ expected: { kind: 'version of run' } }])
  })

  test('is refused where a day log in it names a post that the run never had', async () => {
    const held = await migrated()
    const log = { day: '2026-05-04', done: 'Posts', crew: ['R. Quist'], openEnds: 'none', openEndsNote: null }
    const logged = (postsDriven: readonly string[]): Entry => {
      const body = { ...log, postsDriven, panelsHung: [], version: held.at(-1)!.id }
      return { ...reading(undefined), kind: 'day-log', schemaVersion: 2, body }
    }
    expect(judgedWith([...held, logged(['post-1', 'post-2'])])).toMatchObject({ ok: true })
    expect(judgedWith([...held, logged(['post-1', 'post-999'])])).toMatchObject({
      ok: false,
      error: [{ file: 'device.json', place: `entries[${held.length}].body.postsDriven[1]` }],
    })
  })

  test('is refused beside a version that is no longer in force', async () => {
    const held = await migrated()
    const pin = held.at(-1)!
    const before = runFromValue('run', pin.body)
    if (!before.ok) throw new Error('the landed run cannot be read')
    const id = entryIdAfter([pin.id], new Uint8Array(10))
    const next = reviseRun({ before: 'before', asked: 'asked' }, before.value, asked.value, id)
    if (!next.ok) throw new Error('there is no next version')
    const entry = { ...pin, id, supersedes: pin.id, body: JSON.parse(writeRun(next.value.run)) }
    const beside = (run: RunFile) => deviceRun('device.json', { entries: [...held, entry] }, run)
    for (const run of [asked.value, before.value]) {
      const refused = beside(run)
      expect(refused.ok ? [] : refused.error).toMatchObject([{ expected: { kind: 'version in force', version: id } }])
    }
    expect(beside(next.value.run)).toMatchObject({ ok: true })
  })
})

// Written by the first version of the format, of the same entries and one photo; never written anew.
describe('the first handover', () => {
  const bytes = readFileSync(new URL('handover-1/handover.zip', import.meta.url))
  const source = { size: bytes.length, read: async (from: number, to: number) => bytes.subarray(from, to) }

  test('is read whole: every entry as it was, and the photo', async () => {
    const read = await readHandover('handover.zip', source, sha256)
    if (!read.ok || read.value.kind !== 'handover') throw new Error('it is not read')
    const { carried, manifest } = read.value
    expect(carried.left).toEqual([])
    expect(manifest.runs).toEqual([{ id: first.id, name: 'Alder Creek culvert, right side' }])
    const brought = carried.entries.map(({ entry }) => entry)
    expect(brought.slice(0, -1)).toEqual(entries)
    expect(runEntries(brought).photos.map(({ body }) => body.sha256)).toEqual(carried.photos.map((one) => one.sha256))
    const photo = await carried.photos[0]!.content()
    expect(photo.ok && sha256(photo.value)).toBe(carried.photos[0]!.sha256)
  })
})
