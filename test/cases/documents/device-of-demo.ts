import type { DeviceFile } from '../../../src/formats/entry/device-file.ts'
import type { Entry, EntryKind } from '../../../src/formats/entry/entry-kinds.ts'
import { schemaVersions } from '../../../src/formats/entry/sign-off.ts'
import { readingToValue } from '../../../src/formats/readings/readings-file.ts'
import { type JudgedRun, judgeKnown } from '../../../src/operations/judge-readings.ts'
import { pinned } from '../../../src/operations/pin-run.ts'
import { hashRule } from '../../../src/operations/record-hash.ts'
import { photosNamed } from '../../../src/operations/record-photos.ts'
import { recordTextOf, sha256 } from '../../fixtures/record-text-of.ts'

/** A hand's two strokes in a box 1 wide. */
const strokes: [number, number][][] = [
  Array.from({ length: 40 }, (_, i): [number, number] => [0.1 + i / 60, 0.2 + 0.12 * Math.sin(i / 3)]),
  [
    [0.2, 0.32],
    [0.85, 0.28],
  ],
]

/** Ids as a device makes them, counted on from that of the run: its readings, then all else. */
const idOf = (count: number): string => `0190a1b2-${count.toString(16).padStart(4, '0')}-7000-8000-000000000000`
const run = idOf(0)
const others = ['log-1', 'log-2', 'ticket', 'photo-1', 'photo-2', 'photo-3', 'sign-1', 'sign-2', 'marks-1', 'marks-2']

const entry = (name: string, kind: EntryKind, body: unknown, more: Partial<Entry> = {}): Entry => ({
  ...{
    id: name === 'run' ? run : idOf(0xf000 + others.indexOf(name)),
    run,
    kind,
    schemaVersion: schemaVersions[kind],
    author: 'T. Alvarez',
    device: 'phone',
  },
  ...{ capturedAt: '2016-05-10T02:20:00.000Z', supersedes: null, body },
  ...more,
})

/** The run with its readings under ids as a device makes them. */
export const onDevice = (judged: JudgedRun): JudgedRun =>
  judgeKnown(
    judged,
    judged.readings.map((reading) => ({ ...reading, id: idOf(Number(reading.id.slice(1))) })),
  )

/** An arrow on a photo, which was first drawn elsewhere. */
const arrow = (photo: string, to: readonly [number, number]) => ({
  ...{ photo, width: 64, height: 48 },
  strokes: [{ kind: 'arrow', points: [[0.25, 0.5], to] }] as const,
})

/**
 * What a phone would export of a run and its readings, with a log, a ticket, two signatures and `photos` of post 1, the
 * first of them drawn on.
 */
export function deviceOf(judged: JudgedRun, runFile: string, photos: readonly Uint8Array[]): DeviceFile {
  const { readings } = judged
  const entered = photos.map(sha256)
  const named = photosNamed(
    judged.log,
    judged.freeFindings,
    entered.map((sha256) => ({ body: { sha256 } })),
  )
  const drawn = entered.slice(0, 1).map((photo) => ({
    ...{ id: idOf(0xf000 + others.indexOf('marks-2')), ...arrow(photo, [0.75, 0.5]) },
    ...{ by: 'T. Alvarez', at: '2016-05-10T02:20:00.000Z' },
  }))
  const signed = {
    ...{ name: 'J. Okafor', role: 'Inspector', signature: { kind: 'drawn', strokes } },
    ...{ recordHash: sha256(recordTextOf(judged, entered, drawn)), hashRule },
    ...{ version: pinned(judged, sha256).run.version!.id, readings: readings.map(({ id }) => id), photos: named },
    ...(drawn.length === 0 ? {} : { photoStrokes: drawn.map(({ id }) => id) }),
    acceptance: judged.judgement.acceptance,
    ...{ unproven: judged.judgement.unproven.map(({ requirement }) => requirement), statement: 'Seen on site.' },
  }
  return {
    format: 'lapwise-device/1',
    device: 'phone',
    writtenAt: '2016-05-13T15:00:00.000Z',
    entries: [
      entry('run', 'run', JSON.parse(runFile)),
      ...readings.map((reading) =>
        entry('', 'reading', readingToValue(reading), {
          ...{ id: reading.id, author: reading.by, capturedAt: new Date(reading.at).toISOString() },
        }),
      ),
      entry('log-1', 'day-log', dayLog('Drove posts 1 to 3')),
      entry('log-2', 'day-log', dayLog('Drove posts 1 to 4, all to depth.\nHung panel 1.'), {
        supersedes: idOf(0xf000 + others.indexOf('log-1')),
      }),
      entry('ticket', 'locate-ticket', {
        ...{ number: '2016-0512-77', calledOn: '2016-05-02', validFrom: '2016-05-05', validThrough: '2016-05-20' },
        marks: [{ name: 'gas main', from: 'post-1', alongInches: 225 + 20 }],
      }),
      ...photos.map((bytes, i) =>
        entry(`photo-${i + 1}`, 'photo', {
          ...{ sha256: sha256(bytes), type: 'image/jpeg', bytes: bytes.length, width: 64, height: 48 },
          ...{ takenAt: '2016-05-09T08:25:00', of: 'post-1/stub-height', drawnOn: null, note: `Stub, view ${i + 1}` },
          position: { latitude: 40.12345, longitude: -105.54321, accuracy: 4.2, fixedAt: '2016-05-09T14:25:00.000Z' },
        }),
      ),
      ...entered.slice(0, 1).flatMap((photo) => [
        entry('marks-1', 'photo-strokes', arrow(photo, [0.25, 0.75])),
        entry('marks-2', 'photo-strokes', arrow(photo, [0.75, 0.5]), {
          supersedes: idOf(0xf000 + others.indexOf('marks-1')),
        }),
      ]),
      entry('sign-1', 'sign-off', signed, {
        ...{ author: 'J. Okafor', capturedAt: '2016-05-12T17:00:00.000Z' },
      }),
      entry('sign-2', 'sign-off', {
        ...signed,
        ...{ name: 'M. Reyes', role: 'Engineer', signature: { kind: 'typed' } },
        ...{ recordHash: '0'.repeat(64), statement: null },
      }),
    ],
    photos: photos.map((bytes) => ({
      ...{ sha256: sha256(bytes), type: 'image/jpeg', base64: Buffer.from(bytes).toString('base64') },
    })),
  }
}

const dayLog = (done: string) => ({
  ...{ day: '2016-05-09', done, crew: ['T. Alvarez', 'R. Quist'], panelsHung: ['panel-1'] },
  postsDriven: ['post-1', 'post-2', 'post-3', 'post-4'],
  ...{ openEnds: 'protected', openEndsNote: 'Drums at post 4' },
})
