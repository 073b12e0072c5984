import ExcelJS from 'exceljs'
import { describe, expect, it } from 'vitest'
import { cellName, type Sheet } from './sheet.ts'
import { writeWorkbook } from './write-workbook.ts'

const properties = { title: 'A run', author: 'J. Okafor', writtenAt: '2026-05-12T10:05:00Z', page: '&P/&N' }

const sheet = (rows: Sheet['rows']): Sheet => ({
  name: 'Sheet',
  page: 'portrait',
  columns: [
    { header: 'Item', width: 20, decimals: null },
    { header: 'Length (ft)', width: 12, decimals: 4 },
  ],
  rows,
})

async function readBack(bytes: Uint8Array): Promise<ExcelJS.Worksheet> {
  const workbook = new ExcelJS.Workbook()
  await workbook.xlsx.load(bytes.slice().buffer as ArrayBuffer)
  return workbook.getWorksheet('Sheet')!
}

describe('a workbook', () => {
  it('keeps numbers numbers, sums formulas with their results, and texts texts', async () => {
    const rows = [
      ['panel 1', 12.5],
      ['=1+1', 9.375],
      ['total', { formula: `SUM(${cellName(1, 0)}:${cellName(1, 1)})`, result: 21.875 }],
    ]
    const read = await readBack(await writeWorkbook([sheet(rows)], properties))
    expect(read.getCell('B2').value).toBe(12.5)
    expect(read.getCell('A3')).toMatchObject({ value: '=1+1', type: ExcelJS.ValueType.String })
    expect(read.getCell('B4').value).toEqual({ formula: 'SUM(B2:B3)', result: 21.875 })
    expect(read.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 })
  })

  it.each(['=cmd()', '+1', '-1', '@SUM(A1)', "'quoted"])('stores %s as text', async (dangerous) => {
    const read = await readBack(await writeWorkbook([sheet([[dangerous, null]])], properties))
    expect(read.getCell('A2')).toMatchObject({ value: dangerous, type: ExcelJS.ValueType.String })
  })

  it('takes what XML cannot hold out of a text, and cuts one that no cell can hold', async () => {
    const rows = [
      ['bell \u0007 half \ud83d pair 🚧 \u05e9\u05dc\u05d5\u05dd', null],
      ['x'.repeat(40_000), null],
    ]
    const read = await readBack(await writeWorkbook([sheet(rows)], properties))
    expect(read.getCell('A2').value).toBe('bell \ufffd half \ufffd pair 🚧 \u05e9\u05dc\u05d5\u05dd')
    expect(String(read.getCell('A3').value)).toHaveLength(32_767)
  })

  it('states for each row a height that holds every line of its longest cell', async () => {
    // 41 letters in a column of 20 need at least three lines of 15 points, and two lines are written as two.
    const rows = [
      ['one', 1],
      ['a rail that is bolted to every post of it', 'short'],
      ['a\nb', null],
      ['x'.repeat(40_000), null],
    ]
    const read = await readBack(await writeWorkbook([sheet(rows)], properties))
    const heights = [1, 2, 3, 4, 5].map((row) => read.getRow(row).height)
    expect(heights[0]).toBeGreaterThanOrEqual(15)
    expect(heights[1]).toBe(15)
    expect(heights[2]).toBeGreaterThanOrEqual(45)
    expect(heights[3]).toBe(30)
    expect(heights[4]).toBe(409)
  })

  it('names columns beyond Z', () => {
    expect([cellName(25, 0), cellName(26, 0), cellName(701, 0), cellName(702, 0)]).toEqual(['Z2', 'AA2', 'ZZ2', 'AAA2'])
  })
})
