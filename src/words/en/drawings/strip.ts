/** The strip of a run, from above. */
export const strip = {
  title: (run: string) => `Strip of ${run}`,
  description: (units: readonly string[], pieces: string, verdicts: string) =>
    `Plan of the run from its upstream end at the left to its downstream end at the right: ${units.join(', then ')}; ${pieces}. ${verdicts}`,
  notJudged: 'Nothing is judged yet.',
  noneFails: 'No place fails.',
  measure: (offsetTimes: number | null, runFlare: number | null) =>
    [
      'Distances along the rail are to scale;',
      ...(offsetTimes === null
        ? []
        : offsetTimes === 1
          ? ['offsets of the flare are to the same scale;']
          : [`OFFSETS ARE DRAWN ${offsetTimes} TIMES THEIR SIZE;`]),
      ...(runFlare === null ? [] : [`the flare of the run, ${runFlare}:1, is drawn straight;`]),
      'rail, blocks, posts and ends are signs, not to scale. Traffic side up.',
    ].join(' '),
  posts: {
    standard: 'post',
    breakaway: 'breakaway post',
    moved: 'moved post',
    special: 'special post',
  },
  standingPost: 'post that stands already',
  noPost: 'no post',
  block: 'offset block',
  numbered: (number: number, own: number) => `post ${number}, post ${own} of its end unit`,
  splice: 'splice: the upper line lies on the traffic side',
  ends: {
    terminal: 'impact head',
    'trailing anchor': 'anchor',
    'buried end': 'end buried in the backslope',
    'bridge end': 'bridge',
    'standing splice': 'run that stands',
    'unknown end': 'end of which no sheet is known',
  },
  noPostHere: 'no post can stand here',
  countOfWorst: '2/7: 2 of the 7 verdicts at this place are as bad as the sign',
  rows: {
    need: 'need',
    counts: 'rail that counts',
    wholes: 'end units, run',
    post: 'posts',
    space: 'spaces',
    splice: 'splices',
    panel: 'panels',
  },
  toBeShielded: (length: string) => `to be shielded, ${length}`,
  counts: (length: string) => `counts for length of need, ${length}`,
  countsOn: 'counts for length of need; goes on in the standing run',
  countsUnknown: 'would count for length of need; not known, since an end is not known',
  adjacent: {
    'one-way': 'adjacent traffic, one way',
    'two-way': 'adjacent traffic',
    divided: 'adjacent traffic, divided road',
  },
  opposing: 'opposing traffic',
  trafficNotStated: 'traffic side; direction of traffic not stated',
  directionNotStated: 'traffic side, direction not stated',
  leftToRight: (traffic: string) => `${traffic}, from left to right`,
}
