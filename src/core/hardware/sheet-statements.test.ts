import { describe, expect, test } from 'vitest'
import { inventedEnd, inventedSystem } from '../../../test/fixtures/sheet-files.ts'
import { landedSheets } from '../../sheets/landed-sheets.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { confirmedOf, saidAt, statementsOf, thingPaths } from './sheet-statements.ts'

const cited = { source: 'memory', confirmation: 'from memory' as const }
const sheets = [...shippedSheets, ...landedSheets, inventedSystem, inventedEnd]

describe('the statements of a sheet', () => {
  test.each(sheets.map((sheet) => [`${sheet.id} ${sheet.version}`, sheet] as const))(
    'are all that name a source in %s, each once and with what it states',
    (_, sheet) => {
      const found = statementsOf(sheet)
      // Counted in the text of the file, past the code that walks through it.
      expect(found.length).toBe(JSON.stringify(sheet).match(/"confirmation":/g)!.length)
      expect(new Set(found.map(({ place }) => place)).size).toBe(found.length)
      expect(found.map(({ about }) => about.of).filter((of) => !thingPaths.includes(of))).toEqual([])
      expect(found.filter(({ values }) => values.length === 0).map(({ place }) => place)).toEqual([])
    },
  )

  test('say what the file says', () => {
    const said = new Map(statementsOf(inventedEnd).map(({ place, values }) => [place, values]))
    expect(said.get('posts[1]')).toContainEqual({
      ...{ kind: 'value of sheet', field: 'slotSide' },
      value: { kind: 'chosen', field: 'slotSide', is: 'downstream' },
    })
    expect(said.get('posts[1]')).toContainEqual({
      ...{ kind: 'value of sheet', field: 'railBolted', value: { kind: 'answer', is: 'notStated' } },
    })
    const system = new Map(statementsOf(inventedSystem).map((one) => [one.place, one]))
    expect(system.get('omissions[0].nestedAtCurb')).toMatchObject({
      about: { of: 'omissions[].nestedAtCurb', number: 1, part: null },
      values: [{ field: 'inches', value: { kind: 'rail', inches: 450 } }],
    })
    expect(system.get('parts[rail].rules[bolts]')).toMatchObject({
      about: { part: { own: 'Rail' } },
      values: [{ field: 'must', value: { own: 'Every bolt is tight.' } }],
    })
  })

  test('name rules by what they say and sheets by what they are called; what is not at hand by id', () => {
    const topics = ['cable', 'rail-height'].map((topic) => ({ ...cited, severity: 'upkeep' as const, topics: [topic] }))
    const rule = { ...inventedEnd.parts[0]!.rules[0]!, id: 'cable', must: 'The cable is taut.' }
    const sheet = {
      ...inventedEnd,
      parts: [{ ...inventedEnd.parts[0]!, rules: [rule] }],
      severities: topics.map((one) => ({ ...one, seen: [] })),
    }
    const named = statementsOf(sheet).filter(({ about }) => about.of === 'severities[]')
    expect(named.map(({ values }) => values.find(({ field }) => field === 'topics')!.value)).toMatchObject([
      { kind: 'named', names: [{ own: 'The cable is taut.' }] },
      { kind: 'named', names: ['rail-height'] },
    ])
    expect(saidAt(sheet, 'joins', [inventedSystem.id, 'elsewhere'], [inventedSystem])).toMatchObject({
      ...{ kind: 'named', names: [{ own: inventedSystem.name }, 'elsewhere'] },
    })
  })

  test('count as confirmed where they are published', () => {
    const published = { ...inventedEnd.railHeight, confirmation: 'published' as const }
    const all = statementsOf(inventedEnd).length
    expect(confirmedOf(inventedEnd)).toEqual({ confirmed: 0, all })
    expect(confirmedOf({ ...inventedEnd, railHeight: published })).toEqual({ confirmed: 1, all })
  })
})
