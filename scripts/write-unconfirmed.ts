// Writes docs/unconfirmed-numbers.md: every number in the shipped data that nobody checked against a document.
import { writeFileSync } from 'node:fs'
import { unconfirmedNumbers } from '../src/operations/unconfirmed-numbers.ts'

writeFileSync(new URL('../docs/unconfirmed-numbers.md', import.meta.url), unconfirmedNumbers())
