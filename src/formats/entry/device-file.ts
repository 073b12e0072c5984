import * as z from 'zod/mini'
import type { Result } from '../../core/result.ts'
import { reportContradictions } from '../contradiction.ts'
import { entryIdForm, isTooFarAhead } from '../entry-id.ts'
import type { InputProblem } from '../input-problem.ts'
import { form } from '../range/form.ts'
import { listOf, moment } from '../range/ranged.ts'
import { readJson } from '../read-json.ts'
import { type Entry, entryShape, sha256Text } from './entry-kinds.ts'

/** A photo's bytes, in base64, under their hash. */
const photoFile = z.strictObject({
  sha256: sha256Text,
  type: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  base64: z.base64(form('base64')),
})

/** Everything on one device as one file: what it recorded and what it fetched, in the order in which it shows it. */
export const deviceFileShape = z.strictObject({
  format: z.literal('lapwise-device/1'),
  device: z.string().check(z.minLength(1)),
  /** ISO 8601, by the device's clock. */
  writtenAt: moment,
  entries: listOf(entryShape, 'entries'),
  photos: listOf(photoFile, 'photosOfDevice'),
})

/** The shape, and that no id is so far ahead of the others of its run that nothing could follow it. */
const deviceFileSchema = deviceFileShape.check((context) => {
  const latest = new Map<string, string>()
  const ahead = context.value.entries
    .map(({ id, run }, i) => ({ id, run, i }))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .filter(({ id, run }) => {
      const isAhead = entryIdForm.test(run) && isTooFarAhead(id, [latest.get(run) ?? run])
      if (!isAhead) latest.set(run, id)
      return isAhead
    })
  reportContradictions(
    context,
    ahead.map(({ i }) => ({ path: ['entries', i, 'id'], expected: { kind: 'counted on id' } })),
  )
})

export interface DeviceFile extends Omit<z.output<typeof deviceFileShape>, 'entries'> {
  readonly entries: readonly Entry[]
}
export type PhotoInFile = DeviceFile['photos'][number]

/** What is in the file, its runs and readings not yet looked at; or every problem found in it. */
export const readDeviceFile = (file: string, text: string): Result<DeviceFile, readonly InputProblem[]> =>
  readJson(file, text, deviceFileSchema)

/**
 * The file as text, in pieces, so that photos need not all be in memory at once.
 *
 * @param photos  one after the other, each when it is needed
 */
export async function* writeDeviceFile(
  { device, writtenAt }: Pick<DeviceFile, 'device' | 'writtenAt'>,
  entries: readonly Entry[],
  photos: AsyncIterable<PhotoInFile>,
): AsyncGenerator<string> {
  const head = JSON.stringify({ format: 'lapwise-device/1', device, writtenAt }).slice(0, -1)
  yield `${head},\n"entries":[${entries.map((entry) => `\n${JSON.stringify(entry)}`).join(',')}],\n"photos":[`
  let between = '\n'
  for await (const photo of photos) {
    yield `${between}${JSON.stringify(photo)}`
    between = ',\n'
  }
  yield ']}\n'
}
