import type { Reading } from '../../core/measurement/reading.ts'
import { err, ok, type Result } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import { type PhotoInFile, readDeviceFile, writeDeviceFile } from '../../formats/entry/device-file.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { readPicture, wholePicture } from '../../formats/picture/read-picture.ts'
import type { RunFile } from '../../formats/run/run-file.ts'
import { isDayEntry } from '../../operations/day-problems.ts'
import type { PictureFault } from '../../words/problems/file.ts'
import { type FileDay, type FileReading, problemsOfFileEntries } from './check-file-entries.ts'
import { now } from './device.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore, FreshEntry, StoreTrouble } from './device-store.ts'
import { readAlone, sameReadingBody } from './kept-run.ts'
import { d } from './messages.ts'
import { runBody } from './new-run.ts'
import { ownProject } from './own-project.ts'
import type { Answer, Imported } from './run-source.ts'
import { sha256Of } from './sha256.ts'
import { fromStore } from './store-trouble.ts'

/** Everything on this device as one file. */
export async function exportDevice(store: DeviceStore, device: string): Answer<Blob> {
  const [entries, photos] = await Promise.all([store.everything(), store.photos()])
  if (!entries.ok) return fromStore(entries.error)
  if (!photos.ok) return fromStore(photos.error)
  const pieces: Blob[] = []
  try {
    const each = photosOf(
      store,
      photos.value.map(({ sha256 }) => sha256),
    )
    for await (const piece of writeDeviceFile({ device, writtenAt: now() }, entries.value.map(withoutPlace), each))
      pieces.push(new Blob([piece]))
  } catch (cause) {
    if (cause instanceof Unread) return cause.answer
    throw cause
  }
  return ok(new Blob(pieces, { type: 'application/json' }))
}

/** A photo that could not be read ends the writing: a file without it would not be everything. */
class Unread extends Error {
  constructor(readonly answer: ReturnType<typeof fromStore>) {
    super('a photo of this device cannot be read')
  }
}

async function* photosOf(store: DeviceStore, hashes: readonly string[]): AsyncGenerator<PhotoInFile> {
  for (const hash of hashes) {
    const photo = await store.photo(hash)
    if (!photo.ok) throw new Unread(fromStore(photo.error))
    if (photo.value === undefined) continue
    const { sha256, type, content } = photo.value
    yield { sha256, type: type as PhotoInFile['type'], base64: toBase64(new Uint8Array(content)) }
  }
}

/** Takes in all of the file, or nothing of it when anything in it is not as it has to be. */
export async function importDevice(store: DeviceStore, file: string, text: string): Answer<Imported> {
  const refused = (problems: readonly InputProblem[]) =>
    err({ kind: 'refused', message: d.trouble.notDeviceFile(file), problems } as const)
  const read = readDeviceFile(file, text)
  if (!read.ok) return refused(read.error)
  const problems: InputProblem[] = []
  const entries: FreshEntry[] = []
  const readings: FileReading[] = []
  const days: FileDay[] = []
  const units = await unitsOfRuns(store, read.value.entries)
  if (!units.ok) return fromStore(units.error)
  for (const [i, entry] of read.value.entries.entries()) {
    const body = bodyOf(file, entry, units.value.get(entry.run))
    if (body.ok) entries.push({ ...entry, body: body.value.body, project: ownProject })
    else problems.push(...body.error.map((one) => ({ ...one, file, place: `entries[${i}].body.${one.place}` })))
    if (body.ok && body.value.reading !== null) readings.push({ at: i, run: entry.run, reading: body.value.reading })
    if (isDayEntry(entry)) days.push({ at: i, entry })
  }
  const photos = []
  for (const [i, { sha256, type, base64 }] of read.value.photos.entries()) {
    const content = fromBase64(base64)
    const found = await sha256Of(content)
    photos.push({ sha256, type, content })
    const place = `photos[${i}].base64`
    if (found !== sha256)
      problems.push({ file, place, expected: { kind: 'bytes with hash', sha256 }, found: theirs(found) })
    const fault = await pictureFault(content, type)
    if (fault !== null) problems.push({ file, place, expected: wholePicture, found: fault })
  }
  if (problems.length > 0) return refused(problems)
  const unfit = await problemsOfFileEntries(store, file, entries, readings, days)
  if (!unfit.ok) return unfit
  if (unfit.value.length > 0) return refused(unfit.value)

  const known = await store.photos()
  if (!known.ok) return fromStore(known.error)
  const here = new Set(known.value.filter(({ state }) => state !== 'freed').map(({ sha256 }) => sha256))
  const added = await store.add(entries)
  if (!added.ok) return fromStore(added.error)
  // Readings first: should there be no room for every photo, they are kept.
  const fresh = photos.filter(({ sha256 }) => !here.has(sha256))
  for (const photo of fresh) {
    const kept = await store.add([], photo)
    if (!kept.ok) return fromStore(kept.error)
  }
  const stored = added.value.filter((outcome) => outcome === 'stored').length
  return ok({ entries: stored, photos: fresh.length, already: entries.length - stored + photos.length - fresh.length })
}

/** Why bytes are no picture that can be read: by their structure, and then as the browser reads it. */
async function pictureFault(content: ArrayBuffer, type: string): Promise<PictureFault | null> {
  const picture = readPicture(new Uint8Array(content))
  if (!picture.ok) return picture.error
  try {
    const shown = await createImageBitmap(new Blob([content.slice(0, picture.value.length)], { type }))
    shown.close()
    return null
  } catch {
    return { kind: 'unreadable picture', reason: null }
  }
}

/** Units of the runs that entries are of, from the file or from here; of a run that is in neither, nothing. */
async function unitsOfRuns(
  store: DeviceStore,
  entries: readonly Entry[],
): Promise<Result<ReadonlyMap<string, RunFile['units']>, StoreTrouble>> {
  const here = await store.entries('run')
  if (!here.ok) return here
  const runs = [...here.value, ...entries.filter(({ kind }) => kind === 'run')]
  return ok(
    new Map(
      runs.map(({ run, body }) => [run, (body as { readonly units?: unknown }).units === 'metric' ? 'metric' : 'us']),
    ),
  )
}

/**
 * The body as this page would write it, so that the server finds nothing else under the same id. A reading of a run that
 * is nowhere yet stays as it is: what a value without a unit means only its run can say.
 */
function bodyOf(
  file: string,
  { kind, schemaVersion, body }: Entry,
  units: RunFile['units'] | undefined,
): Result<{ readonly body: unknown; readonly reading: Reading | null }, readonly InputProblem[]> {
  if (kind === 'reading') {
    const read = readAlone(file, units ?? 'us', { schemaVersion, body })
    if (!read.ok) return read
    return ok({ body: units === undefined ? body : sameReadingBody(schemaVersion, read.value), reading: read.value })
  }
  if (kind !== 'run') return ok({ body, reading: null })
  const run = runBody(file, body)
  return run.ok ? ok({ body: run.value, reading: null }) : err(run.error.problems)
}

function toBase64(bytes: Uint8Array): string {
  let characters = ''
  // More arguments at a time would overflow some browsers' stack.
  for (let start = 0; start < bytes.length; start += 0x8000)
    characters += String.fromCharCode(...bytes.subarray(start, start + 0x8000))
  return btoa(characters)
}

const fromBase64 = (base64: string): ArrayBuffer => Uint8Array.from(atob(base64), (one) => one.charCodeAt(0)).buffer
