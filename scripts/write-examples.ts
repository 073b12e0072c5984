// Writes examples/: files to try the command line on.
import { writeFileSync } from 'node:fs'
import { exampleFiles } from './example-files.ts'

for (const [name, text] of Object.entries(exampleFiles()))
  writeFileSync(new URL(`../examples/${name}`, import.meta.url), text)
