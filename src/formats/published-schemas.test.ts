import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import type { BrokenFile } from '../../test/fixtures/broken-files.ts'
import { brokenDeviceFiles, validDeviceFiles } from '../../test/fixtures/device-files.ts'
import { brokenManifests, validManifests } from '../../test/fixtures/handover-manifests.ts'
import { brokenReadings, validReadings } from '../../test/fixtures/readings-files.ts'
import { brokenRuns, validRuns } from '../../test/fixtures/run-files.ts'
import { brokenSheets, validSheets } from '../../test/fixtures/sheet-files.ts'
import { brokenSites, validSites } from '../../test/fixtures/site-files.ts'
import { type PublishedFormat, publishedFormats, publishedPath, publishedSchema } from './published-schemas.ts'

// Whether reading the files accepts and refuses them is tested beside each format, with the same fixtures.
const fixtures: Readonly<Record<PublishedFormat, { valid: readonly unknown[]; broken: readonly BrokenFile[] }>> = {
  sheet: { valid: validSheets, broken: brokenSheets },
  run: { valid: validRuns, broken: brokenRuns },
  site: { valid: validSites, broken: brokenSites },
  readings: { valid: validReadings, broken: brokenReadings },
  handover: { valid: validManifests, broken: brokenManifests },
  device: { valid: validDeviceFiles, broken: brokenDeviceFiles },
}

describe.each(publishedFormats)('the published schema of a %s file', (format) => {
  const published: object = JSON.parse(readFileSync(new URL(`../../${publishedPath(format)}`, import.meta.url), 'utf8'))
  // Dates are also held to a pattern, which checks them fully.
  const matches = new Ajv2020({ allErrors: true, validateFormats: false, allowUnionTypes: true }).compile(published)
  const { valid, broken } = fixtures[format]

  test('is what the code checks (else run npx tsx scripts/write-schemas.ts)', () => {
    expect(published).toEqual(publishedSchema(format))
  })

  test.each(valid.map((raw, i) => [i + 1, raw] as const))('accepts valid file %i', (_, raw) => {
    matches(raw)
    expect(matches.errors ?? []).toEqual([])
  })

  test.each(broken.map((file) => [file.inSchema ? 'refuses' : 'cannot tell', file.title, file] as const))(
    '%s %s',
    (_, __, { raw, inSchema }) => {
      expect(matches(raw)).toBe(!inSchema)
    },
  )

  test('is tried with at least eight files that it refuses', () => {
    expect(broken.filter(({ inSchema }) => inSchema).length).toBeGreaterThanOrEqual(8)
  })
})
