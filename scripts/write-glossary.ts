// Writes docs/glossary.md from the words of the page.
import { writeFileSync } from 'node:fs'
import { glossaryPage } from './glossary-page.ts'

writeFileSync(new URL('../docs/glossary.md', import.meta.url), glossaryPage())
