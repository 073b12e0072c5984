/** What stands on the sheet round its contents. */
const headings = {
  utilityTicket: 'Utility ticket',
  noTicket: 'not entered. No post is driven or pulled before the marks are there.',
  stripApart: 'The strip stands on the last pages.',
  moved: 'MOVED',
  special: 'SPECIAL',
  standing: 'stands already',
  end: 'end',
  yes: 'yes',
  no: 'no',
  post: 'Post',
  station: 'Station',
  fromPostOne: 'From post 1',
  toNext: 'To next',
  offset: 'Offset',
  block: 'Block',
  postKind: 'Post kind',
  panel: 'Panel',
  pieces: 'Pcs',
  each: 'Each',
  kind: 'Kind',
  nested: 'nested',
  hung: 'hangs already',
  nowhere: 'Nowhere.',
  heights: 'Heights and splices',
  holds: 'Hold points: call before you cover it',
  none: 'None.',
  posts: 'Posts to stake',
  departures: 'Where this run departs from standard',
  panels: 'Panels in order',
  lap: 'Lap',
  holes: 'Holes, slots and bolts; which way parts face',
  cautions: 'Cautions',
} as const

export const crewSheetHeadings = (say: (heading: string) => string): Readonly<Record<keyof typeof headings, string>> =>
  Object.fromEntries(Object.entries(headings).map(([name, words]) => [name, say(words)])) as Record<
    keyof typeof headings,
    string
  >
