import { err, ok, type Result } from '../../core/result.ts'
import { dayLogOf, locateTicketOf } from '../../formats/entry/day-entries.ts'
import { signOffOf } from '../../formats/entry/sign-off.ts'
import { nextId, now } from './device.ts'
import type { DeviceStore, FreshEntry, PhotoFile } from './device-store.ts'
import { freeablePhotos, freePhotos } from './free-photos.ts'
import { later } from './later.ts'
import { type DeviceEntry, rivalsAmong } from './merge-entries.ts'
import { d } from './messages.ts'
import type { PageEnd } from './page-end.ts'
import { hasRoomFor } from './room.ts'
import type { Answer, KeptEntry, NewSideBodies, RunSource, SideKind, Trouble } from './run-source.ts'
import { hasPhoto } from './server-peer.ts'
import { sha256Of } from './sha256.ts'
import { fromStore } from './store-trouble.ts'

type Side = Pick<RunSource, 'entries' | 'appendEntry' | 'savePhoto' | 'photo' | 'freePhotos'>

interface Means {
  keep(
    fresh: Omit<FreshEntry, 'device' | 'schemaVersion' | 'project'>[],
    add: (entries: readonly FreshEntry[]) => ReturnType<DeviceStore['add']>,
  ): Promise<Result<unknown, Trouble>>
  /** A photo that is not on this device; null where nobody has it. */
  photoElsewhere(sha256: string): Answer<Blob | null>
}

/** What is recorded beside the readings of a run, photos first of all. */
export function sideEntries(store: DeviceStore, page: PageEnd, { keep, photoElsewhere }: Means): Side {
  const side: Side = {
    async entries(run, kind) {
      const [entries, photos] = await Promise.all([
        store.entries(kind, run),
        kind === 'photo' ? store.unsentPhotos() : ok([]),
      ])
      if (!entries.ok) return fromStore(entries.error)
      if (!photos.ok) return fromStore(photos.error)
      return ok(asKept(entries.value, kind, new Set(photos.value.map(({ sha256 }) => sha256))))
    },

    async appendEntry(run, kind, body, author, supersedes) {
      const kinds = await later(() => import('../../formats/entry/entry-kinds.ts'))
      if (!kinds.ok) return kinds
      kinds.value.entryBodies[kind].parse(body)
      return keepOne(run, kind, body, author, supersedes)
    },

    async savePhoto(run, bytes, body, author) {
      const kinds = await later(() => import('../../formats/entry/entry-kinds.ts'))
      if (!kinds.ok) return kinds
      kinds.value.entryBodies.photo.parse(body)
      if (body.bytes !== bytes.byteLength)
        throw new RangeError(`a photo of ${bytes.byteLength} bytes, said ${body.bytes}`)
      const sha256 = await sha256Of(bytes)
      if (body.sha256 !== sha256) throw new RangeError(`a photo with the sha256 ${sha256}, said ${body.sha256}`)
      const noRoom: Trouble = { kind: 'no room', message: d.trouble.noRoomForPhoto, problems: [] }
      if (!(await hasRoomFor(bytes.byteLength))) return err(noRoom)
      const kept = await keepOne(run, 'photo', body, author, null, { sha256, type: body.type, content: bytes })
      return !kept.ok && kept.error.kind === 'no room' ? err(noRoom) : kept
    },

    async photo(sha256) {
      const here = await store.photo(sha256)
      if (!here.ok) return fromStore(here.error)
      if (here.value !== undefined) return ok(new Blob([here.value.content], { type: here.value.type }))
      return photoElsewhere(sha256)
    },

    async freePhotos() {
      const photos = await freeablePhotos(store, new Date())
      if (!photos.ok) return photos
      const freed = await freePhotos(store, photos.value, hasPhoto)
      page.changed({ runs: [], isOwn: true })
      return freed
    },
  }
  return side

  async function keepOne<K extends SideKind>(
    run: string,
    kind: K,
    body: NewSideBodies[K],
    author: string,
    supersedes: string | null,
    photo?: PhotoFile,
  ): Answer<KeptEntry<K>> {
    const seen = await store.entries(kind, run)
    if (!seen.ok) return fromStore(seen.error)
    const ids = seen.value.map(({ id }) => id)
    const fresh = { id: nextId(run, ids), run, kind, author, capturedAt: now(), supersedes, body }
    const kept = await keep([fresh], (entries) => store.add(entries, photo))
    if (!kept.ok) return kept
    const all = await side.entries(run, kind)
    return all.ok ? ok(all.value.find(({ id }) => id === fresh.id)!) : all
  }
}

/** The body of an entry of each kind, whichever version it was written in. */
const bodiesNow: { readonly [K in SideKind]: (schemaVersion: number, body: unknown) => unknown } = {
  photo: (_, body) => body,
  'photo-strokes': (_, body) => body,
  'sign-off': signOffOf,
  'day-log': dayLogOf,
  'locate-ticket': locateTicketOf,
  archive: (_, body) => body,
  'free-finding': (_, body) => body,
  'free-finding-end': (_, body) => body,
  assignment: (_, body) => body,
}

/**
 * Entries of one kind as the page shows them: which are superseded, and which were superseded twice.
 * @param unsent  hashes of photos whose bytes are here only: that one is described on the server is not to have it there
 */
function asKept<K extends SideKind>(
  entries: readonly DeviceEntry[],
  kind: K,
  unsent: ReadonlySet<string>,
): readonly KeptEntry<K>[] {
  const rivals = rivalsAmong(entries)
  const superseded = new Set(entries.map(({ supersedes }) => supersedes))
  return entries.map(({ id, run, author, device, capturedAt, supersedes, state, schemaVersion, body }) => ({
    ...{ id, run, kind, author, device, capturedAt, supersedes },
    rivals: (supersedes === null ? [] : (rivals.get(supersedes) ?? [])).filter((other) => other !== id),
    isSuperseded: superseded.has(id),
    state: state === 'sent' && !unsent.has((body as { readonly sha256?: string }).sha256 ?? '') ? 'sent' : 'here',
    body: bodiesNow[kind](schemaVersion, body) as KeptEntry<K>['body'],
  }))
}
