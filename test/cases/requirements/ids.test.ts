import { describe, expect, it } from 'vitest'
import type { HardwareSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { derivedTopics, isReserved, recordTopics } from '../../../src/core/requirements/derived-topics.ts'
import type { Requirement } from '../../../src/core/requirements/requirement.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { inventedEnd, inventedSystem } from '../../fixtures/sheet-files.ts'
import { requiredRun, runFiles } from '../spanish/gather-runs.ts'

const invented: readonly HardwareSheet[] = [inventedSystem, inventedEnd]
const runs: readonly (readonly [string, object])[] = [
  ...Object.entries(runFiles),
  [
    'of invented sheets',
    {
      ...{ system: inventedSystem.id, first: { sheet: inventedEnd.id }, second: { sheet: inventedEnd.id } },
      ...{ sheets: invented, obstructions: [] },
    },
  ],
]
const required = runs.map(([name, changes]) => [name, requiredRun(changes).requirements] as const)
const all: readonly Requirement[] = required.flatMap(([, requirements]) => requirements)
const ruleIds = new Set(
  [...shippedSheets, ...invented].flatMap(({ parts }) => parts.flatMap(({ rules }) => rules.map(({ id }) => id))),
)

describe('ids of requirements', () => {
  it.each(required)('stand once each, in a run %s', (_, requirements) => {
    const ids = requirements.map(({ id }) => id)
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
  })

  it('are asked for of every shipped sheet', () => {
    const sheets = new Set(all.map(({ sheet }) => sheet))
    expect(shippedSheets.map(({ id }) => id).filter((id) => !sheets.has(id))).toEqual([])
  })

  it('have a topic of the closed list or of a rule, and no rule has one of the list', () => {
    const topics = new Set(all.map(({ topic }) => topic))
    expect([...topics].filter((topic) => !isReserved(topic) && !ruleIds.has(topic))).toEqual([])
    expect([...ruleIds].filter(isReserved)).toEqual([])
    // Each way round, so that neither list can lie idle.
    expect(derivedTopics.filter((topic) => !topics.has(topic))).toEqual([])
    expect([...ruleIds].filter((id) => !topics.has(id))).toEqual([])
  })

  it('have a topic of the record exactly where the run file decides', () => {
    const record: readonly string[] = recordTopics
    expect(all.filter(({ look, topic }) => (look.kind === 'record') !== record.includes(topic))).toEqual([])
  })

  it('end in their topic', () => {
    expect(all.filter(({ id, topic }) => id.split('/').length !== 2 || !id.endsWith(`/${topic}`))).toEqual([])
  })
})
