interface Placed {
  readonly id: string
  readonly supersedes: string | null
}

/**
 * The entries of a run in the one order that counts, whatever order they arrived or are kept in: by id, and none before
 * the one that it takes the place of. Who holds the same entries has the same log, and so the same readings in force
 * and the same hash. Ids count on from what their maker had seen (`entryIdAfter`), so no clock has a say in it.
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
      next = next.supersedes === null ? undefined : known.get(next.supersedes)
    }
    log.push(...chain.reverse())
  }
  return log
}
