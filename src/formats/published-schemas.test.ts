import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import type { BrokenFile } from '../../test/fixtures/broken-files.ts'
import { brokenDeviceFiles, validDeviceFiles } from '../../test/fixtures/device-files.ts'
import { brokenManifests, validManifests } from '../../test/fixtures/handover-manifests.ts'
import { brokenReadings, validReadings } from '../../test/fixtures/readings-files.ts'
import { brokenRecordFiles, validRecordFiles } from '../../test/fixtures/record-files.ts'
import { brokenRuns, validRuns } from '../../test/fixtures/run-files.ts'
import { brokenSheets, validSheets } from '../../test/fixtures/sheet-files.ts'
import { brokenSites, validSites } from '../../test/fixtures/site-files.ts'
import { fieldDescriptions } from './field-descriptions.ts'
import { type PublishedFormat, publishedFormats, publishedPath, publishedSchema } from './published-schemas.ts'

// Whether reading the files accepts and refuses them is tested beside each format, with the same fixtures.
const fixtures: Readonly<Record<PublishedFormat, { valid: readonly unknown[]; broken: readonly BrokenFile[] }>> = {
  sheet: { valid: validSheets, broken: brokenSheets },
  run: { valid: validRuns, broken: brokenRuns },
  site: { valid: validSites, broken: brokenSites },
  readings: { valid: validReadings, broken: brokenReadings },
  handover: { valid: validManifests, broken: brokenManifests },
  record: { valid: validRecordFiles, broken: brokenRecordFiles },
  device: { valid: validDeviceFiles, broken: brokenDeviceFiles },
}

/** Fields of a schema that do not say what they mean; of one that has a single value, that value says it. */
function undescribed(schema: unknown, path: string): string[] {
  if (typeof schema !== 'object' || schema === null) return []
  const fields = 'properties' in schema ? Object.entries(schema.properties as object) : []
  const silent = fields.filter(([, field]) => typeof field === 'object' && !isDescribed(field)).map(([name]) => name)
  return [
    ...silent.map((name) => `${path}.${name}`),
    ...Object.entries(schema).flatMap(([key, part]) => undescribed(part, `${path}.${key}`)),
  ]
}

const isDescribed = (field: object) => 'description' in field || 'const' in field || '$ref' in field

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

  test('says what each field means', () => {
    expect(undescribed(published, '')).toEqual([])
  })

  test('is tried with at least eight files that it refuses', () => {
    expect(broken.filter(({ inSchema }) => inSchema).length).toBeGreaterThanOrEqual(8)
  })
})

test('each description is that of a field or shared shape', () => {
  const paths = publishedFormats.flatMap((format) => [`${format} file`, ...fieldsOf(publishedSchema(format), format)])
  const idle = Object.keys(fieldDescriptions).filter((key) => !paths.some((path) => `.${path}`.endsWith(`.${key}`)))
  expect(idle).toEqual([])
})

/** Paths of the fields of a schema: names of fields, and of shared shapes, joined by points. */
function fieldsOf(schema: unknown, path: string): string[] {
  if (typeof schema !== 'object' || schema === null) return []
  return Object.entries(schema).flatMap(([key, part]) => {
    if (key === '$defs') return Object.entries(part).flatMap(([id, shape]) => [id, ...fieldsOf(shape, id)])
    if (key !== 'properties') return fieldsOf(part, path)
    return Object.entries(part).flatMap(([name, field]) => [`${path}.${name}`, ...fieldsOf(field, `${path}.${name}`)])
  })
}
