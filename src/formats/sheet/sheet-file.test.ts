import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, expectTypeOf, test } from 'vitest'
import type { z } from 'zod'
import { brokenSheets, picturedSystem, smallPng, validSheets } from '../../../test/fixtures/sheet-files.ts'
import { confirmStatement } from '../../core/hardware/confirm-statement.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { statementsOf } from '../../core/hardware/sheet-statements.ts'
import { english } from '../../words/english.ts'
import { printProblem } from '../input-problem.ts'
import { readSheet, writeSheet } from './sheet-file.ts'
import type { sheetShape } from './sheet-shape.ts'

type Readonlys<T> = T extends readonly (infer U)[]
  ? readonly Readonlys<U>[]
  : T extends object
    ? { readonly [K in keyof T]: Readonlys<T[K]> }
    : T

test('the schema and the type of a sheet say the same', () => {
  expectTypeOf<Readonlys<z.output<ReturnType<typeof sheetShape>>>>().toExtend<HardwareSheet>()
  expectTypeOf<HardwareSheet>().toExtend<Readonlys<z.output<ReturnType<typeof sheetShape>>>>()
})

describe('readSheet', () => {
  test.each(validSheets.map((sheet) => [sheet.id, sheet] as const))('reads back %s as written', (_, sheet) => {
    expect(readSheet('sheet.json', writeSheet(sheet))).toEqual({ ok: true, value: sheet })
  })

  test.each(brokenSheets.map((broken) => [broken.title, broken] as const))('refuses %s', (_, { raw, problems }) => {
    const read = readSheet('sheet.json', JSON.stringify(raw))
    expect(read.ok ? [] : read.error.map((one) => printProblem(one, english(null)))).toEqual(
      problems.map((problem) => `sheet.json: ${problem}`),
    )
  })

  test('takes pictures of 120 kB each and of 600 kB together, and no byte more', () => {
    const [part] = picturedSystem.parts
    const [rule] = part!.rules
    const withPictures = (...sizes: readonly number[]) => ({
      ...picturedSystem,
      parts: [
        {
          ...part!,
          rules: sizes.map((size, i) => {
            const base64 = Buffer.concat([Buffer.from(smallPng, 'base64'), Buffer.alloc(size - 84)]).toString('base64')
            return { ...rule!, id: `rule-${i}`, picture: { ...rule!.picture!, base64 } }
          }),
        },
      ],
    })
    const problemsOf = (...sizes: readonly number[]) => {
      const read = readSheet('sheet.json', JSON.stringify(withPictures(...sizes)))
      return read.ok ? [] : read.error.map(({ place, expected }) => [place, expected])
    }
    const most = 120_000
    const four = [most, most, most, most]
    expect(problemsOf(...four, most)).toEqual([])
    expect(problemsOf(most + 1)).toEqual([['parts[0].rules[0].picture', { kind: 'picture at most', bytes: most }]])
    expect(problemsOf(...four, most - 99, 99)).toEqual([])
    expect(problemsOf(...four, most - 99, 100)).toEqual([
      ['parts[0].rules[5].picture', { kind: 'picture at most', bytes: 99 }],
    ])
  })

  test.each(validSheets.map((sheet) => [sheet.id, sheet] as const))(
    'reads back %s with any statement confirmed',
    (_, sheet) => {
      const confirming = { document: { title: 'Manual', edition: '3' }, page: '12', by: 'R. Quist', on: '2026-11-28' }
      for (const { place } of statementsOf(sheet)) {
        const confirmed = confirmStatement(sheet, place, confirming)
        expect(readSheet('sheet.json', writeSheet(confirmed)), place).toEqual({ ok: true, value: confirmed })
      }
    },
  )

  const sheets = new URL('../../sheets/', import.meta.url)
  const shipped = readdirSync(sheets).filter((name) => name.endsWith('.json') && name !== 'editions.json')
  const landed = readdirSync(new URL('landed/', sheets)).map((name) => `landed/${name}`)
  test.each([...shipped, ...landed])('reads the shipped %s', (name) => {
    const text = readFileSync(new URL(name, sheets), 'utf8')
    expect(readSheet(name, text)).toEqual({ ok: true, value: JSON.parse(text) })
  })
})
