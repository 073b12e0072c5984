import { describe, expect, test } from 'vitest'
import { printableRanges } from '../../../src/documents/pdf/printable-ranges.ts'
import { typeset } from '../../../src/documents/pdf/typeset.ts'
import { fileOf, isInstalled, textOf } from './outside-programs.ts'

/** Sets each character alone, in the documents' fonts; the standard refuses one that no font has. */
const template = `
#let data = json(bytes(sys.inputs.data))
#set document(title: "characters", date: datetime(year: 2026, month: 1, day: 1))
#set page(height: auto)
#set text(font: ("Libertinus Serif", "DejaVu Sans Mono"), fallback: false, weight: data.weight)
#for letter in data.letters { block(letter) }
`

const letters = printableRanges
  .trim()
  .split(/\s+/)
  .flatMap((range) => {
    const [from = 0, to = from] = range.split('-').map((end) => Number.parseInt(end, 16))
    return Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i))
  })

describe('the fonts that the typesetter carries', () => {
  test.each(['regular', 'bold'])('show every printable character, %s', async (weight) => {
    expect(letters.length).toBeGreaterThan(3_000)
    expect((await typeset(template, { letters, weight }, new Map())).length).toBeGreaterThan(0)
  })

  test.skipIf(!isInstalled('pdftotext'))(
    'print fractions of an inch that pdftotext reads back, none of them boxed',
    async () => {
      const fractions = ['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']
      for (const weight of ['regular', 'bold']) {
        const pdf = await typeset(template, { letters: fractions, weight }, new Map())
        // One glyph each: were one missing, the standard would refuse the document.
        expect(textOf(fileOf(pdf, `fractions-${weight}.pdf`)).trim()).toBe(fractions.join(' '))
      }
    },
  )

  test('lack an emoji, and the typesetter says so', async () => {
    const emoji = typeset(template, { letters: ['😀'], weight: 'regular' }, new Map())
    await expect(emoji).rejects.toThrow(/😀.*could not be displayed/)
  })
})
