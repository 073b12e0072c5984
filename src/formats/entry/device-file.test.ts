import { describe, expect, test } from 'vitest'
import { brokenDeviceFiles, validDeviceFiles } from '../../../test/fixtures/device-files.ts'
import { english } from '../../words/english.ts'
import { printProblem } from '../input-problem.ts'
import { type DeviceFile, readDeviceFile, writeDeviceFile } from './device-file.ts'
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

const photo: DeviceFile['photos'][number] = { sha256: 'a'.repeat(64), type: 'image/png', base64: 'iVBORw0KGgo=' }

async function written(entries: readonly Entry[], photos: DeviceFile['photos']): Promise<string> {
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
    if (!read.ok) throw new Error('it is not read')
    expect(read.value).toMatchObject({ device: 'phone', writtenAt: '2026-05-04T14:00:00.000Z', left: [] })
    expect(read.value.entries.map(({ entry }) => entry)).toEqual(entries)
    for (const [i, photo] of read.value.photos.entries()) {
      expect(photo).toMatchObject({ sha256: photos[i]!.sha256, type: photos[i]!.type, place: `photos[${i}].base64` })
      expect(await photo.content()).toEqual({ ok: true, value: new Uint8Array(Buffer.from('iVBORw0KGgo=', 'base64')) })
    }
    expect(read.value.photos).toHaveLength(photos.length)
  })

  test('says where a body is not as its kind has to be', async () => {
    const wrong = { ...dayLog, body: { ...(dayLog.body as object), openEnds: 'perhaps' } }
    const read = readDeviceFile('device.json', await written([dayLog, wrong], []))
    expect(read).toMatchObject({
      ok: true,
      value: {
        entries: [{ entry: dayLog }],
        left: [
          { table: 'entries', raw: wrong, problems: [{ file: 'device.json', place: 'entries[1].body.openEnds' }] },
        ],
      },
    })
  })

  test('is refused when it is cut off', async () => {
    const text = await written([dayLog], [photo])
    expect(readDeviceFile('device.json', text.slice(0, -10)).ok).toBe(false)
  })

  test.each(validDeviceFiles.map((raw, i) => [i + 1, raw] as const))('is read: valid file %i', (_, raw) => {
    const read = readDeviceFile('device.json', JSON.stringify(raw))
    if (!read.ok) throw new Error('it is not read')
    const { entries, photos } = raw as DeviceFile
    expect(read.value.left).toEqual([])
    expect(read.value.entries.map(({ entry }) => entry)).toEqual(entries)
    expect(read.value.photos).toHaveLength(photos.length)
  })

  test.each(brokenDeviceFiles.map((file) => [file.title, file] as const))(
    'is refused, or lacks the part that is wrong, with %s',
    (_, { raw, problems }) => {
      const read = readDeviceFile('device.json', JSON.stringify(raw))
      const found = read.ok ? read.value.left.flatMap((one) => one.problems) : read.error
      const said = found.map((one) => printProblem(one, english(null)).replace('device.json: ', ''))
      expect(said).toEqual(problems)
    },
  )
})
