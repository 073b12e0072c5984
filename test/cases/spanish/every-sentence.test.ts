import { describe, expect, it } from 'vitest'
import { contentOf } from '../../../src/core/hardware/sheet-text.ts'
import { documentWords } from '../../../src/documents/words/document-words.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { detailWords } from '../../../src/drawing/words/detail-words.ts'
import { elevationWords } from '../../../src/drawing/words/elevation-words.ts'
import { figuresWords } from '../../../src/drawing/words/figures-words.ts'
import { runWords } from '../../../src/drawing/words/run-words.ts'
import { siteWords } from '../../../src/drawing/words/site-words.ts'
import { stakePlanWords } from '../../../src/drawing/words/stake-plan-words.ts'
import { stripWords } from '../../../src/drawing/words/strip-words.ts'
import { english } from '../../../src/words/english.ts'
import type { Print } from '../../../src/words/print.ts'
import type { Saying } from '../../../src/words/saying.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { touchingTexts } from '../drawing/site-text-boxes.ts'
import { drawingTexts } from './drawing-texts.ts'
import { englishIn, sharedWords } from './english-left.ts'
import { sayingsOfAstrayReadings } from './gather-astray.ts'
import { sayingsOfRefusals } from './gather-problems.ts'
import { sayingsOfRecords } from './gather-records.ts'
import {
  detailsOf,
  elevationOf,
  everywhere,
  figuresOf,
  judgedRuns,
  requiredRun,
  runFiles,
  sayingsOfJudgement,
  sayingsOfLayout,
  sayingsOfRequirements,
  sourcesOf,
  stripOf,
  textsOfCrewSheet,
} from './gather-runs.ts'
import { drawingsOfSite, sayingsOfChecks, sayingsOfNotes, sayingsOfSite, sites } from './gather-sites.ts'

const drawingWords = [detailWords, elevationWords, figuresWords, runWords, siteWords, stakePlanWords, stripWords]

const once = (texts: readonly string[]): readonly string[] => [...new Set(texts)].filter((text) => text !== '')

const runs = Object.values(runFiles).map(requiredRun)
const judged = runs.map(judgedRuns)

/** What the page shows of the model, by where it comes from, and the least number of different sentences expected. */
const gathered: readonly (readonly [from: string, least: number, said: readonly Saying[]])[] = [
  ['requirements', 400, runs.flatMap(sayingsOfRequirements)],
  ['layouts and refusals', 65, [...runs.flatMap(sayingsOfLayout), ...sayingsOfRefusals()]],
  ['verdicts and findings', 600, judged.flat().flatMap(sayingsOfJudgement)],
  ['readings that are not taken in, or count for less', 20, sayingsOfAstrayReadings()],
  ['instruments', 6, everywhere],
  ['sites', 120, sites.flatMap(sayingsOfSite)],
  ['notes of a need', 65, sayingsOfNotes()],
  ['checks of hardware', 145, sayingsOfChecks()],
  ['what the run file decides', 60, sayingsOfRecords()],
]

const drawn: readonly (readonly [what: string, least: number, draw: (print: Print) => readonly Drawing[]])[] = [
  ['figures', 220, (print) => runs.flatMap((run) => figuresOf(run, print))],
  [
    'strips',
    1000,
    (print) => [...runs, ...judged.flatMap((ways) => ways.slice(-17, -12))].map((run) => stripOf(run, print)),
  ],
  [
    'elevations and details',
    600,
    (print) => runs.flatMap((run) => [elevationOf(run, print), ...detailsOf(run, print)]),
  ],
  ['plans and sections', 400, (print) => sites.slice(-12).flatMap((site) => drawingsOfSite(site, print))],
]

/** Texts of documents, as they are in each language. */
const written: readonly (readonly [what: string, least: number, texts: (print: Print) => readonly string[]])[] = [
  ['crew sheets', 200, (print) => judged.flatMap(([first]) => textsOfCrewSheet(first!, print))],
  ['words of documents', 230, (print) => textsIn(documentWords(print))],
  ['words of drawings', 80, (print) => textsIn(drawingWords.map((of) => of(print)))],
]

