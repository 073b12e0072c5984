import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { type RunFile, readRun, runFromValue } from '../../formats/run/run-file.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { layOutRun } from '../../operations/lay-out-run.ts'
import { type Shelf, sheetShelf, shippedShelf } from '../../operations/sheet-shelf.ts'
import type { Draft } from '../form/draft.ts'
import { fieldsOf } from '../form/form-section.ts'
import { placeProblems } from '../form/place-problems.ts'
import { withSheetsOf } from '../form/with-sheets-of.ts'
import { fetchWords } from '../messages.ts'
import { draftOfRun, emptyDraft, runInUnits } from './run-draft.ts'
import { runSections } from './run-sections.ts'

await fetchWords()

const root = new URL('../../../', import.meta.url)

interface Schema {
  readonly $ref?: string
  readonly $defs?: Readonly<Record<string, Schema>>
  readonly properties?: Readonly<Record<string, Schema>>
  readonly items?: Schema
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
}

const schema = JSON.parse(readFileSync(new URL('docs/schemas/run.schema.json', root), 'utf8')) as Schema

/** Not asked by a person: what the program writes, and what is chosen by its picture. */
const written = ['$schema', 'format', 'version', 'earlier', 'layout', 'decision', 'sheets', 'madeOf']

/** Places of all values that a run file can hold, `[0]` for the first of a list. */
function placesIn(part: Schema, place: string): readonly string[] {
  if (written.includes(place)) return []
  if (part.$ref !== undefined) return placesIn(schema.$defs![part.$ref.replace('#/$defs/', '')]!, place)
  const ways = part.anyOf ?? (part.properties === undefined ? part.oneOf : undefined)
  const inside = [
    ...(ways ?? []).flatMap((way) => placesIn(way, place)),
    ...Object.entries(part.properties ?? {}).flatMap(([name, inner]) =>
      placesIn(inner, place === '' ? name : `${place}.${name}`),
    ),
    ...(part.items === undefined ? [] : placesIn(part.items, `${place}[0]`)),
  ]
  return inside.length === 0 ? [place] : [...new Set(inside)]
}

/** A run that says everything, as far as one run can; others say what it cannot beside that. */
const full: Draft = {
  ...emptyDraft('full', 'us'),
  project: 'resurfacing',
  titleBlock: { revisions: [{}] },
  road: { position: { latitude: 40, longitude: -105, accuracy: 8, fixedAt: '2026-05-04T15:30:00Z' } },
  need: { from: 0, to: 600 },
  flare: { rate: 15, firstFrom: 0, secondFrom: null },
  stock: [{ length: 150, count: 6 }],
  obstructions: [{ name: 'culvert', from: 100, to: 120 }],
  clearance: 6,
  reduced: [{ from: 0, to: 100, spacing: 'half', nested: false }],
  standing: { postOneAt: 0, panels: [150], postsDriven: 2, leftOut: [110] },
  instruments: [{ id: 'own', unit: 'in' }],
}
const splices = { standingSplice: { at: 0, position: 'post' } }
const unknown = { unknown: 'no sheet fits', posts: 1, panels: 1 }
const others: readonly Draft[] = [
  { ...full, first: splices, second: splices },
  { ...full, counted: { panels: [150], posts: 3 }, first: unknown, second: unknown },
]

const fieldPlaces = (draft: Draft): readonly string[] =>
  fieldsOf(runSections(draft, null, { shelf: shippedShelf, projects: [] })).map(({ place }) => place)

