import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { english } from '../words/english.ts'
import { printProblem } from './input-problem.ts'
import { form } from './range/form.ts'
import { readJson } from './read-json.ts'

const problemsOf = (schema: z.ZodType, text: string): readonly string[] => {
  const read = readJson('x.json', text, schema)
  return read.ok ? [] : read.error.map((one) => printProblem(one, english(null)))
}

describe('readJson', () => {
  test('reads a text with a byte order mark', () => {
    expect(readJson('x.json', '\uFEFF{"a": 1}', z.strictObject({ a: z.number() }))).toEqual({
      ok: true,
      value: { a: 1 },
    })
  })

  test('passes over what tells an editor the schema, and nothing like it', () => {
    const schema = z.strictObject({ a: z.unknown() })
    expect(readJson('x.json', '{"$schema": "run.schema.json", "a": 1}', schema)).toEqual({ ok: true, value: { a: 1 } })
    expect(problemsOf(schema, '{"$schema": 5, "a": {}}')).toEqual([
      'x.json: ["$schema"]: expected no field named "$schema", found 5',
    ])
    expect(readJson('x.json', '{"a": {"$schema": "b"}}', schema)).toEqual({ ok: true, value: { a: { $schema: 'b' } } })
  })

  test('says where a text stops being JSON', () => {
    expect(problemsOf(z.unknown(), '{\n  "a": 1,\n}')).toEqual([
      'x.json: line 3, column 1: expected a field name in double quotes, found }',
    ])
  })

  test('reports every problem, each at its place', () => {
    const schema = z.strictObject({
      a: z.int().min(2),
      b: z.array(z.string().min(3)).max(2),
      c: z.record(z.string().min(1), z.null()),
    })
    expect(problemsOf(schema, '{"a": 1.5, "b": ["x", 7], "c": {"": 1}, "d": {"e": []}}')).toEqual([
      'x.json: a: expected a whole number, found 1.5',
      'x.json: b[0]: expected at least 3 characters, found "x"',
      'x.json: b[1]: expected a text, found 7',
      'x.json: c[""]: expected a text that is not empty as field name, found 1',
      'x.json: d: expected no field named "d", found an object with e',
    ])
    expect(problemsOf(schema, '{"a": 1, "b": ["xxx", "yyy", "zzz"], "c": {}}')).toEqual([
      'x.json: a: expected a value of at least 2, found 1',
      'x.json: b: expected at most 2 in the list, found a list of 3',
    ])
  })

  test('shows a number beyond every double as such', () => {
    expect(problemsOf(z.number(), '1e999')).toEqual(['x.json: expected a number, found Infinity'])
  })

  test('shortens a long text', () => {
    expect(problemsOf(z.number(), JSON.stringify('a'.repeat(200)))).toEqual([
      `x.json: expected a number, found "${'a'.repeat(76)}…`,
    ])
  })
})

describe('alternatives', () => {
  const schema = z.union([
    z.number().min(0),
    z.literal('none'),
    z.strictObject({ size: z.number(), parts: z.array(z.union([z.string(), z.strictObject({ id: z.int() })])) }),
    z.strictObject({ name: z.string() }),
  ])

  test('are all named when none of them fits at all', () => {
    expect(problemsOf(schema, 'true')).toEqual(['x.json: expected a number or "none" or an object, found true'])
  })

  test('give way to the one that fits deepest', () => {
    expect(problemsOf(schema, '-1')).toEqual(['x.json: expected a value of at least 0, found -1'])
    expect(problemsOf(schema, '{"size": 1, "parts": [{"id": 1.5}]}')).toEqual([
      'x.json: parts[0].id: expected a whole number, found 1.5',
    ])
    expect(problemsOf(schema, '{"size": 1, "parts": [5]}')).toEqual([
      'x.json: parts[0]: expected a text or an object, found 5',
    ])
  })

  test('give way to the one with the fewest problems when they fit equally deep', () => {
    expect(problemsOf(schema, '{"nam": "x"}')).toEqual([
      'x.json: name: expected a text, found nothing',
      'x.json: nam: expected no field named "nam", found "x"',
    ])
  })

  test('are named with the field that each lacks when nothing tells them apart', () => {
    const twins = z.union([z.strictObject({ a: z.string() }), z.strictObject({ b: z.number() })])
    expect(problemsOf(twins, '{}')).toEqual(['x.json: expected a text in a or a number in b, found an empty object'])
  })

  test('are named by the schema when it has words of its own', () => {
    const twins = z.union([z.strictObject({ a: z.string() }), z.strictObject({ b: z.number() })], {
      ...form('sheet or standing splice'),
    })
    expect(problemsOf(twins, '{}')).toEqual([
      'x.json: expected an object with "sheet", or one with "standingSplice", found an empty object',
    ])
  })

  test('by kind name the kinds', () => {
    const byKind = z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('a'), size: z.number() }),
      z.strictObject({ kind: z.literal('b') }),
    ])
    expect(problemsOf(byKind, '{"kind": "c"}')).toEqual(['x.json: kind: expected "a" or "b", found "c"'])
    expect(problemsOf(byKind, '{"kind": "a", "size": null}')).toEqual(['x.json: size: expected a number, found null'])
  })
})
