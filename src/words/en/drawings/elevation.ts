/** A run seen square to its rail. */
export const elevation = {
  title: (run: string) => `Elevation of ${run}`,
  description: (units: readonly string[], pieces: string, notes: readonly string[]) =>
    `The run seen square to its rail, upstream end at the left: ${units.join(', then ')}; ${pieces}. ${notes.join(' ')}`,
  measure:
    'Elevation: distances along the rail and heights above finish grade are to the same scale. Upstream end at the left.',
  unitHeight: (unit: string, limits: string) => `${unit} ${limits}`,
  heights: (limits: readonly string[]) =>
    `Top of rail above finish grade, as the sheets state it: ${limits.join('; ')}. Finish grade is drawn level.`,
  notes: [
    'Posts are cut off in the ground: the sheets do not state their length. A flare is unrolled: see the strip for its offsets.',
    'Profile of the rail and widths of posts and blocks are drawn as is common practice; head, anchor cable and bridge are signs.',
    'With the upstream end at the left, a rail on the right of its traffic is seen from behind, one on the left from the traffic side.',
  ],
}
