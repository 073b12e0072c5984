import { describe, expect, it } from 'vitest'
import type { Answer, Rejection } from '../../../src/words/answers.ts'
import { english } from '../../../src/words/english.ts'
import type { Saying } from '../../../src/words/saying.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { englishIn } from './english-left.ts'
import { sayingsOfProblems } from './gather-problems.ts'
import { isSame } from './same-in-both.ts'

/** Every answer of the server, once. */
const answers: { readonly [K in (Answer | Rejection)['kind']]: Extract<Answer | Rejection, { readonly kind: K }> } = {
  'no packet made': { kind: 'no packet made' },
  'packet no longer kept': { kind: 'packet no longer kept' },
  'run not laid out': { kind: 'run not laid out' },
  'request not as it has to be': { kind: 'request not as it has to be' },
  'own fault': { kind: 'own fault' },
  'stored run unreadable': { kind: 'stored run unreadable' },
  'stored readings unreadable': { kind: 'stored readings unreadable' },
  'stored entries unreadable': { kind: 'stored entries unreadable' },
  'no JSON document': { kind: 'no JSON document' },
  'nothing at': { kind: 'nothing at', request: 'GET /api' },
  'no run': { kind: 'no run', run: '7' },
  'sheets of strip': { kind: 'sheets of strip', sheets: 3 },
  'store silent': { kind: 'store silent', reason: 'x' },
  'store silent for now': { kind: 'store silent for now', reason: 'x' },
  'device not let in': { kind: 'device not let in' },
  unencrypted: { kind: 'unencrypted' },
  'too many codes': { kind: 'too many codes' },
  'wrong code': { kind: 'wrong code' },
  'only trust here': { kind: 'only trust here' },
  'host of another': { kind: 'host of another', host: 'x' },
  'page of another': { kind: 'page of another', origin: 'x' },
  'no hash with upload': { kind: 'no hash with upload' },
  'photo not written': { kind: 'photo not written' },
  'no photo': { kind: 'no photo', sha256: '0a' },
  'another hash': { kind: 'another hash', found: '0a' },
  'not a photo': {
    kind: 'not a photo',
    expected: { kind: 'whole picture', megapixels: 64 },
    found: { kind: 'picture of pixels', width: 9000, height: 8000 },
  },
  'no entry': { kind: 'no entry' },
  'no version of run': { kind: 'no version of run' },
  'no reading of run': { kind: 'no reading of run' },
  'no run to lay out': { kind: 'no run to lay out' },
  'run of another id': { kind: 'run of another id' },
  'id far ahead': { kind: 'id far ahead' },
  unstorable: { kind: 'unstorable' },
  'run of entry unreadable': { kind: 'run of entry unreadable' },
  'run of entry not laid out': { kind: 'run of entry not laid out' },
  'readings of run unreadable': { kind: 'readings of run unreadable' },
  'same id stored': { kind: 'same id stored' },
  'no run of entry': { kind: 'no run of entry', run: '7' },
  'no project': { kind: 'no project', project: 'x' },
  'fields differ': { kind: 'fields differ', fields: ['author', 'device'] },
  'rejected for': {
    kind: 'rejected for',
    why: { kind: 'no reading of run' },
    place: 'readings[7]',
    expected: { kind: 'requirement of run' },
  },
}

const once = (sayings: readonly Saying[]): readonly Saying[] => [
  ...new Map(sayings.map((saying) => [JSON.stringify(saying), saying])).values(),
]

const numbersIn = (text: string): string => (text.match(/\d+(\/\d+)?/g) ?? []).toSorted().join(' ')

/** Kinds that say nothing but what stands in a file. */
const values = ['theirs', 'one of values', 'inches', 'length in unit', 'base64', 'in these words']

/** Fields, commands and addresses keep their names. */
const fileNames = /\b(value|visit\.\w+|layout|requirements|author|device|GET|api)\b/g

describe.each([
  ['problems of what is typed and of files', 260, once(sayingsOfProblems())],
  ['answers of the server', 39, Object.values(answers)],
] as const)('%s', (_, least, sayings) => {
  const said = sayings.map((saying) => ({
    kind: saying.kind,
    inEnglish: english(null).say(saying),
    inSpanish: spanish(null).say(saying),
  }))

  it(`are gathered, at least ${least}`, () => {
    expect(sayings.length).toBeGreaterThanOrEqual(least)
  })

  it('are said in Spanish, but for names, ids and numbers', () => {
    const isValue = (text: string): boolean => isSame(text) || !/\p{L}{3}/u.test(text)
    const alike = said.filter(({ inEnglish, inSpanish }) => inEnglish === inSpanish)
    expect(alike.filter(({ kind, inEnglish }) => !values.includes(kind) && !isValue(inEnglish))).toEqual([])
  })

  it('have no English word in Spanish', () => {
    expect(englishIn(said.map(({ inSpanish }) => inSpanish.replaceAll(fileNames, '')))).toEqual([])
  })

  it('keep every number', () => {
    expect(said.filter(({ inEnglish, inSpanish }) => numbersIn(inEnglish) !== numbersIn(inSpanish))).toEqual([])
  })
})

it('what a person wrote is said as it was written, also where it is a word of the trade', () => {
  const found: Saying = { kind: 'theirs', text: 'Post, 1,250 ft' }
  expect(spanish('metric').say(found)).toBe('Post, 1,250 ft')
  expect(spanish('metric').say({ kind: 'site without a need', units: 'us', refusal: hazardOff })).toBe(
    '"post" más allá de ellas',
  )
})

const hazardOff = { kind: 'hazard-off-alignment', hazard: 'post', from: 0, to: 300 } as const
