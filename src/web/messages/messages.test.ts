import { describe, expect, test } from 'vitest'
import { instruments } from '../../core/measurement/instruments.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { cautions } from '../../documents/cautions.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { requireRun } from '../../operations/require-run.ts'
import { sayInSpanish } from '../../words/spanish/say-in-spanish.ts'
import { en } from './en.ts'
import { es } from './es.ts'

function requirementsOf(changes: object): readonly Requirement[] {
  const read = readRun('run', JSON.stringify({ ...JSON.parse(demoProject().run), ...changes }))
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const required = requireRun('run', read.value)
  if (!required.ok) throw new Error(JSON.stringify(required.error))
  return required.value.requirements
}

/** Runs that have the shipped sheets between them. */
const runs: readonly (readonly [name: string, requirements: readonly Requirement[]])[] = [
  ['flared terminal and trailing anchor, 31 in', requirementsOf({})],
  ['tangent terminal, 31 in', requirementsOf({ first: { sheet: 'tangent-terminal-31' } })],
  [
    'buried end and bridge end, 31 in',
    requirementsOf({ first: { sheet: 'buried-end-31' }, second: { sheet: 'bridge-end-31', at: '62 ft 6 in' } }),
  ],
  [
    'flared terminal and trailing anchor, 27 3/4 in',
    requirementsOf({
      system: 'w-beam-post-splice-27-3-4',
      first: { sheet: 'flared-terminal-27-3-4' },
      second: { sheet: 'trailing-anchor-27-3-4' },
    }),
  ],
]

/** Lengths and names such as `panel 4` read the same in both languages. */
const isSame = (text: string): boolean => /^(\d+ (ft|in)[\d/ in]*|panel \d+)$/.test(text)

describe('sayInSpanish', () => {
  test.each(runs)('says every sentence of a run with %s', (_, requirements) => {
    const texts = requirements.flatMap(({ must, how, why, remedy, place, look }) => [
      must,
      how,
      why,
      remedy,
      place.name,
      ...(look.kind === 'choose' ? look.choices.map(({ label }) => label) : []),
    ])
    expect([...new Set(texts)].filter((text) => !isSame(text) && sayInSpanish(text) === text)).toEqual([])
  })

  test('keeps numbers and units as they are', () => {
    for (const [, requirements] of runs)
      for (const { must } of requirements) {
        const numbers = (text: string) => (text.match(/\d+(\/\d+)?/g) ?? []).join(' ')
        expect(numbers(sayInSpanish(must))).toBe(numbers(must))
      }
  })

  test('says every caution', () => {
    expect(cautions.filter((caution) => sayInSpanish(caution) === caution)).toEqual([])
  })

  test('names every instrument', () => {
    expect(instruments.map(({ name }) => name).filter((name) => sayInSpanish(name) === name)).toEqual([])
  })

  test('leaves what a sheet of an agency says as it is', () => {
    expect(sayInSpanish('The county plate is green.')).toBe('The county plate is green.')
  })
})

test('both languages have the same words to say, and none is left empty', () => {
  const keysOf = (value: unknown, path: string): string[] =>
    typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, part]) => keysOf(part, `${path}.${key}`))
      : [`${path}: ${typeof value}${value === '' ? ', empty' : ''}`]
  expect(keysOf(es, '')).toEqual(keysOf(en, ''))
})
