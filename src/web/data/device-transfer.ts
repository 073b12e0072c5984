import { ok } from '../../core/result.ts'
import type { Entry, PhotoBody } from '../../formats/entry/entry-kinds.ts'
import type { HandoverPhoto } from '../../formats/handover/handover-shape.ts'
import { writeHandover } from '../../formats/handover/write-handover.ts'
import { now } from './device.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore } from './device-store.ts'
import type { Answer, HandoverFile } from './run-source.ts'
import { sha256Of } from './sha256.ts'
import { fromStore } from './store-trouble.ts'

/**
 * A run with everything that is recorded at it as one file; all runs of this device for null. One photo at a time is in
 * memory: the pieces are blobs of their own, which the browser may keep on the disk.
 */
export async function handOver(store: DeviceStore, device: string, run: string | null): Answer<HandoverFile> {
  const [all, kept] = await Promise.all([store.everything(), store.photos()])
  if (!all.ok) return fromStore(all.error)
  if (!kept.ok) return fromStore(kept.error)
  const entries = all.value.filter((entry) => run === null || entry.run === run).map(withoutPlace)
  const here = new Map(kept.value.flatMap((one) => (one.state === 'freed' ? [] : [[one.sha256, one] as const])))
  const named = [...new Map(entries.flatMap(photoOf).map((photo) => [photo.sha256, photo])).values()]
  const photos = named.flatMap(({ sha256, type }): readonly HandoverPhoto[] => {
    const row = here.get(sha256)
    return row === undefined ? [] : [{ sha256, type, bytes: row.bytes }]
  })
  const elsewhere = named.flatMap(({ sha256 }) => (here.has(sha256) ? [] : [sha256]))
  const content = async ({ sha256 }: HandoverPhoto): Promise<Uint8Array> => {
    const photo = await store.photo(sha256)
    if (!photo.ok) throw new Unread(fromStore(photo.error))
    if (photo.value === undefined) throw new Error(`the bytes of photo ${sha256} are not on this device`)
    return new Uint8Array(photo.value.content)
  }
  const input = { device, writtenAt: now(), runs: runsIn(entries), entries, photos, elsewhere }
  const pieces: Blob[] = []
  try {
    for await (const piece of writeHandover(input, content, (bytes) => sha256Of(bytes.buffer)))
      pieces.push(new Blob([piece as Uint8Array<ArrayBuffer>]))
  } catch (cause) {
    if (cause instanceof Unread) return cause.answer
    throw cause
  }
  return ok({ content: new Blob(pieces, { type: 'application/zip' }), elsewhere: elsewhere.length })
}

/** A photo that could not be read ends the writing: a file without it would not be everything. */
class Unread extends Error {
  constructor(readonly answer: ReturnType<typeof fromStore>) {
    super('a photo of this device cannot be read')
  }
}

const photoOf = ({ kind, body }: Entry): readonly PhotoBody[] => (kind === 'photo' ? [body as PhotoBody] : [])

/** The runs of these entries, each by the name that it had last. */
function runsIn(entries: readonly Entry[]): { readonly id: string; readonly name: string }[] {
  const names = new Map(entries.map(({ run }) => [run, run]))
  for (const { kind, run, body } of entries)
    if (kind === 'run') names.set(run, String((body as { readonly name?: unknown } | null)?.name ?? run))
  return [...names].map(([id, name]) => ({ id, name }))
}
