import { describe, expect, test } from 'vitest'
import { inventedEnd, inventedSystem } from '../../test/fixtures/sheet-files.ts'
import { statementsOf } from '../core/hardware/sheet-statements.ts'
import { landedSheets } from '../sheets/landed-sheets.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { english } from './english.ts'
import { thingWords, useWords, valueWords } from './say-sheet.ts'
import { spanish } from './spanish.ts'

const sheets = [...shippedSheets, ...landedSheets, inventedSystem, inventedEnd]

describe.each([
  ['English', english(null)],
  ['Spanish', spanish(null)],
] as const)('what a sheet states is said in %s', (_, print) => {
  test.each(sheets.map((sheet) => [`${sheet.id} ${sheet.version}`, sheet] as const))('of %s', (_, sheet) => {
    const texts = statementsOf(sheet).flatMap(({ about, values }) => [
      thingWords(about, print),
      useWords(about, print),
      ...values.map((value) => valueWords(value, print)),
    ])
    expect(texts.filter((text) => text === '' || /undefined|notStated|\[object/.test(text))).toEqual([])
  })
})

test('a value is said in its own unit and by what it is', () => {
  const said = (place: string) => {
    const { about, values } = statementsOf(shippedSheets.find(({ id }) => id === 'flared-terminal-27-3-4')!).find(
      (one) => one.place === place,
    )!
    return [thingWords(about, english(null)), ...values.map((value) => valueWords(value, english(null)))]
  }
  expect(said('railHeight').slice(0, 2)).toEqual(['Rail height', '27 3/4 in to 30 in'])
  expect(said('posts[2]')).toContain('hinge bolt on the side: away from the head')
  expect(said('posts[2]')).toContain('along the rail from the origin: 6 ft 3 in')
})
