// Constructed cases, NOT published: inputs made up, expected values computed from the published formulas outside this
// project, to four decimals. They check the arithmetic, not the interpretation.
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readSite } from '../../../src/formats/site/read-site.ts'
import { computeNeed } from '../../../src/operations/compute-need.ts'

interface Expected {
  readonly about: string
  readonly problem?: { readonly place: string }
  readonly approach?: Readonly<Record<string, number>>
  readonly departure?: Readonly<Record<string, number>> | null
  readonly rule?: string
  readonly notes?: readonly string[]
}

const folder = new URL('.', import.meta.url)
const names = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)

test('all constructed cases are here', () => {
  expect(names).toHaveLength(36)
})

test.each(names)('%s', (name) => {
  const text = (file: string) => readFileSync(new URL(`${name}/${file}`, folder), 'utf8')
  const expected = JSON.parse(text('expected.json')) as Expected
  const site = readSite('input.json', text('input.json'))
  if (expected.problem !== undefined) {
    expect(site.ok ? 'read' : site.error[0]!.place).toBe(expected.problem.place)
    return
  }
  if (!site.ok) throw new Error(JSON.stringify(site.error))
  const need = computeNeed(site.value)
  if (!need.ok) throw new Error(JSON.stringify(need.error))
  const { approach, departure } = need.value
  if (expected.departure === null) expect(departure).toBeNull()
  for (const [found, values] of [
    [approach, expected.approach],
    [departure, expected.departure],
  ] as const)
    for (const [field, value] of Object.entries(values ?? {}))
      expect(Math.abs(Number(found?.[field as 'lengthOfNeed']) - value), field).toBeLessThanOrEqual(0.6e-4)
  if (expected.rule !== undefined) expect(approach.governs.rule).toBe(expected.rule)
  const notes = [...approach.notes, ...(departure?.notes ?? [])].map(({ note }) => note.kind)
  expect(notes).toEqual(expect.arrayContaining([...(expected.notes ?? [])]))
})
