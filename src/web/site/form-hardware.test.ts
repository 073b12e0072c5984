import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { type Shelf, sheetShelf, shippedShelf } from '../../operations/sheet-shelf.ts'
import { type Draft, withValue } from '../form/draft.ts'
import { fetchWords } from '../messages.ts'
import { exampleSite } from './example-site.ts'
import { hardwareFields, withNamedSheets } from './form-hardware.ts'
import { solveSite } from './solve-site.ts'

await fetchWords()

const invented = JSON.parse(
  readFileSync(new URL('../../../test/cases/added-sheet/invented-terminal-31.json', import.meta.url), 'utf8'),
) as HardwareSheet
const shelf = sheetShelf([invented])
const chosen = withValue(exampleSite, 'barrier.approachEnd', invented.id)

const offered = (draft: Draft, on: Shelf): readonly (readonly [string, string])[] =>
  hardwareFields(draft, on)
    .find(({ place }) => place === 'barrier.approachEnd')!
    .choices.map(({ value, label }) => [value, label] as const)

test('a sheet of this device is offered beside those that ship, each once', () => {
  expect(offered(exampleSite, shippedShelf).map(([id]) => id)).not.toContain(invented.id)
  const ids = offered(withNamedSheets(shelf, chosen), shelf).map(([id]) => id)
  expect(ids).toContain(invented.id)
  expect(new Set(ids).size).toBe(ids.length)
})

test('a site that names it is solved with it, and so is the run that is made of it', () => {
  expect(solveSite(chosen).results?.().report.run).toBeNull()
  const { site, results, problems } = solveSite(withNamedSheets(shelf, chosen))
  expect(problems).toEqual([])
  expect(site?.sheets).toEqual([invented])
  expect(results?.().report.run).toMatchObject({ first: { sheet: invented.id }, sheets: [{ id: invented.id }] })
})

test('a sheet of this device that the site does not name is left on the shelf', () => {
  expect(withNamedSheets(shelf, exampleSite)).toBe(exampleSite)
})

test('the edition that a site holds stays, and is the one that is named on its form', () => {
  const held = { ...invented, version: '0.0.1', name: 'As it was when the site was made' }
  const site = { ...chosen, sheets: [held] }
  expect(withNamedSheets(shelf, site)).toBe(site)
  expect(offered(site, shelf)).toContainEqual([invented.id, held.name])
})
