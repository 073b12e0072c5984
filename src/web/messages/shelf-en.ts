/** The words of the shelf of hardware sheets in English. What the sheets say comes from the core. */
export const shelfEn = {
  title: 'Hardware sheets',
  how: 'A run takes the sheets that it is laid out by along with it: what changes here changes no run.',
  back: 'All hardware sheets',
  systems: 'Barriers',
  ends: 'End units',
  none: 'There is no such sheet at hand.',
  kinds: {
    longitudinal: 'barrier',
    terminal: 'terminal',
    'trailing anchor': 'trailing anchor',
    'buried end': 'buried end',
    'bridge end': 'bridge end',
  },
  rail: (limits: string) => `top of rail ${limits}`,
  edition: (version: string) => `edition ${version}`,
  confirmed: (n: number, all: number) => `${n} of ${all} confirmed`,
  confirmedHow:
    'Confirmed is a statement that somebody checked in a document, or that comes from one that is published. All others stand for what the agency has to check.',
  facts: {
    category: 'Class',
    joins: 'Joins',
    ends: 'Ends that join it',
    gating: 'Gating',
    energyAbsorbing: 'Energy-absorbing',
    crashworthy: 'Crashworthy',
  },
  groups: {
    rail: 'Rail, tests and laps',
    posts: 'Posts',
    panels: 'Panels',
    gaps: 'Post spacing, gaps and moved posts',
    length: 'Length, flare, ground and room',
    parts: 'Parts and their rules',
    judging: 'How faults are judged',
  },
  columns: { states: 'What it states', source: 'Source', requires: 'What is required by it' },
  unconfirmed: 'not confirmed: from memory',
}

export type ShelfWords = typeof shelfEn
