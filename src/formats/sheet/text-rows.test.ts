import { expect, test } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { english } from '../../words/english.ts'
import { besideWords } from '../../words/say-sheet.ts'
import { spanish } from '../../words/spanish.ts'
import { textRows } from './text-rows.ts'

test.each([
  ['English', english(null)],
  ['Spanish', spanish(null)],
] as const)('of each text of a sheet it is said in %s what it is, by no path', (_, print) => {
  const said = shippedSheets.flatMap((sheet) => textRows(sheet, 'es').map(({ place }) => besideWords(place, print)))
  expect(said.length).toBeGreaterThan(100)
  expect(said.filter((text) => /[[\].]|undefined/.test(text))).toEqual([])
})
