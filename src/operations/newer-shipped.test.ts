import { describe, expect, it } from 'vitest'
import { confirmStatement } from '../core/hardware/confirm-statement.ts'
import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { statementsOf } from '../core/hardware/sheet-statements.ts'
import { sheetFromValue } from '../formats/sheet/sheet-file.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { unconfirmedThere } from './compare-sheets.ts'
import { newerShipped, shippedBaseOf, withConfirmationsOf } from './newer-shipped.ts'

const shipped = shippedSheets.find(({ id }) => id === 'flared-terminal-31')!
const document = { title: 'Standard drawing of an invented county', edition: '2026' }
const confirmed = (sheet: HardwareSheet, place: string) =>
  confirmStatement(sheet, place, { document, page: '12', by: 'R. Quist', on: '2026-11-28' })
const own: HardwareSheet = confirmed(
  confirmed(
    { ...shipped, version: `${shipped.version}.1`, basedOn: { id: shipped.id, version: shipped.version } },
    'railHeight',
  ),
  'lap',
)
/** What a later program would ship: another rail height, all else alike. */
const newer: HardwareSheet = { ...shipped, version: '9.0.0', railHeight: { ...shipped.railHeight, low: 30.5 } }
const later = new Map([[newer.id, newer]])

describe('a newer shipped edition', () => {
  it('is known of an own edition, of a copy, and of own editions from before what they began from was noted', () => {
    const { basedOn: _, ...unnoted } = own
    const copy = { ...own, id: 'county-terminal', version: '1' }
    for (const sheet of [own, unnoted, copy]) {
      expect(newerShipped(sheet, later)?.version).toBe('9.0.0')
      expect(newerShipped(sheet)).toBe(null)
    }
    expect(newerShipped({ ...copy, basedOn: undefined }, later)).toBe(null)
    expect(newerShipped(newer, later)).toBe(null)
    expect(newerShipped({ ...own, basedOn: { id: own.id, version: '9.0.0' } }, later)).toBe(null)
  })

  it('is noted as what an edition of a shipped sheet begins from, and kept by later ones', () => {
    expect(shippedBaseOf(shipped)).toEqual({ id: shipped.id, version: shipped.version })
    expect(shippedBaseOf(own)).toEqual({ id: shipped.id, version: shipped.version })
    expect(shippedBaseOf({ ...own, basedOn: undefined })).toBe(null)
  })

  it('takes over what was confirmed where it states the same, and nothing else', () => {
    const next = withConfirmationsOf(own, newer)
    const checked = statementsOf(next).filter(({ cited }) => cited.checked !== undefined)
    expect(checked.map(({ place }) => place)).toEqual(['lap'])
    expect(next.sources[checked[0]!.cited.source]).toEqual(document)
    expect(next.railHeight).toEqual(newer.railHeight)
    expect(unconfirmedThere(own, next).map(({ place, what }) => [place, what])).toEqual([['railHeight', 'values']])
    expect(sheetFromValue('next.json', next).ok).toBe(true)
  })
})
