interface Placed {
  readonly id: string
  readonly kind: string
  readonly supersedes: string | null
  readonly body: unknown
}

/**
 * The entries of a run in the one order that counts, whatever order they arrived or are kept in: by id, and none before
 * the one that it takes the place of. Who holds the same entries has the same log, and so the same readings in force
 * and the same hash. Ids count on from what their maker had seen (`entryIdAfter`), so no clock has a say in it. A reading
 * takes the place of one of the same thing only: naming another moves nothing.
 */
export function inLogOrder<E extends Placed>(entries: readonly E[]): readonly E[] {
  const byId = [...entries].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  const known = new Map(byId.map((entry) => [entry.id, entry]))
  const placed = new Set<string>()
  const log: E[] = []
  for (const entry of byId) {
    const chain: E[] = []
    for (let next: E | undefined = entry; next !== undefined && !placed.has(next.id); ) {
      placed.add(next.id)
      chain.push(next)
      next = replacedBy(next, known)
    }
    log.push(...chain.reverse())
  }
  return log
}

/** The entry whose place this one takes, where it is at hand. */
function replacedBy<E extends Placed>(entry: E, known: ReadonlyMap<string, E>): E | undefined {
  const replaced = entry.supersedes === null ? undefined : known.get(entry.supersedes)
  return replaced !== undefined && thingRead(replaced) === thingRead(entry) ? replaced : undefined
}

/** What a reading is of; null for entries of other kinds. */
const thingRead = ({ kind, body }: Placed): unknown =>
  kind === 'reading' && typeof body === 'object' && body !== null && 'of' in body ? body.of : null
