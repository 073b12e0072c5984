import { expect, test } from 'vitest'
import { en as deviceEn } from '../data/messages/en.ts'
import { es as deviceEs } from '../data/messages/es.ts'
import { en } from './en.ts'
import { es } from './es.ts'
import { filesEn } from './files-en.ts'
import { filesEs } from './files-es.ts'
import { glossaryEn } from './glossary-en.ts'
import { glossaryEs } from './glossary-es.ts'
import { runFormEn } from './run-form-en.ts'
import { runFormEs } from './run-form-es.ts'
import { sceneEn } from './scene-en.ts'
import { sceneEs } from './scene-es.ts'
import { shelfEn } from './shelf-en.ts'
import { shelfEs } from './shelf-es.ts'
import { siteEn } from './site-en.ts'
import { siteEs } from './site-es.ts'

test.each([
  ['the page', en, es],
  ['a site', siteEn, siteEs],
  ['the form of a run', runFormEn, runFormEs],
  ['this device', deviceEn, deviceEs],
  ['files', filesEn, filesEs],
  ['the shelf', shelfEn, shelfEs],
  ['the glossary', glossaryEn, glossaryEs],
  ['a scene', sceneEn, sceneEs],
])('both languages have the same words for %s, and none is left empty', (_, english, spanish) => {
  const keysOf = (value: unknown, path: string): string[] =>
    typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, part]) => keysOf(part, `${path}.${key}`))
      : [`${path}: ${typeof value}${value === '' ? ', empty' : ''}`]
  expect(keysOf(spanish, '')).toEqual(keysOf(english, ''))
})