/** Every text in what a module of words holds, but those that are made of others, less what is put in. */
function textsIn(words: unknown): readonly string[] {
  if (typeof words === 'string') return [words.replaceAll(/\{\w+\}/g, '')]
  return typeof words === 'object' && words !== null ? Object.values(words).flatMap(textsIn) : []
}

const textOf = (drawing: Drawing): string => drawingTexts(drawing).join(' ')

const numbersIn = (text: string): string => (text.match(/\d+(\/\d+)?/g) ?? []).toSorted().join(' ')

describe.each(gathered)('%s', (_, least, said) => {
  const pairs = [...new Map(said.map((one) => [english(null).say(one), spanish(null).say(one)]))]

  it(`are gathered, at least ${least}`, () => {
    expect(pairs.length).toBeGreaterThanOrEqual(least)
  })

  it('have no English word in Spanish', () => {
    expect(englishIn(pairs.map(([, text]) => text))).toEqual([])
    expect(once(said.flatMap((one) => sharedWords(english(null).say(one), spanish(null).say(one))))).toEqual([])
  })

  it('keep every number', () => {
    expect(pairs.filter(([one, other]) => numbersIn(other) !== numbersIn(one))).toEqual([])
  })
})

describe.each(written)('%s', (_, least, textsOf) => {
  const said = textsOf(spanish(null))
  const pairs = [...new Map(textsOf(english(null)).map((one, i) => [one, said[i]!]))]

  it(`are there, at least ${least}`, () => {
    expect(pairs.length).toBeGreaterThanOrEqual(least)
  })

  it('have no English word in Spanish', () => {
    expect(englishIn(pairs.map(([, other]) => other))).toEqual([])
    expect(once(pairs.flatMap(([one, other]) => sharedWords(one, other)))).toEqual([])
  })

  it('keep every number', () => {
    expect(pairs.filter(([one, other]) => numbersIn(other) !== numbersIn(one))).toEqual([])
  })
})

describe.each(drawn)('%s', (what, least, draw) => {
  const drawings = draw(english(null))
  const said = draw(spanish(null))

  it(`have texts, at least ${least} different ones`, () => {
    expect(once(drawings.flatMap(drawingTexts)).length).toBeGreaterThanOrEqual(least)
  })

  it('have no English word in Spanish', () => {
    expect(englishIn(said.flatMap(drawingTexts))).toEqual([])
    if (what === 'plans and sections')
      expect(once(drawings.flatMap((one, i) => sharedWords(textOf(one), textOf(said[i]!))))).toEqual([])
  })

  it('keep every number, where no text is cut short', () => {
    const isCut = (drawing: Drawing): boolean => drawingTexts(drawing).some((text) => text.endsWith('…'))
    const numbersOf = (drawing: Drawing): string => numbersIn(drawingTexts(drawing).join(' '))
    const whole = drawings.flatMap((drawing, i) => (isCut(drawing) ? [] : [[drawing, said[i]!] as const]))
    expect(whole.length).toBeGreaterThan(10)
    expect(whole.filter(([one, other]) => numbersOf(one) !== numbersOf(other)).map(([{ title }]) => title)).toEqual([])
  })

  it('have no text over another in Spanish that was not so in English, and none cut short', () => {
    const faults = said.flatMap((drawing, i) => {
      const cut = (one: Drawing) => drawingTexts(one).filter((text) => text.endsWith('…'))
      return [
        ...(touchingTexts(drawing).length > touchingTexts(drawings[i]!).length ? touchingTexts(drawing) : []),
        ...(cut(drawing).length > cut(drawings[i]!).length ? cut(drawing) : []),
      ]
    })
    expect(once(faults)).toEqual([])
  })
})

it('the check finds what was not said', () => {
  expect(englishIn(['La baranda stands.'])).toEqual(['La baranda stands.'])
  expect(numbersIn('27 3/4 in to 31 in')).not.toBe(numbersIn('27 3/4 in'))
})

it('sources are titles of documents, or say in Spanish that there is none', () => {
  const ownWords = /recalled|common practice|no document|number|as read|facts of the trade/i
  const sources = runs.flatMap(sourcesOf).filter((one) => ownWords.test(english(null).say(one)))
  expect(new Set(sources.map(contentOf)).size).toBeGreaterThan(5)
  expect(once(sources.map(spanish(null).say).filter((text) => ownWords.test(text)))).toEqual([])
})
