import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTable, writeTable } from './table.ts'

const cellsOf = (text: string): unknown => {
  const read = readTable('texts.csv', text)
  return read.ok ? read.value.map(({ cells }) => cells) : read.error
}

describe('a table', () => {
  it('begins so that spreadsheets read UTF-8, and quotes only what needs it', () => {
    expect(
      writeTable([
        ['key', 'señal'],
        ['a,b', 'he said "no"\nand left'],
      ]),
    ).toBe('\ufeffkey,señal\r\n"a,b","he said ""no""\nand left"\r\n')
  })

  // The beginnings that spreadsheets take for formulas, as security guides for such files list them.
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', "'=1", "''-2"])(
    'writes %j as no formula and reads it back',
    (cell) => {
      const text = writeTable([
        ['key', 'said'],
        ['a', cell],
      ])
      expect(text.split('\r\na,')[1]).toMatch(/^"?'/)
      expect(cellsOf(text)).toEqual([
        ['key', 'said'],
        ['a', cell],
      ])
    },
  )

  it('comes back as it left, whatever stands in its cells', () => {
    const odd = fc.constantFrom('"', ',', ';', '\n', '\r\n', '=', "'", '\t', ' ', 'a', 'ñ')
    const cell = fc.array(odd, { maxLength: 6 }).map((parts) => parts.join(''))
    const row = fc.tuple(fc.constant('key'), cell, cell)
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), (rows) => {
        expect(cellsOf(writeTable([['key', 'en', 'es'], ...rows]))).toEqual([['key', 'en', 'es'], ...rows])
      }),
      { seed: 15 },
    )
  })

  it.each([';', '\t'])('is read with cells apart by %j, as spreadsheets of other languages write it', (separator) => {
    expect(cellsOf(`key${separator}en\r\nplate${separator}"one; two, three"\n`)).toEqual([
      ['key', 'en'],
      ['plate', 'one; two, three'],
    ])
  })

  it('counts rows as a spreadsheet does, and passes over empty ones', () => {
    const read = readTable('texts.csv', 'key,en\n"a\nb",c\n,\n\nd,')
    expect(read.ok && read.value).toEqual([
      { row: 1, cells: ['key', 'en'] },
      { row: 2, cells: ['a\nb', 'c'] },
      { row: 5, cells: ['d', ''] },
    ])
  })

  it.each([
    ['key,en\na,"open', 'row 2', 'closing quote'],
    ['key,en\na,"b"c\n', 'row 2', 'end of cell'],
    ['key,en\na,se\ufffdal\n', 'line 2', 'text in UTF-8'],
  ])('is refused as %j', (text, place, kind) => {
    expect(cellsOf(text)).toEqual([{ file: 'texts.csv', place, expected: { kind }, found: null }])
  })
})
