import * as z from 'zod/mini'
import { ok, type Result } from '../../core/result.ts'
import { entryIdForm, isTooFarAhead } from '../entry-id.ts'
import { type InputProblem, written } from '../input-problem.ts'
import { form } from '../range/form.ts'
import { listOf, moment } from '../range/ranged.ts'
import { checkShape, readJson } from '../read-json.ts'
import type { At, Carried, CarriedEntry, LeftOut } from './carried.ts'
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

/** Which of the entries have ids so far ahead of the others of their run that nothing could follow them. */
function idsFarAhead(entries: readonly Pick<Entry, 'id' | 'run'>[]): readonly number[] {
  const latest = new Map<string, string>()
  return entries
    .map(({ id, run }, i) => ({ id, run, i }))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .filter(({ id, run }) => {
      const isAhead = entryIdForm.test(run) && isTooFarAhead(id, [latest.get(run) ?? run])
      if (!isAhead) latest.set(run, id)
      return isAhead
    })
    .map(({ i }) => i)
}

export interface DeviceFile extends Omit<z.output<typeof deviceFileShape>, 'entries'> {
  readonly entries: readonly Entry[]
}

/** The file as a whole, its entries and photos not looked at. */
const looseShape = z.extend(deviceFileShape, {
  entries: listOf(z.unknown(), 'entries'),
  photos: listOf(z.unknown(), 'photosOfDevice'),
})

/** What is sound in the file, each entry and photo by itself, and what is not; or that it is no such file. */
export function readDeviceFile(file: string, text: string): Result<Carried, readonly InputProblem[]> {
  const read = readJson(file, text, looseShape)
  if (!read.ok) return read
  const photos = read.value.photos.map((raw, i) => {
    const at = placeIn(`photos[${i}]`)
    return { raw, place: at('base64'), read: checkedAt(file, at, raw, photoFile) }
  })
  const { entries, left } = soundEntries(
    read.value.entries.map((raw, i) => ({ raw, file, at: placeIn(`entries[${i}]`) })),
  )
  const { device, writtenAt } = read.value
  return ok({
    ...{ device, writtenAt, entries },
    photos: photos.flatMap(({ place, read }) =>
      read.ok ? [{ ...read.value, file, place, content: async () => ok(fromBase64(read.value.base64)) }] : [],
    ),
    left: [
      ...left,
      ...photos.flatMap(({ raw, read }): readonly LeftOut[] =>
        read.ok ? [] : [{ table: 'photos', raw, problems: read.error }],
      ),
    ],
  })
}

/** Which of the values are entries, as they came; and what is wrong with the others. */
export function soundEntries(
  raws: readonly { readonly raw: unknown; readonly file: string; readonly at: At }[],
): Pick<Carried, 'entries' | 'left'> {
  const entries: CarriedEntry[] = []
  const left: LeftOut[] = []
  for (const { raw, file, at } of raws) {
    const read = checkedAt(file, at, raw, entryShape)
    if (read.ok) entries.push({ entry: raw as Entry, file, at })
    else left.push({ table: 'entries', raw, problems: read.error })
  }
  const ahead = new Set(idsFarAhead(entries.map(({ entry }) => entry)))
  for (const i of ahead) {
    const { entry, file, at } = entries[i]!
    const expected = { kind: 'counted on id' } as const
    left.push({
      table: 'entries',
      raw: entry,
      problems: [{ file, place: at('id'), expected, found: written(entry.id) }],
    })
  }
  return { entries: entries.filter((_, i) => !ahead.has(i)), left }
}

function checkedAt<T>(file: string, at: At, raw: unknown, shape: z.core.$ZodType<T>) {
  const read = checkShape(file, raw, shape)
  if (read.ok) return read
  return { ok: false as const, error: read.error.map((one) => ({ ...one, place: at(one.place) })) }
}

const placeIn =
  (place: string): At =>
  (inner = '') =>
    inner === '' ? place : `${place}.${inner}`

const fromBase64 = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (one) => one.charCodeAt(0))

/**
 * The file as text, in pieces, so that photos need not all be in memory at once.
 *
 * @param photos  one after the other, each when it is needed
 */
export async function* writeDeviceFile(
  { device, writtenAt }: Pick<DeviceFile, 'device' | 'writtenAt'>,
  entries: readonly unknown[],
  photos: AsyncIterable<unknown>,
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
