import { expect, test } from 'vitest'
import { inventedEnd } from '../../test/fixtures/sheet-files.ts'
import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { followTexts } from './follow-texts.ts'

const sheet: HardwareSheet = {
  ...inventedEnd,
  translations: { es: { 'Turn it.': 'Gírelo.', 'Invented.': 'Inventado.' } },
}
const from: HardwareSheet = { ...sheet, notice: 'Invented.' }
/** Both sheets have the text once, as a remedy. */
const saying = (text: string, one: HardwareSheet): HardwareSheet =>
  JSON.parse(JSON.stringify(one).replace(/("remedy":)"[^"]*"/, `$1${JSON.stringify(text)}`)) as HardwareSheet
const of = ({ translations, earlierTranslations }: HardwareSheet) => ({
  said: translations?.es?.['Turn it.'],
  earlier: earlierTranslations?.es,
})

test('a text that is changed keeps its translation as the earlier one, through every later change', () => {
  const second = followTexts(from, saying('Turn it round.', from))
  const before = { text: 'Turn it.', said: 'Gírelo.' }
  expect(of(second)).toEqual({ said: undefined, earlier: { 'Turn it round.': before } })
  expect(second.translations!.es).toEqual({ 'Invented.': 'Inventado.' })
  const third = followTexts(second, saying('Turn it about.', second))
  expect(of(third)).toEqual({ said: undefined, earlier: { 'Turn it about.': before } })
})

test('a text that is changed back is said as it was', () => {
  const second = followTexts(from, saying('Turn it round.', from))
  expect(of(followTexts(second, saying('Turn it.', second)))).toEqual({ said: 'Gírelo.', earlier: {} })
})

test('a translation that somebody takes away from a text that stands stays away', () => {
  const without = { ...from, translations: { es: { 'Invented.': 'Inventado.' } } }
  expect(of(followTexts(from, without))).toEqual({ said: undefined, earlier: undefined })
})
