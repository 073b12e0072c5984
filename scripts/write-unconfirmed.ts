// Writes docs/unconfirmed-numbers.md: every number in the shipped data that nobody checked against a document.
import { writeFileSync } from 'node:fs'
import { unconfirmedNumbers } from '../src/operations/unconfirmed-numbers.ts'
import { english } from '../src/words/english.ts'

writeFileSync(new URL('../docs/unconfirmed-numbers.md', import.meta.url), unconfirmedNumbers(english(null)))
