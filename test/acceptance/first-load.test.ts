import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'

const built = fileURLToPath(new URL('../../dist/web/assets/', import.meta.url))
const files = readdirSync(built).filter((file) => file.endsWith('.js'))

/** The page, its worker, and what the worker reads a run with. */
const page = ['index', 'device-worker', 'kept-run'] as const
const run = ['run-view', 'drawn-run'] as const

// Counted in the built files: what a first visit fetches before it can be used, as the bench sees it in a browser.
test.each([
  ['the list of runs', page, 114],
  ['a run', [...page, ...run], 172],
  ['a run, at one of its requirements', [...page, ...run, 'entry-panel', 'figure-of'], 194],
  // Its view says what the model says, so that the words for that are fetched with it.
  ['a site', ['index', 'site-view', 'saying'], 176],
] as const)('the script of %s is no more than it may be, as gzip packs it', (_, parts, kilobytes) => {
  const needed = new Set<string>()
  for (const part of parts) addWithImports(fileOf(part), needed)
  const bytes = [...needed].reduce((sum, file) => sum + gzipSync(readFileSync(built + file), { level: 9 }).length, 0)
  expect(bytes).toBeGreaterThan(50_000)
  expect(bytes).toBeLessThanOrEqual(kilobytes * 1000)
})

function fileOf(part: string): string {
  const found = files.filter((file) => new RegExp(`^${part}-.{8}[.]js$`).test(file))
  expect(found, part).toHaveLength(1)
  return found[0]!
}

/** A file and all that it imports before it runs; what it fetches later stands in `import(…)`. */
function addWithImports(file: string, to: Set<string>): void {
  if (to.has(file)) return
  to.add(file)
  const code = readFileSync(built + file, 'utf8')
  for (const [, imported] of code.matchAll(/(?:from|import)\s*["'`][.]\/([^"'`]+[.]js)["'`]/g))
    addWithImports(imported!, to)
}
