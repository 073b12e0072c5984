import { err, ok } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import type { Carried, CarriedEntry, CarriedPhoto, LeftOut } from '../../formats/entry/carried.ts'
import { readDeviceFile, writeDeviceFile } from '../../formats/entry/device-file.ts'
import type { EntryKind } from '../../formats/entry/entry-kinds.ts'
import { photosTold } from '../../formats/entry/photos-told.ts'
import { readHandover } from '../../formats/handover/read-handover.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { readPicture, wholePicture } from '../../formats/picture/read-picture.ts'
import type { PictureFault } from '../../words/problems/file.ts'
import { problemsOfFileEntries } from './check-file-entries.ts'
import type { DeviceStore } from './device-store.ts'
import { lackedOf } from './device-transfer.ts'
import { holdFile } from './held-files.ts'
import { standingOf } from './merge-entries.ts'
import { d } from './messages.ts'
import { ownProject } from './own-project.ts'
import type { Answer, Imported, Weighed } from './run-source.ts'
import { sha256Of } from './sha256.ts'
import { fromStore } from './store-trouble.ts'

/** What a file from another device would change here; nothing is changed. */
export async function weighFile(store: DeviceStore, file: File): Answer<Weighed> {
  const carried = await readCarried(store, file)
  if (!carried.ok) return carried
  const sorted = await sortEntries(store, carried.value)
  if (!sorted.ok) return sorted
  const [here, photos] = await Promise.all([store.entries('run'), photosHere(store)])
  if (!here.ok) return fromStore(here.error)
  if (!photos.ok) return photos
  const { fresh, already, left } = sorted.value
  const runs = new Set(carried.value.entries.map(({ entry }) => entry.run))
  const versions = [...here.value, ...carried.value.entries.map(({ entry }) => entry)].filter(
    ({ kind }) => kind === 'run',
  )
  const isCarried = new Set([...photos.value, ...carried.value.photos.map(({ sha256 }) => sha256)])
  const freshPhotos = carried.value.photos.filter(({ sha256 }) => !photos.value.has(sha256)).length
  const counts: Partial<Record<EntryKind, number>> = {}
  for (const { entry } of fresh) counts[entry.kind] = (counts[entry.kind] ?? 0) + 1
  return ok({
    runs: [...runs].map((id) => {
      const body = versions.findLast(({ run }) => run === id)?.body as { readonly name?: unknown } | undefined
      const name = body === undefined ? null : String(body.name)
      return { id, name, isNew: !here.value.some(({ run }) => run === id) }
    }),
    ...{ fresh: counts, photos: freshPhotos, left },
    lacks: lackedOf(photosTold(carried.value.entries.map(({ entry }) => entry)), isCarried),
    already: already + carried.value.photos.length - freshPhotos,
  })
}

/**
 * Takes in what is whole in a file from another device. Bodies are kept as they came: written anew they would be others,
 * and the server would not know them again. What cannot be taken in stops nothing else, and is kept beside.
 */
export async function takeInFile(store: DeviceStore, file: File): Answer<Imported> {
  const carried = await readCarried(store, file)
  if (!carried.ok) return carried
  const sorted = await sortEntries(store, carried.value)
  if (!sorted.ok) return sorted
  const { fresh, already, left } = sorted.value
  const added = await store.add(fresh.map(({ entry }) => ({ ...entry, project: ownProject })))
  if (!added.ok) return fromStore(added.error)
  // Entries first: should there be no room for every photo, they are kept.
  const photos = await takeInPhotos(store, carried.value.photos)
  if (!photos.ok) return photos
  const allLeft = [...left, ...photos.value.left]
  if (allLeft.length > 0) {
    const rest = await restOf(carried.value, allLeft)
    const held = await holdFile(store, d.status.restOf(file.name), { kind: 'left out', count: allLeft.length }, rest)
    if (!held.ok) return held
  }
  return ok({
    entries: fresh.length,
    photos: photos.value.fresh,
    already: already + photos.value.already,
    left: allLeft,
  })
}

/** What the file brings. One of a newer program is held on this device, and refused with what it needs. */
async function readCarried(store: DeviceStore, file: File): Answer<Carried> {
  const refused = (problems: readonly InputProblem[]) =>
    err({ kind: 'refused', message: d.trouble.notDeviceFile(file.name), problems } as const)
  const bytesOf = async (from: number, to: number): Promise<Uint8Array> =>
    new Uint8Array(await file.slice(from, to).arrayBuffer())
  const isZip = new TextDecoder('latin1').decode(await bytesOf(0, 2)) === 'PK'
  if (!isZip) {
    const read = readDeviceFile(file.name, await file.text())
    return read.ok ? read : refused(read.error)
  }
  const source = { size: file.size, read: bytesOf }
  const read = await readHandover(file.name, source, (bytes) => sha256Of(bytes.slice().buffer))
  if (!read.ok) return refused(read.error)
  if (read.value.kind === 'handover') return ok(read.value.carried)
  const { version } = read.value
  const held = await holdFile(store, file.name, { kind: 'newer format', version }, file)
  return held.ok ? err({ kind: 'refused', message: d.trouble.newerFile(file.name, version), problems: [] }) : held
}

