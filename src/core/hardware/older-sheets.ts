import type { Beam, PostMake } from './hardware-sheet.ts'

/**
 * Facts that older editions of sheets state in names alone. Such a sheet stands by content in runs that hold it, so it
 * is read anew each time and never rewritten. No other code may take a fact out of a name, and no newer sheet needs it.
 */

/** 12 gauge (class A of AASHTO M 180) unless the name says 10; nested and thrie where it says so. */
export const beamByName = (name: string): Beam => ({
  profile: /\bW-to-thrie\b/.test(name) ? 'W to thrie' : /\bthrie/.test(name) ? 'thrie' : 'W',
  gauge: /\b10 gauge\b/.test(name) ? 10 : 12,
  layers: /\bnested\b/.test(name) ? 2 : 1,
})

export const makeByName = (kind: string): PostMake => ({
  material: /\bwood\b/.test(kind) ? 'wood' : 'notStated',
  breakaway: /\bhinged?\b/i.test(kind) ? 'hinge' : /\b(breakaway|weakened)\b/i.test(kind) ? 'other' : 'none',
})
