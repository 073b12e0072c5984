import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readDeviceFile } from './entry/device-file.ts'
import { manifestShape } from './handover/handover-shape.ts'
import { checkShape } from './read-json.ts'
import { readReadings } from './readings/readings-file.ts'
import { readRun } from './run/run-file.ts'
import { readSheet } from './sheet/sheet-file.ts'
import { readSite } from './site/read-site.ts'

const page = readFileSync(new URL('../../docs/formats.md', import.meta.url), 'utf8')
const examples = [...page.matchAll(/^```json\n([\s\S]*?)^```$/gm)].map(([, text = '']) => text)
const readers: Readonly<Record<string, (file: string, text: string) => unknown>> = {
  'lapwise-sheet/1': readSheet,
  'lapwise-run/1': readRun,
  'lapwise-site/1': readSite,
  'lapwise-readings/3': readReadings,
  'lapwise-handover/1': (file, text) => checkShape(file, JSON.parse(text), manifestShape),
  'lapwise-device/1': readDeviceFile,
}

test('docs/formats.md has an example of every format', () => {
  expect(examples.map((text) => JSON.parse(text).format)).toEqual(Object.keys(readers))
})

test.each(examples.map((text) => [JSON.parse(text).format, text]))(
  'the example of %s in docs/formats.md is read',
  (format, text) => {
    const read = readers[format]?.('formats.md', text)
    expect(read).toMatchObject({ ok: true })
    // Of a device's file what is not sound is told beside the rest.
    expect((read as { readonly value: { readonly left?: unknown } }).value.left ?? []).toEqual([])
  },
)
