import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import editions from '../../sheets/editions.json' with { type: 'json' }
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { canonicalJson } from '../canonical-json.ts'

const landed = new URL('../../sheets/landed/', import.meta.url)
const nameOf = ({ id, version }: { readonly id: string; readonly version: string }) => `${id}-${version}.json`
const hashOf = (sheet: unknown) => createHash('sha256').update(canonicalJson(sheet)).digest('hex')

describe('the editions of the shipped sheets', () => {
  test.each(shippedSheets.map((sheet) => [sheet.id, sheet] as const))(
    '%s is what its version says; what was changed has a new version (scripts/write-editions.ts)',
    (_, sheet) => {
      const edition = editions.find(({ id, version }) => id === sheet.id && version === sheet.version)
      expect(edition?.sha256).toBe(hashOf(sheet))
    },
  )

  test.each(editions.map((edition) => [nameOf(edition), edition] as const))('%s is kept as it was', (name, edition) => {
    const kept = JSON.parse(readFileSync(new URL(name, landed), 'utf8'))
    expect(kept).toMatchObject({ id: edition.id, version: edition.version })
    expect(hashOf(kept)).toBe(edition.sha256)
  })

  test('each version has one content, and nothing is kept that has no version', () => {
    const names = editions.map(nameOf)
    expect(new Set(names).size).toBe(names.length)
    expect(readdirSync(landed).sort()).toEqual([...names].sort())
  })
})
