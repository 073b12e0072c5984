import type { Layout } from './layout.ts'

/**
 * A straight flare of the run itself, apart from those of its end units: the rail leaves its line `rate` along to 1 across,
 * away from the road. Distances are inches along the rail from the run's datum, positive downstream; null where that end
 * is not flared.
 */
export interface RunFlare {
  readonly rate: number
  /** Upstream of here the rail is flared. */
  readonly firstFromInches: number | null
  /** Downstream of here. */
  readonly secondFromInches: number | null
}

/** Where the rail bends into a flare of the run, inches along the rail from post 1; null where the rail ends before. */
export function flareBends(
  { panels, posts, postOneAtInches }: Layout,
  flare: RunFlare | null,
): { readonly first: number | null; readonly second: number | null } {
  const places = [
    ...posts.map(({ alongInches }) => alongInches),
    ...panels.flatMap((one) => [one.fromInches, one.toInches]),
  ]
  const from = places.reduce((a, b) => Math.min(a, b))
  const to = places.reduce((a, b) => Math.max(a, b))
  const bend = (at: number | null | undefined): number | null => {
    const along = at === null || at === undefined ? null : at - postOneAtInches
    return along !== null && along > from && along < to ? along : null
  }
  const upstream = flare?.firstFromInches ?? null
  const downstream = flare?.secondFromInches ?? null
  return { first: bend(upstream), second: bend(downstream) }
}
