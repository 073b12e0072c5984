import { describe, expect, test } from 'vitest'
import { brokenDeviceFiles, validDeviceFiles } from '../../../test/fixtures/device-files.ts'
import { english } from '../../words/english.ts'
import { printProblem } from '../input-problem.ts'
import { type PhotoInFile, readDeviceFile, writeDeviceFile } from './device-file.ts'
import type { Entry } from './entry-kinds.ts'

const dayLog: Entry = {
  ...{
    id: '0190a1b2-0001-7000-8000-000000000001',
    run: 'run-1',
    kind: 'day-log',
    schemaVersion: 1,
    author: 'R. Quist',
    device: 'phone',
  },
  ...{ capturedAt: '2026-05-04T13:20:00.000Z', supersedes: null },
  body: {
    ...{ day: '2026-05-04', done: 'Posts 1 to 3', postsDriven: [1, 2, 3], panelsHung: [], crew: ['R. Quist'] },
    ...{ openEnds: 'none', openEndsNote: null },
  },
}

const photo: PhotoInFile = { sha256: 'a'.repeat(64), type: 'image/png', base64: 'iVBORw0KGgo=' }

async function written(entries: readonly Entry[], photos: readonly PhotoInFile[]): Promise<string> {
  async function* each() {
    yield* photos
  }
  const pieces: string[] = []
  const head = { device: 'phone', writtenAt: '2026-05-04T14:00:00.000Z' }
  for await (const piece of writeDeviceFile(head, entries, each())) pieces.push(piece)
  return pieces.join('')
}

describe('the file of a device', () => {
  test.each([
    ['nothing', [], []],
    ['one of each', [dayLog], [photo]],
    [
      'several',
      [dayLog, { ...dayLog, id: '0190a1b2-0002-7000-8000-000000000002' }],
      [photo, { ...photo, sha256: 'b'.repeat(64) }],
    ],
  ])('reads back as it was written: %s', async (_, entries, photos) => {
    const read = readDeviceFile('device.json', await written(entries, photos))
    expect(read).toEqual({
      ok: true,
      value: { format: 'lapwise-device/1', device: 'phone', writtenAt: '2026-05-04T14:00:00.000Z', entries, photos },
    })
  })

  test('says where a body is not as its kind has to be', async () => {
    const wrong = { ...dayLog, body: { ...(dayLog.body as object), openEnds: 'perhaps' } }
    const read = readDeviceFile('device.json', await written([dayLog, wrong], []))
    expect(read).toMatchObject({ ok: false, error: [{ file: 'device.json', place: 'entries[1].body.openEnds' }] })
  })

  test('is refused when it is cut off', async () => {
    const text = await written([dayLog], [photo])
    expect(readDeviceFile('device.json', text.slice(0, -10)).ok).toBe(false)
  })

  test.each(validDeviceFiles.map((raw, i) => [i + 1, raw] as const))('is read: valid file %i', (_, raw) => {
    expect(readDeviceFile('device.json', JSON.stringify(raw))).toEqual({ ok: true, value: raw })
  })

  test.each(brokenDeviceFiles.map((file) => [file.title, file] as const))(
    'is refused with %s',
    (_, { raw, problems }) => {
      const read = readDeviceFile('device.json', JSON.stringify(raw))
      const said = read.ok ? [] : read.error.map((one) => printProblem(one, english(null)).replace('device.json: ', ''))
      expect(said).toEqual(problems)
    },
  )
})
