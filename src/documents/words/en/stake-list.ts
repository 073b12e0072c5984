/** The stakes of a run, and what their numbers mean. */
export const stakeList = {
  closure: (atLast: string, largest: string) =>
    `Station and offset, and following the rail from post 1, meet at the last stake to ${atLast} and everywhere to ${largest}.`,
  lessThan: (length: string) => `less than ${length}`,
  notes: [
    'Each point is the face of rail square to the centre of its post.',
    'Offsets are from the alignment, positive to the right looking up-station.',
    'Coordinates are those of the alignment; lengths of rail are taken as lengths in them, without a scale factor between grid and ground.',
  ] as readonly string[],
  roadBeyond: (broken: string) => `Beyond the run the road is broken: ${broken}.`,
  noHeights: 'Heights are not given: the profile of the road is not known.',
  heights:
    "Heights are those of the road's surface, extended with its cross slope to the face of rail, not of the ground.",
}
