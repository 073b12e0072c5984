import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { glossaryPage } from '../../../scripts/glossary-page.ts'
import { figureKinds } from '../../core/hardware/hardware-sheet.ts'
import { fetchWords } from '../messages.ts'
import { termFigures } from './term-figures.ts'
import { termsOfFigure } from './terms-of-figure.ts'

await fetchWords()

test('every kind of figure that the sheets have is drawn for its word', () => {
  expect([...termFigures().keys()].toSorted()).toEqual([...figureKinds].toSorted())
})

test('a figure stands at one word', () => {
  const first = Object.values(termsOfFigure).map(([term]) => term)
  expect(new Set(first).size).toBe(first.length)
})

test('docs/glossary.md says the same (else run npx tsx scripts/write-glossary.ts)', () => {
  expect(readFileSync(new URL('../../../docs/glossary.md', import.meta.url), 'utf8')).toBe(glossaryPage())
})
