import { execFileSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { publishedFormats, publishedPath, publishedSchema } from '../src/formats/published-schemas.ts'

process.chdir(new URL('..', import.meta.url).pathname)
mkdirSync('docs/schemas', { recursive: true })
for (const format of publishedFormats)
  writeFileSync(publishedPath(format), `${JSON.stringify(publishedSchema(format), null, 2)}\n`)
execFileSync('npx', ['biome', 'format', '--write', ...publishedFormats.map(publishedPath)], { stdio: 'inherit' })
