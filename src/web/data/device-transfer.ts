import { ok } from '../../core/result.ts'
import type { Entry, EntryOf, PhotoBody } from '../../formats/entry/entry-kinds.ts'
import { photosTold } from '../../formats/entry/photos-told.ts'
import type { HandoverPhoto } from '../../formats/handover/handover-shape.ts'
import { writeHandover } from '../../formats/handover/write-handover.ts'
import { now } from './device.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore } from './device-store.ts'
import type { Answer, HandoverFile, LackedPhoto } from './run-source.ts'
import { sha256Of } from './sha256.ts'
import { fromStore } from './store-trouble.ts'

/**
 * A run with everything that is recorded at it as one file; all runs of this device for null. One photo at a time is in
 * memory: the pieces are blobs of their own, which the browser may keep on the disk.
 * @param fetchPhoto  the bytes of a photo from the server; null when it has none
 */
export async function handOver(
  store: DeviceStore,
  device: string,
  run: string | null,
  fetchPhoto: FetchPhoto,
): Answer<HandoverFile> {
  const [all, kept] = await Promise.all([store.everything(), store.photos()])
  if (!all.ok) return fromStore(all.error)
  if (!kept.ok) return fromStore(kept.error)
  const entries = all.value.filter((entry) => run === null || entry.run === run).map(withoutPlace)
  const here = new Map(kept.value.flatMap((one) => (one.state === 'freed' ? [] : [[one.sha256, one.bytes] as const])))
  const told = photosTold(entries)
  const fetched = await fetchedOf(
    told.filter(({ body }) => !here.has(body.sha256)),
    fetchPhoto,
  )
  const photos = told.flatMap(({ body: { sha256, type } }): readonly HandoverPhoto[] => {
    const bytes = here.get(sha256) ?? fetched.get(sha256)?.size
    return bytes === undefined ? [] : [{ sha256, type, bytes }]
  })
  const carried = new Set(photos.map(({ sha256 }) => sha256))
  const lacks = lackedOf(told, carried)
  const content = async ({ sha256 }: HandoverPhoto): Promise<Uint8Array> => {
    const blob = fetched.get(sha256)
    if (blob !== undefined) return new Uint8Array(await blob.arrayBuffer())
    const photo = await store.photo(sha256)
    if (!photo.ok) throw new Unread(fromStore(photo.error))
    if (photo.value === undefined) throw new Error(`the bytes of photo ${sha256} are not on this device`)
    return new Uint8Array(photo.value.content)
  }
  const elsewhere = lacks.map(({ sha256 }) => sha256)
  const input = { device, writtenAt: now(), runs: runsIn(entries), entries, photos, elsewhere }
  const pieces: Blob[] = []
  try {
    for await (const piece of writeHandover(input, content, (bytes) => sha256Of(bytes.buffer)))
      pieces.push(new Blob([piece as Uint8Array<ArrayBuffer>]))
  } catch (cause) {
    if (cause instanceof Unread) return cause.answer
    throw cause
  }
  return ok({ content: new Blob(pieces, { type: 'application/zip' }), lacks })
}

export type FetchPhoto = (sha256: string) => Answer<Blob | null>

/** Those of `told` whose pictures are not among `carried`. */
export const lackedOf = (
  told: readonly EntryOf<PhotoBody>[],
  carried: { has(sha256: string): boolean },
): readonly LackedPhoto[] =>
  told.flatMap(({ author, capturedAt, body: { sha256 } }) =>
    carried.has(sha256) ? [] : [{ sha256, author, capturedAt }],
  )

/** What the server gives of these photos, as far as it is what was told of; nothing more once it cannot be reached. */
async function fetchedOf(
  wanted: readonly EntryOf<PhotoBody>[],
  fetchPhoto: FetchPhoto,
): Promise<ReadonlyMap<string, Blob>> {
  const fetched = new Map<string, Blob>()
  for (const {
    body: { sha256 },
  } of wanted) {
    const answer = await fetchPhoto(sha256)
    if (!answer.ok && answer.error.kind !== 'fault') break
    const blob = answer.ok ? answer.value : null
    if (blob !== null && (await sha256Of(await blob.arrayBuffer())) === sha256) fetched.set(sha256, blob)
  }
  return fetched
}

/** A photo that could not be read ends the writing: a file without it would not be everything. */
class Unread extends Error {
  constructor(readonly answer: ReturnType<typeof fromStore>) {
    super('a photo of this device cannot be read')
  }
}

/** The runs of these entries, each by the name that it had last. */
function runsIn(entries: readonly Entry[]): { readonly id: string; readonly name: string }[] {
  const names = new Map(entries.map(({ run }) => [run, run]))
  for (const { kind, run, body } of entries)
    if (kind === 'run') names.set(run, String((body as { readonly name?: unknown } | null)?.name ?? run))
  return [...names].map(([id, name]) => ({ id, name }))
}
