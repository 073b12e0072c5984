import { expect, test } from 'vitest'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { isLaterEdition } from './later-edition.ts'
import { nextEdition } from './next-edition.ts'

test('a changed sheet gets a later edition, and never that of a sheet that ships', () => {
  for (const { id, version } of shippedSheets) {
    const own = nextEdition({ id, version })
    expect([own, isLaterEdition(own, version)]).toEqual([`${version}.1`, true])
    const [major, minor] = version.split('.').map(Number)
    expect(isLaterEdition(`${major}.${minor! + 1}.0`, own)).toBe(true)
    const next = nextEdition({ id, version: own })
    expect([next, isLaterEdition(next, own)]).toEqual([`${version}.2`, true])
  }
  expect(nextEdition({ id: 'county-anchor', version: '1.9' })).toBe('1.10')
  expect(nextEdition({ id: 'county-anchor', version: 'draft' })).toBe('draft.1')
})
