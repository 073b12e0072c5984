import { describe, expect, test } from 'vitest'
import type { HardwareSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { writeRun } from '../../../src/formats/run/write-run.ts'
import { sheetDifferences } from '../../../src/operations/sheet-differences.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { demoVersions } from '../../fixtures/three-versions.ts'

const [pinned] = demoVersions(['v1'])
const run = pinned!
const shelfWith = (id: string, change: (sheet: HardwareSheet) => object) =>
  new Map(shippedSheets.map((sheet) => [sheet.id, sheet.id === id ? (change(sheet) as HardwareSheet) : sheet]))
const heights = (low: number, version: string) =>
  shelfWith('w-beam-midspan-31', (sheet) => ({ ...sheet, version, railHeight: { ...sheet.railHeight, low } }))
const system = run.sheets.find(({ id }) => id === 'w-beam-midspan-31')!

describe('the sheets of a run beside those on the shelf', () => {
  test('are the same as long as nothing on the shelf changed, also after the run was written and read', () => {
    expect(sheetDifferences(run)).toEqual([])
    const again = readRun('run', writeRun(run))
    expect(again.ok && sheetDifferences(again.value)).toEqual([])
  })

  test('differ by both versions and by each value that is another, at its place', () => {
    expect(sheetDifferences(run, heights(30.5, '9.0.0'))).toEqual([
      {
        ...{ sheet: system.id, pinned: system.version, onShelf: '9.0.0', isNewer: true },
        values: [{ place: 'railHeight.low', pinned: system.railHeight.low, onShelf: 30.5 }],
      },
    ])
  })

  test('differ where the edition is the same and the content is not, or is an older one: then it is none that is newer', () => {
    for (const version of [system.version, '0.9.9', 'of an agency'])
      expect(sheetDifferences(run, heights(30.5, version))).toMatchObject([{ onShelf: version, isNewer: false }])
    // 1.10 is after 1.9.
    const held = { ...run, sheets: run.sheets.map((sheet) => ({ ...sheet, version: '1.9.0' })) }
    expect(sheetDifferences(held, heights(30.5, '1.10.0'))[0]).toMatchObject({ pinned: '1.9.0', isNewer: true })
  })

  test('name what is put in between by itself, not all that comes after it', () => {
    const part = { id: 'added', name: 'Added part', rules: [] }
    const shelf = shelfWith(system.id, (sheet) => ({ ...sheet, version: '9.0.0', parts: [part, ...sheet.parts] }))
    expect(sheetDifferences(run, shelf)[0]!.values).toEqual([
      { place: 'parts[added].id', onShelf: 'added' },
      { place: 'parts[added].name', onShelf: 'Added part' },
    ])
  })

  test('are none where the run is not pinned, and where the shelf has no sheet of that name', () => {
    const { version: _, ...asked } = run
    expect(sheetDifferences(asked, heights(30.5, '9.0.0'))).toEqual([])
    expect(sheetDifferences(run, new Map())).toEqual([])
  })

  test('are said in either language', () => {
    const said = { kind: 'other sheet on shelf', sheet: 'w-beam', pinned: '1.0.0', onShelf: '1.1.0' } as const
    expect(english(null).say({ ...said, isNewer: true })).toBe(
      'The shelf has a newer edition of this sheet, w-beam 1.1.0; this run is judged by the one it was laid out with, 1.0.0.',
    )
    expect(english(null).say({ ...said, isNewer: false })).toBe(
      'The shelf has another edition of this sheet, w-beam 1.1.0; this run is judged by the one it was laid out with, 1.0.0.',
    )
    expect(english(null).say({ ...said, onShelf: '1.0.0', isNewer: false })).toBe(
      'The shelf has other content under this edition of the sheet, w-beam 1.0.0; this run is judged by what it was laid out with.',
    )
    expect(spanish(null).say({ ...said, isNewer: true })).toBe(
      'En el estante hay una edición más nueva de esta ficha, w-beam 1.1.0; este tramo se juzga por aquella con que se dispuso, 1.0.0.',
    )
  })
})
