import type { Entry, EntryOf, PhotoBody } from './entry-kinds.ts'

/** The photos that entries tell of, each picture once, as it was described first. */
export function photosTold(entries: readonly Entry[]): readonly EntryOf<PhotoBody>[] {
  const told = new Map<string, EntryOf<PhotoBody>>()
  for (const { kind, body, ...entry } of entries) {
    if (kind !== 'photo') continue
    const photo = body as PhotoBody
    if (!told.has(photo.sha256)) told.set(photo.sha256, { ...entry, body: photo })
  }
  return [...told.values()]
}
