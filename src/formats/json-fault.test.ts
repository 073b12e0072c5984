import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { english } from '../words/english.ts'
import { findJsonFault } from './json-fault.ts'

describe('findJsonFault', () => {
  test.each<[string, string, number, number, string, string]>([
    ['an empty text', '', 1, 1, 'a value', 'the end of the text'],
    ['a text that is not JSON', 'run: 5', 1, 1, 'a value', 'run'],
    ['a missing comma', '{\n  "a": 1\n  "b": 2\n}', 3, 3, '"," or "}"', '"'],
    ['a comma too many', '{\r\n  "a": [1, 2,]\r\n}', 2, 14, 'a value', ']'],
    ['a comma after the last field', '{"a": 1,}', 1, 9, 'a field name in double quotes', '}'],
    ['a field name without quotes', '{a: 1}', 1, 2, 'a field name in double quotes', 'a'],
    ['a missing colon', '{"a" 1}', 1, 6, '":" after the field name', '1'],
    ['single quotes', "{'a': 1}", 1, 2, 'a field name in double quotes', "'"],
    [
      'a text that goes over the line',
      '["12 ft\n6 in"]',
      1,
      8,
      'a closing double quote before the line ends',
      'the end of the line',
    ],
    ['a text that does not end', '["12 ft', 1, 2, 'a closing double quote', 'none'],
    ['an escape that does not exist', '["a\\x"]', 1, 4, 'an escape such as \\n, \\" or \\\\', '\\'],
    ['a number with a leading zero', '[007]', 1, 2, 'a value', '007'],
    ['a number that begins with its point', '[ .5]', 1, 3, 'a value', '.5'],
    ['NaN', '[NaN]', 1, 2, 'a value', 'NaN'],
    ['a list that does not end', '[1', 1, 3, '"," or "]"', 'the end of the text'],
    ['text after the document', '{} {}', 1, 4, 'nothing after the document', '{'],
    ['characters beyond the basic plane before it', '["😀" 1]', 1, 6, '"," or "]"', '1'],
    ['a field given twice', '{"low": 1,\n "l\\u006fw": 2}', 2, 2, 'each field once', '"low" again'],
  ])('finds %s', (_, text, line, column, expected, found) => {
    const fault = findJsonFault(text)!
    const { say } = english(null)
    expect({ ...fault, expected: say(fault.expected), found: say(fault.found) }).toEqual({
      ...{ line, column, expected, found },
    })
  })

  test('refuses nesting that would exhaust the stack', () => {
    expect(findJsonFault('['.repeat(100_000))).toMatchObject({ line: 1, column: 102 })
  })

  test('allows one name in two objects', () => {
    expect(findJsonFault('[{"a": {"a": 1}}, {"a": 2}]')).toBeNull()
  })

  // RFC 8259 as the engine's own parser has it
  test('finds a fault exactly where the engine finds one', () => {
    const character = fc.constantFrom(...'{}[]:,"\\/ \n\t0123456789.eE+-truefalsn\u0000é')
    const edited = fc
      .tuple(fc.json({ maxDepth: 4 }), fc.nat(), fc.nat({ max: 2 }), fc.array(character, { maxLength: 2 }))
      .map(([json, at, removed, inserted]) => {
        const start = at % (json.length + 1)
        return json.slice(0, start) + inserted.join('') + json.slice(start + removed)
      })
    fc.assert(
      fc.property(edited, (text) => {
        const fault = findJsonFault(text)
        fc.pre(fault?.expected.kind !== 'each field once')
        expect(fault === null).toBe(parses(text))
      }),
      { seed: 2, numRuns: 3000 },
    )
  })
})

function parses(text: string): boolean {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}
