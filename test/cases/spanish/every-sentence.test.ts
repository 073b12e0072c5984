import { describe, expect, it } from 'vitest'
import { crewSheetHeadings } from '../../../src/documents/crew-sheet-words.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { sayDrawing } from '../../../src/drawing/say-drawing.ts'
import { sayInSpanish, sayWithRest } from '../../../src/words/spanish/say-in-spanish.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { touchingTexts } from '../drawing/site-text-boxes.ts'
import { drawingTexts } from './drawing-texts.ts'
import { englishIn } from './english-left.ts'
import { textsOfAstrayReadings } from './gather-astray.ts'
import { textsOfProblems } from './gather-problems.ts'
import { textsOfRecords } from './gather-records.ts'
import {
  everywhere,
  figuresOf,
  judgedRuns,
  requiredRun,
  runFiles,
  sourcesOf,
  stripOf,
  textsOfCrewSheet,
  textsOfJudgement,
  textsOfLayout,
  textsOfRequirements,
} from './gather-runs.ts'
import { textsOfServer } from './gather-server.ts'
import { drawingsOfSite, sites, textsOfChecks, textsOfNotes, textsOfSite } from './gather-sites.ts'
import { isSame } from './same-in-both.ts'

const once = (texts: readonly string[]): readonly string[] => [...new Set(texts)].filter((text) => text !== '')

const runs = Object.values(runFiles).map(requiredRun)
const judged = runs.map(judgedRuns)

/** What the page shows of the model, by where it comes from, and the least number of different sentences expected. */
const gathered: readonly (readonly [from: string, least: number, texts: readonly string[]])[] = [
  ['requirements', 400, once(runs.flatMap(textsOfRequirements))],
  ['layouts and refusals', 65, once(runs.flatMap(textsOfLayout))],
  ['verdicts and findings', 600, once(judged.flat().flatMap(textsOfJudgement))],
  ['readings that are not taken in, or count for less', 20, once(textsOfAstrayReadings())],
  ['cautions and instruments', 13, once(everywhere)],
  ['sites', 120, once(sites.flatMap(textsOfSite))],
  ['notes and refusals of a need', 100, once(textsOfNotes())],
  ['checks of hardware', 145, once(textsOfChecks())],
  ['what the run file decides', 60, once(textsOfRecords())],
  ['problems of what is typed and of files', 270, once(textsOfProblems())],
  ['crew sheets', 200, once(judged.flatMap(([first]) => textsOfCrewSheet(first!)))],
  ['headings of a crew sheet', 30, once(headingsOf())],
  ['answers of the server', 15, once(textsOfServer())],
]

const drawn: readonly (readonly [what: string, least: number, drawings: readonly Drawing[]])[] = [
  ['figures', 220, runs.flatMap(figuresOf)],
  ['strips', 1000, [...runs.map(stripOf), ...judged.flatMap((ways) => ways.slice(-17, -12).map(stripOf))]],
  ['plans and sections', 400, sites.slice(-12).flatMap(drawingsOfSite)],
]

/** Every heading, as it is handed to be said. */
function headingsOf(): readonly string[] {
  const handed: string[] = []
  crewSheetHeadings((heading) => {
    handed.push(heading)
    return heading
  })
  return handed
}

const numbersIn = (text: string): string => (text.match(/\d+(\/\d+)?/g) ?? []).toSorted().join(' ')

describe.each(gathered)('%s', (_, least, texts) => {
  it(`are gathered, at least ${least}`, () => {
    expect(texts.length).toBeGreaterThanOrEqual(least)
  })

  it('leave nothing in English but names, ids and titles', () => {
    expect(once(texts.flatMap((text) => sayWithRest(text).left)).filter((left) => !isSame(left))).toEqual([])
  })

  it('have no English word in Spanish', () => {
    expect(englishIn(texts.map(sayInSpanish))).toEqual([])
  })

  it('keep every number', () => {
    expect(texts.filter((text) => numbersIn(sayInSpanish(text)) !== numbersIn(text))).toEqual([])
  })
})

describe.each(drawn)('%s', (_, least, drawings) => {
  const said = drawings.map((drawing) => sayDrawing(drawing, spanish(null)))

  it(`have texts, at least ${least} different ones`, () => {
    expect(once(drawings.flatMap(drawingTexts)).length).toBeGreaterThanOrEqual(least)
  })

  it('have no English word in Spanish', () => {
    expect(englishIn(said.flatMap(drawingTexts))).toEqual([])
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
  expect(sayWithRest('The rail stands on three legs.').left).toEqual(['The rail stands on three legs.'])
  expect(englishIn(['La baranda stands.'])).toEqual(['La baranda stands.'])
  expect(numbersIn('27 3/4 in to 31 in')).not.toBe(numbersIn('27 3/4 in'))
})

it('sources are titles of documents, or say in Spanish that there is none', () => {
  const ownWords = /recalled|common practice|no document|number|as read|facts of the trade/i
  const sources = once(runs.flatMap(sourcesOf)).filter((one) => ownWords.test(one))
  expect(sources.length).toBeGreaterThan(5)
  expect(sources.filter((one) => sayInSpanish(one) === one)).toEqual([])
})
