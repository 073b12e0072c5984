import { open, stat } from 'node:fs/promises'
import { err, ok, type Result } from '../core/result.ts'
import { theirs } from '../core/theirs.ts'
import type { Carried, CarriedPhoto } from '../formats/entry/carried.ts'
import { readDeviceFile } from '../formats/entry/device-file.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { photoEndings } from '../formats/entry/photo-endings.ts'
import { handoverVersion } from '../formats/handover/handover-shape.ts'
import { readHandover } from '../formats/handover/read-handover.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { BytesSource } from '../formats/zip/read-zip.ts'
import { pinsOf } from '../operations/pin-entry.ts'
import type { NamedPhoto } from '../operations/record-photos.ts'
import { landedSheets } from '../sheets/landed-sheets.ts'
import { sha256 } from '../store/sha256.ts'
import { BadInput } from './command.ts'
import { readText, shownName, soundValue } from './io.ts'

/** What a device recorded, by its file. */
export interface LoadedDevice {
  readonly entries: readonly Entry[]
  /** The photos, each under its SHA-256, which its bytes have to have. */
  photos(): Promise<readonly NamedPhoto[]>
}

/** The file that a device gave, all of it sound; what is recorded in it without a layout is pinned, as everywhere. */
export async function loadDevice(file: string): Promise<LoadedDevice> {
  const { left, ...carried } = await loadCarried(file)
  if (left.length > 0) throw new BadInput(left.flatMap(({ problems }) => problems))
  const entries = carried.entries.map(({ entry }) => entry)
  return {
    entries: [...entries, ...(await pinsOf(entries, landedSheets, sha256))],
    photos: async () => {
      const read = await Promise.all(carried.photos.map(readPhoto))
      const problems = read.flatMap((one) => (one.ok ? [] : one.error))
      if (problems.length > 0) throw new BadInput(problems)
      return read.flatMap((one) => (one.ok ? [one.value] : []))
    },
  }
}

/** What a file of a device brings, whichever format it is in, and what of it is not sound. */
export async function loadCarried(file: string): Promise<Carried> {
  const source = file === '-' ? null : await zipAt(file)
  if (source === null) return soundValue(readDeviceFile(shownName(file), await readText(file)))
  const read = soundValue(await readHandover(file, source, sha256))
  if (read.kind === 'handover') return read.carried
  const expected = { kind: 'handover of version', version: handoverVersion } as const
  throw new BadInput([{ file, place: 'manifest.json', expected, found: theirs(`${read.version}`) }])
}

/** The bytes of a ZIP file, read where they lie; null for any other file, and for none. */
async function zipAt(file: string): Promise<BytesSource | null> {
  const found = await stat(file).catch(() => null)
  if (found === null || !found.isFile()) return null
  const { size } = found
  const source: BytesSource = { size, read: (from, to) => bytesOf(file, from, Math.min(to, size)) }
  const first = await source.read(0, 2).catch(() => null)
  return first !== null && Buffer.from(first).toString('latin1') === 'PK' ? source : null
}

/** Opened for each piece: nobody says when the last one was read. */
async function bytesOf(file: string, from: number, to: number): Promise<Uint8Array> {
  const handle = await open(file)
  try {
    const bytes = Buffer.alloc(Math.max(0, to - from))
    const { bytesRead } = await handle.read(bytes, 0, bytes.length, from)
    return bytes.subarray(0, bytesRead)
  } finally {
    await handle.close()
  }
}

/** The photo, or what is wrong with it. */
export async function readPhoto({
  sha256: photo,
  type,
  file,
  place,
  content,
}: CarriedPhoto): Promise<Result<NamedPhoto, readonly InputProblem[]>> {
  const bytes = await content()
  if (!bytes.ok) return bytes
  const hash = sha256(bytes.value)
  const problem: InputProblem = {
    file,
    place,
    expected: { kind: 'bytes with hash', sha256: photo },
    found: theirs(hash),
  }
  if (hash !== photo) return err([problem])
  return ok({ photo, file: `${photo}.${photoEndings[type]}`, bytes: bytes.value })
}
