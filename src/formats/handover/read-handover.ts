import { err, ok, type Result } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import type { Carried, CarriedEntry, CarriedPhoto, LeftOut } from '../entry/carried.ts'
import { soundEntries } from '../entry/device-file.ts'
import { type InputProblem, written } from '../input-problem.ts'
import { checkShape, parseJson } from '../read-json.ts'
import { type BytesSource, listZip, readZipPart, type ZipPart } from '../zip/read-zip.ts'
import {
  entriesName,
  type HandoverManifest,
  handoverVersion,
  manifestName,
  manifestShape,
  photoName,
} from './handover-shape.ts'

/** Most bytes of a part once it is unpacked. Of entries: those of some hundred thousand readings. Our judgement. */
const most = { manifest: 4 * 1024 * 1024, entries: 128 * 1024 * 1024 }

/** What a handover carries; or that it was made by a newer program, and in which version of the format. */
export type ReadHandover =
  | { readonly kind: 'handover'; readonly manifest: HandoverManifest; readonly carried: Carried }
  | { readonly kind: 'newer'; readonly version: number }

type Answer<T> = Promise<Result<T, readonly InputProblem[]>>

/**
 * What is sound in a handover, each entry and photo by itself, and what is not. Photos are read when they are asked for.
 * Refused as a whole is what is no whole ZIP file of this format, or whose entries are not those that were written.
 *
 * @param sha256  hexadecimal hash
 */
export async function readHandover(
  file: string,
  source: BytesSource,
  sha256: (bytes: Uint8Array<ArrayBuffer>) => string | Promise<string>,
): Answer<ReadHandover> {
  const listed = await listZip(file, source)
  if (!listed.ok) return listed
  const parts = new Map(listed.value.map((part) => [part.name, part]))
  const text = async (name: string, most: number): Answer<Uint8Array> => {
    const part = parts.get(name)
    if (part !== undefined) return readZipPart(file, source, part, most)
    return err([{ file, place: name, expected: { kind: 'part of handover' }, found: null }])
  }
  const raw = await text(manifestName, most.manifest)
  if (!raw.ok) return raw
  const parsed = parseJson(`${file}/${manifestName}`, new TextDecoder().decode(raw.value))
  if (!parsed.ok) return parsed
  const version = versionIn(parsed.value)
  if (version > handoverVersion) return ok({ kind: 'newer', version })
  const manifest = checkShape(`${file}/${manifestName}`, parsed.value, manifestShape)
  if (!manifest.ok) return manifest
  const strangers = strangersAmong(file, listed.value, manifest.value)
  if (strangers.length > 0) return err(strangers)
  const lines = await text(entriesName, most.entries)
  if (!lines.ok) return lines
  const hash = await sha256(lines.value as Uint8Array<ArrayBuffer>)
  const { entriesSha256, device, writtenAt } = manifest.value
  if (hash !== entriesSha256)
    return err([
      { file, place: entriesName, expected: { kind: 'bytes with hash', sha256: entriesSha256 }, found: theirs(hash) },
    ])
  const { entries, left } = entriesIn(`${file}/${entriesName}`, new TextDecoder().decode(lines.value), manifest.value)
  const photos = photosIn(file, source, parts, manifest.value)
  const carried = { device, writtenAt, entries, photos: photos.photos, left: [...left, ...photos.left] }
  return ok({ kind: 'handover', manifest: manifest.value, carried })
}

/** Every version says its number in the same place; 0 for what says none. */
function versionIn(manifest: unknown): number {
  const { format } = (typeof manifest === 'object' && manifest !== null ? manifest : {}) as {
    readonly format?: unknown
  }
  return Number(/^lapwise-handover\/([1-9]\d{0,5})$/.exec(String(format))?.[1] ?? 0)
}

/** Parts that no handover has: also every name that leads out of the file's own folder. */
function strangersAmong(file: string, parts: readonly ZipPart[], { photos }: HandoverManifest): InputProblem[] {
  const known = new Set([manifestName, entriesName, ...photos.map(photoName)])
  return parts.flatMap(({ name }) =>
    known.has(name)
      ? []
      : [{ file, place: name, expected: { kind: 'part that the manifest names' } as const, found: theirs(name) }],
  )
}

function entriesIn(file: string, text: string, { runs }: HandoverManifest): Pick<Carried, 'entries' | 'left'> {
  const raws = []
  const left: LeftOut[] = []
  for (const [i, line] of text.split('\n').entries()) {
    if (line === '') continue
    const at = (inner = '') => (inner === '' ? `line ${i + 1}` : `line ${i + 1}, ${inner}`)
    const read = parseJson(file, line)
    if (read.ok) raws.push({ raw: read.value, file, at })
    else left.push({ table: 'entries', raw: line, problems: read.error.map((one) => ({ ...one, place: at() })) })
  }
  const sound = soundEntries(raws)
  const named = new Set(runs.map(({ id }) => id))
  const isOfThem = ({ entry }: CarriedEntry): boolean => named.has(entry.run)
  const others = sound.entries.flatMap((one): readonly LeftOut[] => {
    if (isOfThem(one)) return []
    const { file, entry, at } = one
    const problem = {
      file,
      place: at('run'),
      expected: { kind: 'run of manifest' },
      found: written(entry.run),
    } as const
    return [{ table: 'entries', raw: entry, problems: [problem] }]
  })
  return { entries: sound.entries.filter(isOfThem), left: [...left, ...sound.left, ...others] }
}

function photosIn(
  file: string,
  source: BytesSource,
  parts: ReadonlyMap<string, ZipPart>,
  { photos }: HandoverManifest,
): Pick<Carried, 'photos' | 'left'> {
  const carried: CarriedPhoto[] = []
  const left: LeftOut[] = []
  for (const photo of photos) {
    const { sha256, type, bytes } = photo
    const place = photoName(photo)
    const part = parts.get(place)
    if (part !== undefined)
      carried.push({ sha256, type, file, place, content: () => readZipPart(file, source, part, bytes) })
    else
      left.push({
        table: 'photos',
        raw: { sha256, type },
        problems: [{ file, place, expected: { kind: 'part of handover' }, found: null }],
      })
  }
  return { photos: carried, left }
}
