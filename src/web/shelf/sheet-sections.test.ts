import { describe, expect, test } from 'vitest'
import { inventedEnd, inventedSystem, picturedSystem } from '../../../test/fixtures/sheet-files.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { isCited } from '../../core/hardware/sheet-statements.ts'
import { compareSheets } from '../../operations/compare-sheets.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { type Draft, meaningOf, textOf, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import { fieldsOf } from '../form/form-section.ts'
import { placeProblems } from '../form/place-problems.ts'
import { fetchWords } from '../messages.ts'
import { readDraft } from './read-draft.ts'
import { sheetSections } from './sheet-sections.ts'

await fetchWords()

/** Between them they have everything that a sheet can state. */
const sheets = [
  ...shippedSheets.filter(({ id }) => ['flared-terminal-31', 'w-beam-post-splice-27-3-4'].includes(id)),
  ...[inventedSystem, inventedEnd, picturedSystem],
]
const draftOf = (sheet: HardwareSheet): Draft => sheet as unknown as Draft
const systems = [{ id: 'w-beam-midspan-31', name: 'W-beam' }]
const fieldsFor = (draft: Draft): readonly FormField[] => fieldsOf(sheetSections(draft, systems))

/** What a field means once somebody typed into it what it shows. */
function typedAgain({ kind, value, text = textOf, read, isOptional }: FormField): unknown {
  if (kind === 'check' || kind === 'own picture') return value
  const shown = text(value)
  const meaning = (read ?? (kind === 'number' ? meaningOf : (typed: string) => typed || undefined))(shown)
  return meaning ?? (isOptional ? null : undefined)
}

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('the form of %s', (_, sheet) => {
  const draft = draftOf(sheet)

  test('has a field for every source, and each place once', () => {
    const places = fieldsFor(draft).map(({ place }) => place)
    expect(new Set(places).size).toBe(places.length)
    const cited = placesOf(draft, '')
    expect(cited.filter((place) => !places.includes(`${place}.source`))).toEqual([])
  })

  test('changes nothing that the sheet states where what is shown is typed again', () => {
    for (const field of fieldsFor(draft)) {
      const read = readDraft(field.put(draft, typedAgain(field)), draft)
      expect(read.ok ? [] : read.error, field.place).toEqual([])
      const others = read.ok ? compareSheets(sheet, read.value) : null
      expect(others?.besides, field.place).toEqual([])
      expect(
        others?.statements.filter(({ what }) => what !== 'source').map(({ place }) => place),
        field.place,
      ).toEqual([])
    }
  })

  test('begins nothing that is added with a number, and asks for what is missing at a field', () => {
    const lists = sheetSections(draft, systems).flatMap(({ list }) => (list === null ? [] : [list.add(draft)]))
    const looks = fieldsFor(draft)
      .filter(({ place }) => /\.(look|at)\.kind$/.test(place))
      .flatMap((field) => field.choices.map(({ value }) => field.put(draft, value)))
    for (const more of [...lists, ...looks].flatMap((one) => [one, allSwitchedOn(one)])) {
      expect([...numbersIn(more)].filter((number) => !numbersIn(draft).has(number))).toEqual([])
      const read = readDraft(more, draft)
      const places = fieldsFor(more).map(({ place }) => place)
      expect(placeProblems(read.ok ? [] : read.error, places).rest).toEqual([])
    }
  })

  test('takes each thing out of its list, and puts one in where what is wrong stands at a field', () => {
    for (const { list } of sheetSections(draft, systems)) {
      if (list === null) continue
      const more = list.add(draft)
      const read = readDraft(more, draft)
      const places = fieldsFor(more).map(({ place }) => place)
      for (const { place } of read.ok ? [] : read.error)
        expect(
          places.some((one) => one === place || one.startsWith(`${place}`) || place.startsWith(one)),
          place,
        ).toBe(true)
      for (const item of list.items) expect(fieldsFor(item.remove(draft)).length).toBeLessThan(fieldsFor(draft).length)
    }
  })
})

test('a number that is changed is changed in the sheet, as the trade writes it, and is confirmed no longer', () => {
  const flared = shippedSheets.find(({ id }) => id === 'flared-terminal-27-3-4')!
  const draft = withValue(draftOf(flared), 'railHeight.confirmation', 'published')
  const field = fieldsFor(draft).find(({ place }) => place === 'railHeight.low')!
  const after = field.put(draft, field.read!('27 7/8'))
  expect(valueAt(after, 'railHeight')).toMatchObject({ low: 27.875, confirmation: 'from memory' })
})

test('a text that is changed keeps what other languages said of it as what was said before, and the sheet stays sound', () => {
  const flared = shippedSheets.find(({ id }) => id === 'flared-terminal-31')!
  const draft = draftOf(flared)
  const field = fieldsFor(draft).find(({ place }) => place === 'parts[0].rules[0].why')!
  const changed = field.put(draft, 'A loose head turns away.')
  const read = readDraft(changed, draft)
  const text = field.value as string
  expect(read.ok && read.value.translations!.es![text]).toBe(undefined)
  expect(read.ok && read.value.earlierTranslations!.es).toEqual({
    'A loose head turns away.': { text, said: flared.translations!.es![text] },
  })
})

test('a wrong text stands at its field', () => {
  const draft = withValue(draftOf(inventedEnd), 'railHeight.low', 'high')
  const read = readDraft(draft, draftOf(inventedEnd))
  expect(read.ok ? [] : read.error.map(({ place }) => place)).toEqual(['railHeight.low'])
})

/** Everything that may be stated is, as far as fields appear by that. */
function allSwitchedOn(draft: Draft): Draft {
  const next = fieldsFor(draft).find(({ kind, value, place }) => kind === 'check' && value === false && !isAside(place))
  return next === undefined ? draft : allSwitchedOn(next.put(draft, true))
}

const isAside = (place: string): boolean => /^(set aside|joins)|\.(hold|fixing)$/.test(place)

/** Each number with its place; a post's own tells which it is. */
const numbersIn = (value: unknown, place = ''): ReadonlySet<string> =>
  new Set(
    typeof value === 'number' && !place.endsWith('.number')
      ? [`${place} ${value}`]
      : typeof value !== 'object' || value === null
        ? []
        : Object.entries(value).flatMap(([name, one]) => [...numbersIn(one, `${place}.${name}`)]),
  )

const placesOf = (value: unknown, place: string): readonly string[] =>
  typeof value !== 'object' || value === null
    ? []
    : [
        ...(isCited(value) ? [place] : []),
        ...Object.entries(value).flatMap(([name, one]) =>
          placesOf(one, Array.isArray(value) ? `${place}[${name}]` : place === '' ? name : `${place}.${name}`),
        ),
      ]
