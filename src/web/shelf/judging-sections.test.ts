import { describe, expect, test } from 'vitest'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { Draft } from '../form/draft.ts'
import { fieldsOf } from '../form/form-section.ts'
import { fetchWords } from '../messages.ts'
import { readDraft } from './read-draft.ts'
import { sheetSections } from './sheet-sections.ts'

await fetchWords()

const flared = shippedSheets.find(({ id }) => id === 'flared-terminal-31')!
const draft = flared as unknown as Draft
const field = (into: Draft, place: string) => fieldsOf(sheetSections(into, [])).find((one) => one.place === place)!
const put = (into: Draft, place: string, value: unknown): Draft => field(into, place).put(into, value)
function sheetOf(changed: Draft): HardwareSheet {
  const read = readDraft(changed, draft)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value
}
const severityOf = (sheet: HardwareSheet, topic: string) =>
  sheet.severities?.filter(({ topics }) => topics.includes(topic)).map(({ severity }) => severity)

describe('the form of what the sheet judges by', () => {
  test('says of one fault how bad it is, and leaves all others as they were', () => {
    const before = Object.fromEntries(
      flared.severities!.flatMap((rule) => rule.topics.map((one) => [one, rule.severity])),
    )
    expect(before['cable-play']).toBeDefined()
    for (const severity of ['lets it fail', 'weakens it', 'upkeep'] as const) {
      const after = sheetOf(put(draft, 'severity of topics cable-play', severity))
      for (const topic of Object.keys(before))
        expect(severityOf(after, topic), topic).toEqual([topic === 'cable-play' ? severity : before[topic]])
    }
    const unsaid = sheetOf(put(draft, 'severity of topics cable-play', null))
    expect(severityOf(unsaid, 'cable-play')).toEqual([])
  })

  test('names a rule by what it says, without the braces that mark its values', () => {
    expect(flared.parts.flatMap(({ rules }) => rules).find(({ id }) => id === 'cable-play')?.must).toContain('{1 in}')
    expect(field(draft, 'severity of topics cable-play').label).toContain('moves no more than 1 in')
  })

  test('confirms no longer what is said of faults once that is changed', () => {
    const published = flared.severities!.map((rule) => ({ ...rule, confirmation: 'published' as const }))
    const at = published.findIndex(({ topics }) => topics.includes('cable-play'))
    const other = published[at]!.severity === 'upkeep' ? 'weakens it' : 'upkeep'
    const after = sheetOf(put({ ...draft, severities: published }, 'severity of topics cable-play', other))
    for (const rule of after.severities!) {
      const was = published.find(({ severity, source }) => severity === rule.severity && source === rule.source)
      const isSame = was !== undefined && [...was.topics].join() === [...rule.topics].join()
      expect(rule.confirmation === 'published', rule.severity).toBe(isSame)
    }
  })

  test('says what may be set aside, and takes it back', () => {
    const allowed = put(draft, 'set aside block', true)
    expect(sheetOf(allowed).maySetAside).toMatchObject([{ topic: 'block', confirmation: 'from memory' }])
    expect(sheetOf(put(allowed, 'set aside block', false)).maySetAside).toEqual([])
  })

  test('follows a rule under another id, and forgets one that is taken out', () => {
    const parts = flared.parts.map(({ id }) => id)
    const part = parts.indexOf('anchor-cable')
    const rule = flared.parts[part]!.rules.findIndex(({ id }) => id === 'cable-play')
    const allowed = put(draft, 'set aside cable-play', true)
    const renamed = sheetOf(put(allowed, `parts[${part}].rules[${rule}].id`, 'cable-of-county'))
    expect(severityOf(renamed, 'cable-of-county')).toEqual(severityOf(flared, 'cable-play'))
    expect(renamed.maySetAside).toMatchObject([{ topic: 'cable-of-county' }])
    const rules = sheetSections(allowed, []).find(({ list }) => list?.place === `parts[${part}].rules`)!.list!
    const without = sheetOf(rules.items[rule]!.remove(allowed))
    expect(severityOf(without, 'cable-play')).toEqual([])
    expect(without.maySetAside).toEqual([])
  })

  test('asks what the figure of a rule draws as right, and forgets it with another figure', () => {
    const part = flared.parts.findIndex(({ rules }) => rules.some(({ figure }) => figure === 'head-holes'))
    const rule = flared.parts[part]!.rules.findIndex(({ figure }) => figure === 'head-holes')
    const at = `parts[${part}].rules[${rule}]`
    const lower = sheetOf(put(draft, `${at}.shows.set`, 'lower'))
    expect(lower.parts[part]!.rules[rule]!.shows).toEqual({ set: 'lower' })
    const plate = put(draft, `${at}.figure`, 'bearing-plate')
    expect(sheetOf(plate).parts[part]!.rules[rule]!.shows).toBe(undefined)
    const sized = put(
      put(put(plate, `${at}.shows.plate`, true), `${at}.shows.plate.upInches`, 5),
      `${at}.shows.plate.downInches`,
      3,
    )
    expect(sheetOf(sized).parts[part]!.rules[rule]!.shows).toEqual({ plate: { upInches: 5, downInches: 3 } })
  })
})
