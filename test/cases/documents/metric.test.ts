import ExcelJS from 'exceljs'
import { expect, test } from 'vitest'
import { sheetsInUse } from '../../../src/operations/sheets-in-use.ts'
import { fileOf, isInstalled, textOf } from './outside-programs.ts'
import { judgedOf, packetOfRun } from './packet-runs.ts'

/** A figure of inches, feet, miles or pounds, and what stands beside it. */
const imperial = /\d(?: 1?\d\/\d\d?)?(?:[ -](?:in|ft|feet|inch|inches|mi\/h|lbf)(?![\p{L}])|["′″]|' )/gu
/** `787.4 mm (31 in)`: what follows a metric figure in brackets has it beside. */
const besideMetric = /\d (?:mm|m|km\/h|N·m|kN)(?: x \d[\d.]* mm)? \([^()]*\)/g

/** Figures of `text` that stand alone, with what is round them. */
function figuresAlone(text: string): readonly string[] {
  const plain = text.replaceAll(besideMetric, '\u2026')
  return [...plain.matchAll(imperial)].map(({ index }) => plain.slice(Math.max(0, index - 50), index + 20))
}

test('a figure alone is found, and one that has its metric beside is none', () => {
  expect(figuresAlone('height 787.4 mm (31 in), stub 101.6 mm (4 in)')).toEqual([])
  expect(figuresAlone('height 31 in, a 4-in slot, 9 ft 4 1/2 in, 55 mi/h')).toHaveLength(5)
  expect(figuresAlone('panel 12 in the run, 3 inlets')).toHaveLength(1)
})

test.skipIf(!isInstalled('pdftotext'))(
  'no document of a metric run states a figure of the trade without the metric one before it',
  async () => {
    const files = await packetOfRun('metric')
    // What a document of others is called stays as it is called.
    const titles = sheetsInUse(judgedOf('metric').model).flatMap(({ sources }) =>
      Object.values(sources).map(({ title }) => title),
    )
    const withoutTitles = (text: string): string => titles.reduce((rest, title) => rest.replaceAll(title, ''), text)
    const pdfs = files.filter(({ name }) => name.endsWith('.pdf'))
    expect(pdfs.length).toBeGreaterThan(7)
    for (const { name, bytes } of pdfs)
      expect(figuresAlone(withoutTitles(textOf(fileOf(bytes, name)))), name).toEqual([])
    const book = new ExcelJS.Workbook()
    const xlsx = files.find(({ name }) => name === 'quantities.xlsx')!.bytes
    await book.xlsx.load(xlsx.slice().buffer as ArrayBuffer)
    const cells: string[] = []
    const heads: string[] = []
    book.eachSheet((sheet) =>
      sheet.eachRow((row, number) =>
        row.eachCell(({ value }) => {
          if (typeof value === 'string') (number === 1 ? heads : cells).push(value)
        }),
      ),
    )
    expect(figuresAlone(withoutTitles(cells.join(' | ')))).toEqual([])
    expect(cells).not.toContain('ft')
    // A column of inches has one of metres before it.
    const inches = heads.filter((head) => /\((in|ft)\)$/.test(head))
    expect(inches).toHaveLength(4)
    for (const head of inches) expect(heads).toContain(head.replace(/\(in\)$/, '(m)'))
  },
)
