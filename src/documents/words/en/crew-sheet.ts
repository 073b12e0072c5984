import type { OmissionRule } from '../../../core/hardware/hardware-sheet.ts'

type End = 'first' | 'second'

/** The crew sheet: what the crew builds from. */
export const crewSheet = {
  title: 'Crew sheet',
  utilityTicket: 'Utility ticket',
  noTicket: 'not entered. No post is driven or pulled before the marks are there.',
  stripApart: 'The strip stands on the last pages.',
  states: { regular: '', moved: 'MOVED', special: 'SPECIAL', standing: 'stands already' },
  end: 'end',
  yes: 'yes',
  no: 'no',
  post: 'Post',
  station: 'Station',
  fromPostOne: 'From post 1',
  toNext: 'To next',
  roadOffset: 'Offset',
  fromLine: 'From line',
  fromRoad: (unit: string) =>
    `Station and offset: face of rail from the alignment, offset in ${unit}, positive to the right looking up-station.`,
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
  pictures: 'As it must be, in pictures of the hardware sheets',
  cautions: 'Cautions',
  strip: (scale: string, times: number) =>
    `Traffic side is up. Scale along the rail ${scale} when printed at 100 %${times === 1 ? '' : `; OFFSETS ARE DRAWN ${times} TIMES THEIR SIZE`}.`,
  stripTitle: (run: string) => `Strip of ${run}`,
  stripShows: (posts: number, panels: number) =>
    `Plan of the run from its upstream end at the left to its downstream end at the right, with ${posts} posts, ${panels} panels and their splices by number; the tables say the same in words.`,
  noOffsets: (why: string) => `Offsets are not given: ${why}.`,
  flareNotStated: (sheet: string) => `${sheet} states no nominal flare`,
  flareInsideUnit: (end: End) => `the flare of the run would bend the ${end} end unit`,
  flareAtFixedEnd: (closedBy: 'bridge end' | 'standing splice') =>
    `the flare of the run goes toward a ${closedBy === 'bridge end' ? 'bridge end' : 'run that stands'}`,
  noFlare: 'No flare: every post stands on the line of the run.',
  flares: (flares: readonly string[]) =>
    `From line: face of rail from the line of the run, away from the road. ${flares.join('; ')}.`,
  runFlare: (end: End, rate: string, from: string) =>
    `Run: flare ${rate} from ${from} along the rail to the ${end} end, which the end unit goes on from`,
  endFlare: (end: End, shape: 'straight' | 'parabola', offset: string, over: string, isFromMemory: boolean) =>
    `${end === 'first' ? 'First' : 'Second'} end: ${shape === 'straight' ? 'straight flare' : 'parabola'}, ${offset} over ${over}${isFromMemory ? ' (from memory, NOT CONFIRMED)' : ''}`,
  goesOn: (end: End, at: 'post' | 'midspan') =>
    `The ${end} end goes on from a splice that stands, ${at === 'post' ? 'at a post' : 'at midspan'}.`,
  driven: (posts: string) => `Already in the ground: ${posts}.`,
  alreadyHung: (panels: string) => `Already hung: ${panels}.`,
  noPost: (along: string, because: string, rule: OmissionRule['kind']) =>
    `NO POST at ${along}, because of ${because} (rule for a ${rule} gap).`,
  gap: (before: number, after: number, apart: string) => `Posts ${before} and ${after} stand ${apart} apart.`,
  movedPost: (post: number) => `Post ${post} is moved along the rail: stake it where the table says.`,
  specialPost: (post: number, kind: string) => `Post ${post} is a ${kind}.`,
  oddSpaces: (from: number, to: number, isOne: boolean, apart: string, full: string) =>
    `Posts ${from} ${isOne ? 'and' : 'to'} ${to} stand ${apart} apart instead of ${full}.`,
  oddPanel: (panel: number, length: string, why: string) => `Panel ${panel} is ${length} long: ${why}.`,
  oddness: {
    adapter: (end: 'first' | 'second' | 'run') => `it joins the ${end} end to the run`,
    converting: 'it shifts the splices by half a post space',
    'end only': 'a length that may only hang at an end of the run',
  },
  nestedRail: (panels: string) => `NESTED, two layers of rail: ${panels}.`,
  ticket: (number: string, calledOn: string, from: string, through: string, marks: readonly string[]) =>
    `${number}, called on ${calledOn}, valid ${from} through ${through}; ${marks.length === 0 ? 'no marks entered' : `marks: ${marks.join(', ')}`}.`,
  mark: (name: string, along: string) => `${name} ${along} from post 1`,
  markUnplaced: (name: string) => `${name} WHERE IS NOT KNOWN (it was measured from a post of an earlier version)`,
  nearMark: (mark: string, within: string, posts: string) =>
    `Within ${within} of ${mark}: ${posts}. Dig by hand, or have the layout moved.`,
}