describe('the form of a run', () => {
  test('has a field for all that a run file can say', () => {
    const places = placesIn(schema, '')
    expect(places.length).toBeGreaterThan(40)
    const shown = new Set([full, ...others].flatMap(fieldPlaces))
    // A list of lengths is one field, and so is what a device said of where it was.
    const fieldOf = (place: string): string => place.replace(/\[0\]$|(?<=position)\..*$/, '')
    const missing = places.filter((place) => !shown.has(place) && !shown.has(fieldOf(place)))
    expect(missing).toEqual([])
  })

  const files = readdirSync(new URL('test/cases', root), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.json'))
    .map((path) => [path, readFileSync(new URL(`test/cases/${path}`, root), 'utf8')] as const)
    .flatMap(([path, text]): readonly (readonly [string, RunFile])[] => {
      if (!text.includes('"lapwise-run/')) return []
      const run = readRun(path, text)
      return run.ok ? [[path, run.value]] : []
    })

  test.each(files)('says what the run file says, and nothing else: %s', (_, run) => {
    const asked = { ...run, version: undefined }
    const read = runFromValue('draft', draftOfRun(run))
    expect(read.ok && runToValue(read.value)).toEqual(runToValue(asked))
  })

  test.each(files)('writes each field back as it shows it: %s', (_, run) => {
    const draft = draftOfRun(run)
    for (const units of ['us', 'metric'] as const) {
      const shown = runInUnits(draft, units)
      for (const field of fieldsOf(runSections(shown, null, { shelf: shippedShelf, projects: [] }))) {
        if (field.kind !== 'length' && field.kind !== 'lengths') continue
        if (field.value === null || field.value === undefined) continue
        const back = field.put(shown, field.read!(field.text!(field.value)))
        const read = runFromValue('draft', back)
        const same = runFromValue('draft', shown)
        expect(read.ok && same.ok && runToValue(read.value), `${units} ${field.place}`).toEqual(
          same.ok && runToValue(same.value),
        )
      }
    }
  })

  test('there are enough run files to try it on', () => {
    expect(files.length).toBeGreaterThan(5)
  })

  test('shows what is wrong at the field that it is wrong with', () => {
    const wrong: Draft = { ...full, need: { from: 0, to: 'ten' }, obstructions: [{ name: '', from: 5, to: 1 }] }
    const read = runFromValue('draft', wrong)
    const { at, rest } = placeProblems(read.ok ? [] : read.error, fieldPlaces(wrong))
    expect([...at.keys()]).toEqual(expect.arrayContaining(['need.to', 'obstructions[0].name']))
    expect(rest).toEqual([])
  })
})

test('a run that begins with the hardware of the shelf is laid out once it says what it shields', () => {
  const read = runFromValue('draft', { ...emptyDraft('new', 'us'), need: { from: 0, to: 1200 } })
  const laid = read.ok ? layOutRun('draft', read.value, 2) : read
  expect(laid.ok && laid.value.layouts.length).toBe(2)
})

describe('a sheet of this device', () => {
  const invented = JSON.parse(
    readFileSync(new URL('test/cases/added-sheet/invented-terminal-31.json', root), 'utf8'),
  ) as HardwareSheet
  const draft = { ...emptyDraft('new', 'us'), need: { from: 0, to: 1200 }, second: { sheet: 'trailing-anchor-31' } }
  const shelf = sheetShelf([invented])
  const offered = (on: Shelf): readonly string[] =>
    fieldsOf(runSections(draft, null, { shelf: on, projects: [] }))
      .find(({ place }) => place === 'first.sheet')!
      .choices.map(({ value }) => value)

  test('is offered with its picture as those that ship, and laid out as any other', () => {
    expect(offered(shippedShelf)).not.toContain(invented.id)
    expect(offered(shelf)).toContain(invented.id)
    const chosen = withSheetsOf(shelf, { ...draft, first: { sheet: invented.id } })
    const field = fieldsOf(runSections(chosen, null, { shelf, projects: [] })).find(
      ({ place }) => place === 'first.sheet',
    )!
    expect(field.choices.find(({ value }) => value === invented.id)?.svg).toContain('<svg')
    const read = runFromValue('draft', chosen)
    const laid = read.ok ? layOutRun('draft', read.value, 1) : read
    expect(laid.ok && laid.value.layouts[0]?.panels[0]).toMatchObject({ inches: 225, unit: 'first' })
  })

  test('is never taken in the place of the edition that a run holds', () => {
    const held = { ...invented, version: '0.0.1' }
    expect(withSheetsOf(shelf, { ...draft, sheets: [held] }).sheets).toEqual([held])
  })
})
