import { canonicalJson } from '../../formats/canonical-json.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import { photosTold } from '../../formats/entry/photos-told.ts'
import type { StoredEntry } from '../../store/entry.ts'
import { sha256 } from '../../store/sha256.ts'

/** The first so many entries, and the hash over all of them. */
export interface Head {
  readonly count: number
  readonly hash: string
}

export interface Verified {
  readonly head: Head
  /** Ids of entries whose body is not the one that was stored with them. */
  readonly changed: readonly string[]
  /** By SHA-256. */
  readonly photos: readonly string[]
  /** The hash over the entries that an earlier head counted; null where there are fewer. */
  readonly then: string | null
}

/** Before the first entry. */
const none = '0'.repeat(64)

/**
 * Recomputes the hash of each body, and the hash over all entries in the order of storing. Each takes the one before in, so
 * that a head which was printed or sent elsewhere on one day shows on any later day that nothing before it was changed,
 * left out or put between.
 *
 * @param counted  of an earlier head
 */
export async function verifyEntries(
  entries: AsyncIterable<readonly StoredEntry[]>,
  counted: number | null,
): Promise<Verified> {
  const changed: string[] = []
  const photos = new Set<string>()
  let head: Head = { count: 0, hash: none }
  let then = counted === 0 ? none : null
  for await (const piece of entries) {
    for (const { sha256: photo } of photosTold(piece as readonly Entry[]).map(({ body }) => body)) photos.add(photo)
    for (const { body, ...entry } of piece) {
      if (sha256(canonicalJson(body)) !== entry.bodyHash) changed.push(entry.id)
      head = { count: head.count + 1, hash: sha256(`${head.hash}\n${canonicalJson(entry)}`) }
      if (head.count === counted) then = head.hash
    }
  }
  return { head, changed, photos: [...photos], then }
}
