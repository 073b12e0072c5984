import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { HardwareSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { unmarked } from '../../../src/core/hardware/marked-values.ts'
import { contentOf, sheetText } from '../../../src/core/hardware/sheet-text.ts'
import { placedTexts } from '../../../src/formats/sheet/sheet-texts.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'
import { spanish } from '../../../src/words/spanish.ts'

const landed = new URL('../../../src/sheets/landed/', import.meta.url)
const editions: readonly HardwareSheet[] = readdirSync(landed).map((name) =>
  JSON.parse(readFileSync(new URL(name, landed), 'utf8')),
)
const named = (sheets: readonly HardwareSheet[]) =>
  sheets.map((sheet) => [`${sheet.id} ${sheet.version}`, sheet] as const)

/** Sources keep the titles under which they are published. */
const textsOf = (sheet: object): readonly string[] =>
  placedTexts(sheet).flatMap(({ text, isOfSource }) => (isOfSource ? [] : [text]))

describe('a shipped sheet', () => {
  it.each(named(shippedSheets))('%s says all its texts in Spanish itself', (_, sheet) => {
    const texts = textsOf(sheet)
    expect(texts.length).toBeGreaterThan(10)
    expect(texts.filter((text) => sheet.translations?.es?.[text] === undefined)).toEqual([])
  })

  it.each(named(editions))('%s is said in Spanish as it is pinned, whatever edition it is', (_, sheet) => {
    const texts = textsOf(sheet)
    const said = texts.map((text) => spanish(null).say(sheetText(sheet, text)))
    expect(said.filter((text) => text.endsWith('(en)'))).toEqual([])
    expect(texts.map((text) => english(null).say(sheetText(sheet, text)))).toEqual(texts.map(unmarked))
  })
})

describe("a text of an agency's sheet", () => {
  const own = 'Apriete la tuerca.'
  const written = { id: 'anclaje-estatal', version: '1', language: 'es' } as const

  it('is shown as it stands and marked where the sheet has one language', () => {
    const said = sheetText(written, own)
    expect(spanish(null).say(said)).toBe(own)
    expect(english(null).say(said)).toBe('Apriete la tuerca. (es)')
    // The same words as a shipped sheet's: that sheet's Spanish is its own.
    const copied = sheetText({ id: 'state-anchor', version: '1.1.0' }, 'Replace the panel.')
    expect(spanish(null).say(copied)).toBe('Replace the panel. (en)')
  })

  it('is said in each language that the sheet has it in, and is the same text as before', () => {
    const said = sheetText({ ...written, translations: { en: { [own]: 'Tighten the nut.' } } }, own)
    expect(english(null).say(said)).toBe('Tighten the nut.')
    expect(spanish(null).say(said)).toBe(own)
    expect(contentOf(said)).toBe(contentOf(sheetText(written, own)))
    expect(contentOf(said)).not.toBe(contentOf(sheetText(written, 'Apriete la contratuerca.')))
  })
})
