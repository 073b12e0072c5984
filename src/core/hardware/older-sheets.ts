import type { Beam, PostMake, SheetRule, Shown } from './hardware-sheet.ts'

/**
 * Facts that older editions of sheets state in names and sentences alone. Such a sheet stands by content in runs that hold it, so it
 * is read anew each time and never rewritten. No other code may take a fact out of words, and no newer sheet needs it.
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

/** What the figure of a rule shows, from the words of the rule and of its right and first wrong answer. */
export function shownByWords({ must, look }: Pick<SheetRule, 'must' | 'look'>): Shown {
  const choices = look.kind === 'choose' ? look.choices : []
  const right = choices.find((choice) => choice.right)
  const wrong = choices.find((choice) => !choice.right)
  const said = right === undefined ? must : `${right.id} ${right.label}`
  const splice = wordIn(said, must, ['midspan', 'midway', 'post'])
  return {
    ...(right === undefined
      ? {}
      : {
          present: !/\b(no|not|without|missing|plain)\b(?! washer)/i.test(said),
          breakaway: makeByName(`${right.label} ${must}`).breakaway,
        }),
    wrongWasher: wrong !== undefined && /\bwasher\b/i.test(wrong.label),
    set: wordIn(said, must, ['upper', 'lower']),
    toward: wordIn(said, must, ['away', 'head']),
    over: wordIn(said, must, ['upstream', 'downstream']),
    splice: splice === 'midway' ? 'midspan' : splice,
    plate: plateIn(said, must),
    fixing: /\bretainer\b/i.test(said) ? 'retainer' : /\b(seated|shoulders?)\b/i.test(said) ? 'seat' : undefined,
  }
}

/** The first of `words` that stands in what the right answer says; if none, in the rule. */
function wordIn<W extends string>(said: string, must: string, words: readonly W[]): W | undefined {
  const inText = (text: string) => words.find((word) => new RegExp(`\\b${word}\\b`, 'i').test(text))
  return inText(said) ?? inText(must)
}

/** From words as `5-in side up and its 3-in side down`: the rule names both, the right answer the one that is up. */
function plateIn(said: string, must: string): Shown['plate'] {
  const sides = [...must.matchAll(/(\d+(?:\.\d+)?)-in side/g)].map((match) => Number(match[1]))
  const up = Number(/(\d+(?:\.\d+)?)-in side up/.exec(`${said} ${must}`)?.[1])
  const down = sides.find((inches) => inches !== up)
  return Number.isNaN(up) || down === undefined ? undefined : { upInches: up, downInches: down }
}
