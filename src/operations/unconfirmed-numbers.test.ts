import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { english } from '../words/english.ts'
import { unconfirmedNumbers } from './unconfirmed-numbers.ts'

it('the page of unconfirmed numbers is up to date (else run npx tsx scripts/write-unconfirmed.ts)', () => {
  const page = readFileSync(new URL('../../docs/unconfirmed-numbers.md', import.meta.url), 'utf8')
  expect(page).toBe(unconfirmedNumbers(english(null)))
  expect(page).toContain('RDG 2011 Table 5-10(b)')
})
