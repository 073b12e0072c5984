/** What identifies a run, the sheets it is judged by and the rule. */
export const runFacts = {
  names: {
    route: 'Route',
    side: 'Side',
    traffic: 'Traffic',
    speed: 'Speed',
    work: 'Work',
    letting: 'Let',
    datum: 'Datum of the run',
    position: 'Position of the device',
    site: 'Made of the site',
    first: 'Post 1',
    last: (post: number) => `Post ${post}, the last`,
    size: 'Size',
    readings: 'Readings',
  },
  notSaid: 'not said',
  sides: { right: 'right, looking up-station', left: 'left, looking up-station' },
  traffic: { 'two-way': 'two-way', 'one-way': 'one-way', divided: 'divided' },
  work: { new: 'new', standing: 'standing' },
  station: (station: string) => `station ${station}`,
  size: (posts: number, panels: number, rail: string) => `${posts} posts, ${panels} panels, ${rail} of rail`,
  madeOf: {
    need: (approach: string, departure: string | null) =>
      `length of need ${approach}${departure === null ? '' : `, for opposing traffic ${departure}`}`,
    checks: (all: number, fail: number, meet: number) =>
      `${all} checks when the run was made: ${fail} ${fail === 1 ? 'fails' : 'fail'}, ${meet} ${meet === 1 ? 'meets' : 'meet'}`,
    unread: (what: string) => `not said: ${what}`,
  },
  noReadings: 'none',
  readings: (count: number, people: string, from: string, to: string) =>
    `${count} by ${people}, ${from === to ? from : `${from} to ${to}`}`,
  sheets: {
    first: 'First end, upstream',
    run: 'Run',
    second: 'Second end, downstream',
    splice: {
      post: 'Goes on from a splice that stands, at a post',
      midspan: 'Goes on from a splice that stands, at midspan',
    },
    unknown: {
      'no sheet fits': 'Not known: no hardware sheet fits what was seen',
      'not looked at': 'Not looked at',
    },
    noCriteria: 'no test criteria stated',
    confirmations: {
      published: 'published',
      'common practice': 'common practice',
      'from memory': 'from memory, not confirmed',
    },
  },
  guardBand: (multiple: number) =>
    `Guard band (JCGM 106:2012, 8.3): a value meets a limit when it lies at least ${multiple === 1 ? '' : `${multiple} times `}U inside it, fails when it lies more than that outside, and is too close in between; U = 2u is the expanded uncertainty of the value.`,
  simple:
    'Simple acceptance (JCGM 106:2012, 8.2): a value on or inside the limit meets it, a value outside fails; the uncertainty is stated but moves no limit.',
}
