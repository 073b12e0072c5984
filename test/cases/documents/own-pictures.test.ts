// A picture of a sheet's own is printed with what it shows; one that cannot be read costs nobody the document.
import { expect, test } from 'vitest'
import type { EndSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import type { JudgedRun } from '../../../src/operations/judge-readings.ts'
import { writeRunCrewSheet } from '../../../src/operations/write-run-crew-sheet.ts'
import { pocketCard } from '../../../src/operations/write-sheet-cards.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { smallPng } from '../../fixtures/sheet-files.ts'
import { judgedDemo } from '../exports/export-project.ts'
import { fileOf, isInstalled, outputOf, qpdfCheck, textOf } from './outside-programs.ts'

/** The same file with one letter of its pixels another, so that they cannot be unpacked. */
const torn = Buffer.from(smallPng, 'base64').fill(0xff, 45, 55).toString('base64')

/** The demo with pictures at the first two rules of its first end. */
function pictured(judged: JudgedRun): JudgedRun {
  const { first } = judged.model
  if (first.kind !== 'unit') throw new RangeError('the demo has an end unit first')
  const pictures = [smallPng, torn]
  let next = 0
  const parts = first.sheet.parts.map((part) => ({
    ...part,
    rules: part.rules.map((rule) => {
      const base64 = pictures[next++]
      return base64 === undefined
        ? rule
        : { ...rule, picture: { type: 'image/png' as const, base64, alt: `Picture ${next} of a test` } }
    }),
  }))
  const translations = { es: { ...first.sheet.translations?.es, 'Picture 1 of a test': 'Imagen 1 de una prueba' } }
  const sheet: EndSheet = { ...first.sheet, parts, translations }
  return { ...judged, model: { ...judged.model, first: { ...first, sheet } } }
}

test.skipIf(!isInstalled('pdftotext') || !isInstalled('pdfimages') || !isInstalled('qpdf'))(
  'crew sheet and pocket card show the own pictures of sheets, said in their language, and are whole where one cannot be read',
  async () => {
    const printing = {
      ...({ page: 'letter', lie: 'portrait' } as const),
      ...{ printedAt: '2026-11-28T09:00:00Z', author: 'R. Quist', hash: '0'.repeat(64), print: spanish(null) },
    }
    const nothing = { ticket: null, entries: { tickets: [] }, onRoad: null }
    const of = async (judged: JudgedRun, name: string) =>
      fileOf(await writeRunCrewSheet(judged, nothing, printing), `${name}.pdf`)
    const [plain, withPictures] = [await of(judgedDemo(), 'plain'), await of(pictured(judgedDemo()), 'pictured')]
    const imagesIn = (path: string) => [...outputOf('pdfimages', '-list', path).matchAll(/ image +(\d+) +(\d+)/g)]
    expect(imagesIn(plain)).toEqual([])
    expect(imagesIn(withPictures).map(([, width, height]) => [width, height])).toEqual([['3', '2']])
    const text = textOf(withPictures)
    expect(text).toContain('en imágenes de las fichas')
    expect(text).toContain('Imagen 1 de una prueba')
    expect(text).toContain('Picture 2 of a test')
    expect(textOf(plain)).not.toContain('en imágenes de las fichas')
    expect(qpdfCheck(withPictures)).toBe(0)

    // And so does the pocket card.
    const { first, system } = pictured(judgedDemo()).model
    if (first.kind !== 'unit') throw new RangeError('the demo has an end unit first')
    const card = fileOf(await pocketCard(first.sheet, system, { ...printing, isChanged: false }), 'card.pdf')
    expect(imagesIn(card).map(([, width, height]) => [width, height])).toEqual([['3', '2']])
    expect(textOf(card)).toContain('Imagen 1 de una prueba')
    expect(textOf(card)).toContain('Picture 2 of a test')
  },
)
