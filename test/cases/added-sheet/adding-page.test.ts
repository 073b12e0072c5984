import { existsSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const root = new URL('../../../', import.meta.url)
const page = readFileSync(new URL('docs/adding.md', root), 'utf8')

test('every place that docs/adding.md names is there', () => {
  const named = [...page.matchAll(/`(?:npx tsx )?((?:src|test|scripts)\/[\w./-]+)`/g)].map(([, path]) => path!)
  const places = named.filter((path) => !/[A-Z]{4}/.test(path))
  expect(places.length).toBeGreaterThan(20)
  expect(places.filter((path) => !existsSync(new URL(path, root)))).toEqual([])
})