/** Entries of a file by what they are to this device. */
interface SortedEntries {
  readonly fresh: readonly CarriedEntry[]
  readonly already: number
  readonly left: readonly LeftOut[]
}

/** Which entries would be new here, which are here already, and which cannot be taken in. */
async function sortEntries(store: DeviceStore, carried: Carried): Answer<SortedEntries> {
  const known = await store.known(carried.entries.map(({ entry }) => entry))
  if (!known.ok) return fromStore(known.error)
  const once = [...new Map(carried.entries.map((one) => [one.entry.id, one])).values()]
  const standing = once.map((one) => ({ one, is: standingOf(known.value.get(one.entry.id), one.entry) }))
  const others = standing.flatMap(({ one, is }): readonly LeftOut[] => (is === 'another' ? [anotherOf(one)] : []))
  const fresh = standing.flatMap(({ one, is }) => (is === 'new' ? [one] : []))
  const problems = await problemsOfFileEntries(store, fresh)
  if (!problems.ok) return problems
  const unfit = fresh.flatMap(({ entry }, i): readonly LeftOut[] =>
    problems.value[i]!.length === 0 ? [] : [{ table: 'entries', raw: entry, problems: problems.value[i]! }],
  )
  return ok({
    fresh: fresh.filter((_, i) => problems.value[i]!.length === 0),
    already: standing.filter(({ is }) => is === 'already').length,
    left: [...carried.left, ...others, ...unfit],
  })
}

const anotherOf = ({ entry, file, at }: CarriedEntry): LeftOut => ({
  ...{ table: 'entries', raw: entry },
  problems: [{ file, place: at('id'), expected: { kind: 'same content under id' }, found: theirs(entry.id) }],
})

interface TakenPhotos {
  readonly fresh: number
  readonly already: number
  readonly left: readonly LeftOut[]
}

/** One after the other, each with its bytes in memory alone. */
async function takeInPhotos(store: DeviceStore, photos: readonly CarriedPhoto[]): Answer<TakenPhotos> {
  const known = await photosHere(store)
  if (!known.ok) return known
  const here = new Set(known.value)
  const left: LeftOut[] = []
  let fresh = 0
  let already = 0
  for (const photo of photos) {
    const { sha256, type } = photo
    if (here.has(sha256)) {
      already += 1
      continue
    }
    const read = await photo.content()
    if (!read.ok) {
      left.push({ table: 'photos', raw: { sha256, type }, problems: read.error })
      continue
    }
    // Of its own, where it is a piece of something larger.
    const content = read.value.slice()
    const problems = await problemsOfPhoto(photo, content)
    if (problems.length > 0) {
      left.push({ table: 'photos', raw: { sha256, type, base64: toBase64(content) }, problems })
      continue
    }
    const kept = await store.add([], { sha256, type, content: content.buffer })
    if (!kept.ok) return fromStore(kept.error)
    here.add(sha256)
    fresh += 1
  }
  return ok({ fresh, already, left })
}

/** Hashes of the photos whose bytes are here. */
async function photosHere(store: DeviceStore): Answer<ReadonlySet<string>> {
  const photos = await store.photos()
  if (!photos.ok) return fromStore(photos.error)
  return ok(new Set(photos.value.filter(({ state }) => state !== 'freed').map(({ sha256 }) => sha256)))
}

async function problemsOfPhoto(
  { sha256, type, file, place }: CarriedPhoto,
  content: Uint8Array<ArrayBuffer>,
): Promise<readonly InputProblem[]> {
  const found = await sha256Of(content.buffer)
  if (found !== sha256) return [{ file, place, expected: { kind: 'bytes with hash', sha256 }, found: theirs(found) }]
  const fault = await pictureFault(content, type)
  return fault === null ? [] : [{ file, place, expected: wholePicture, found: fault }]
}

/** Why bytes are no picture that can be read: by their structure, and then as the browser reads it. */
async function pictureFault(content: Uint8Array<ArrayBuffer>, type: string): Promise<PictureFault | null> {
  const picture = readPicture(content)
  if (!picture.ok) return picture.error
  try {
    const shown = await createImageBitmap(new Blob([content.slice(0, picture.value.length)], { type }))
    shown.close()
    return null
  } catch {
    return { kind: 'unreadable picture', reason: null }
  }
}

/** What was left out, as a file of a device: so it can be taken in once it fits, and read by hand. */
async function restOf({ device, writtenAt }: Carried, left: readonly LeftOut[]): Promise<Blob> {
  const raws = (table: LeftOut['table']) => left.filter((one) => one.table === table).map(({ raw }) => raw)
  async function* photos() {
    yield* raws('photos')
  }
  const pieces: Blob[] = []
  for await (const piece of writeDeviceFile({ device, writtenAt }, raws('entries'), photos()))
    pieces.push(new Blob([piece]))
  return new Blob(pieces)
}

function toBase64(bytes: Uint8Array): string {
  let characters = ''
  // More arguments at a time would overflow some browsers' stack.
  for (let start = 0; start < bytes.length; start += 0x8000)
    characters += String.fromCharCode(...bytes.subarray(start, start + 0x8000))
  return btoa(characters)
}
