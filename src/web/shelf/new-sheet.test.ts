import { describe, expect, test } from 'vitest'
import type { HardwareSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { requiredBySheet } from '../../operations/sheet-requirements.ts'
import { unitPicture } from '../../operations/unit-picture.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { english } from '../../words/english.ts'
import { type Draft, valueAt } from '../form/draft.ts'
import { fieldsOf } from '../form/form-section.ts'
import { placeProblems } from '../form/place-problems.ts'
import { fetchWords } from '../messages.ts'
import { newSheet } from './new-sheet.ts'
import { readDraft } from './read-draft.ts'
import { sheetSections } from './sheet-sections.ts'

await fetchWords()

const systems = [{ id: 'w-beam-midspan-31', name: 'W-beam' }]
const fieldsFor = (draft: Draft) => fieldsOf(sheetSections(draft, systems))
const problemsIn = (draft: Draft) => {
  const read = readDraft(draft, draft)
  return read.ok ? [] : read.error
}
const kinds = ['terminal', 'trailing anchor', 'buried end', 'bridge end', 'longitudinal'] as const

describe.each(kinds)('a new sheet of a %s', (kind) => {
  const draft = newSheet(kind, 'county', 'County', 'en')

  test('holds no number, and asks for each thing at a field of the form', () => {
    expect(JSON.stringify(draft)).not.toMatch(/[:[,]\d/)
    const { at, rest } = placeProblems(
      problemsIn(draft),
      fieldsFor(draft).map(({ place }) => place),
    )
    expect(rest).toEqual([])
    expect(at.size).toBeGreaterThan(5)
  })

  test('becomes a sound sheet by its fields alone', () => {
    const like = shippedSheets.find((sheet) => sheet.kind === kind)!
    const written = filled(draft, like)
    expect(problemsIn(written)).toEqual([])
  })

  test('is drawn, and its requirements are derived, as soon as it is sound, whatever it is still without', () => {
    const like = shippedSheets.find((sheet) => sheet.kind === kind)!
    const system = shippedSheets.find(({ id }) => id === 'w-beam-midspan-31') as LongitudinalSheet
    for (const written of [
      filled(draft, like, []),
      filled(draft, like, ['posts']),
      filled(draft, like, ['panels.own']),
    ]) {
      expect(problemsIn(written)).toEqual([])
      const sheet = written as unknown as HardwareSheet
      const own = sheet.kind === 'longitudinal' ? sheet : system
      expect(requiredBySheet(sheet, own).size).toBeGreaterThanOrEqual(0)
      if (sheet.kind !== 'longitudinal')
        expect(writeSvg(unitPicture(sheet, own, 'whole', english(null)))).toContain('<svg')
    }
  })
})

/** The draft with things added to each list and every field filled as the other sheet has it. */
function filled(draft: Draft, like: HardwareSheet, lists = ['posts', 'panels.own', 'parts']): Draft {
  const more = sheetSections(draft, systems)
    .flatMap(({ list }) => (list !== null && lists.includes(list.place) ? [list] : []))
    .reduce((into, { add }) => add(into), draft)
  const rules = sheetSections(more, systems).find(({ list }) => list?.place === 'parts[0].rules')?.list
  const withRule = rules?.add(more) ?? more
  return fieldsFor(withRule).reduce((into, { place, put, value, kind, choices, isOptional }) => {
    if (place === 'joins[w-beam-midspan-31]') return put(into, true)
    const theirs = valueAt(like, place)
    const isOpen = value === undefined || value === '' || value === 'notStated' || value === null
    if (kind === 'check' || !isOpen) return into
    if (typeof theirs === 'boolean') return put(into, theirs ? 'yes' : 'no')
    if (theirs !== undefined && typeof theirs !== 'object') return put(into, theirs)
    if (kind === 'choice') return isOptional ? into : put(into, choices[0]!.value)
    // The other has no panel of its own.
    if (place.endsWith('.inches')) return put(into, 150)
    return kind === 'text' || kind === 'words' ? put(into, 'As it is written here') : into
  }, withRule)
}

test('a sheet that is begun in Spanish says so, and what it warns of in English too', () => {
  const draft = newSheet('terminal', 'condado', 'Condado', 'es')
  expect(draft.language).toBe('es')
  expect(draft.translations).toEqual({ en: { [String(draft.notice)]: expect.stringMatching(/^Written by hand/) } })
})
