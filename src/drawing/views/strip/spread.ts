/** A label that needs the width from `from` to `to`. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** For each span the lowest row, from 0, in which it overlaps none of the spans before it. Spans in any order. */
export function spreadRows(spans: readonly Span[]): number[] {
  const order = spans.map((_, i) => i).sort((a, b) => spans[a]!.from - spans[b]!.from)
  const ends: number[] = []
  const rows: number[] = new Array(spans.length).fill(0)
  for (const index of order) {
    const span = spans[index]!
    const free = ends.findIndex((end) => end <= span.from)
    const row = free === -1 ? ends.length : free
    rows[index] = row
    ends[row] = span.to
  }
  return rows
}
