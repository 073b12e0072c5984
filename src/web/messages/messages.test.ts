import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'

/** Every file of words that there is in Spanish, with the English one beside it. */
const pairs = ['./', '../data/messages/'].flatMap((folder) =>
  readdirSync(new URL(folder, import.meta.url))
    .filter((file) => /(?:^|-)es\.ts$/.test(file))
    .map((file) => [`${folder}${file.replace(/es\.ts$/, 'en.ts')}`, `${folder}${file}`] as const),
)

/** What stands there by its path: what kind of thing, and whether it is left empty. */
const keysOf = (value: unknown, path: string): string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, part]) => keysOf(part, `${path}.${key}`))
    : [`${path}: ${typeof value}${value === '' ? ', empty' : ''}`]

test.each(pairs)('%s and its Spanish file have the same words, and none is left empty', async (en, es) => {
  const [english, spanish] = await Promise.all([en, es].map((file) => import(/* @vite-ignore */ file)))
  const keys = Object.values(english).flatMap((words) => keysOf(words, ''))
  expect(keys.length).toBeGreaterThan(5)
  expect(Object.values(spanish).flatMap((words) => keysOf(words, ''))).toEqual(keys)
})

test('no file of words is passed over', () => expect(pairs.length).toBeGreaterThan(10))
