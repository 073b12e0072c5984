import { err, ok, type Result } from '../core/result.ts'
import { theirs } from '../core/theirs.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'
import type { InputProblem } from './input-problem.ts'

/** What keeps a text from being one JSON document, and where; line and column are counted from 1. */
export interface JsonFault {
  readonly line: number
  readonly column: number
  readonly expected: ProblemSaying
  readonly found: Found
}

type Found = NonNullable<InputProblem['found']>

interface Fault {
  readonly at: number
  readonly expected: ProblemSaying
  readonly found?: Found
}

/** Deeper than any document of ours; keeps hostile nesting from exhausting the stack. */
const deepest = 100

/**
 * The first fault of `text` as JSON (RFC 8259), or null when it has none.
 *
 * Stricter than `JSON.parse` in one point: a field given twice in one object is a fault, because the first of the two
 * would vanish unseen.
 */
export function findJsonFault(text: string): JsonFault | null {
  const end = readValue(text, skipBlank(text, 0), 0)
  const fault = end.ok ? faultAfter(text, end.value) : end.error
  if (!fault) return null
  const before = text.slice(0, fault.at).split(/\r\n|\r|\n/)
  return {
    line: before.length,
    column: [...(before.at(-1) ?? '')].length + 1,
    expected: fault.expected,
    found: fault.found ?? wordAt(text, fault.at),
  }
}

function faultAfter(text: string, end: number): Fault | null {
  const at = skipBlank(text, end)
  return at === text.length ? null : { at, expected: { kind: 'end of document' } }
}

/** Index of the first character after the value that begins at `at`. */
function readValue(text: string, at: number, depth: number): Result<number, Fault> {
  if (depth > deepest) return err({ at, expected: { kind: 'levels of nesting', most: deepest } })
  switch (text[at]) {
    case '{':
      return readObject(text, at, depth)
    case '[':
      return readList(text, at, depth)
    case '"':
      return readText(text, at)
    default: {
      const plain = matchAt(/(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y, text, at)
      return plain === '' ? err({ at, expected: { kind: 'a value' } }) : ok(at + plain.length)
    }
  }
}

function readObject(text: string, start: number, depth: number): Result<number, Fault> {
  const names = new Set<string>()
  let at = skipBlank(text, start + 1)
  if (text[at] === '}') return ok(at + 1)
  for (;;) {
    if (text[at] !== '"') return err({ at, expected: { kind: 'field name in quotes' } })
    const nameEnd = readText(text, at)
    if (!nameEnd.ok) return nameEnd
    const name: string = JSON.parse(text.slice(at, nameEnd.value))
    if (names.has(name)) return err({ at, expected: { kind: 'each field once' }, found: { kind: 'field again', name } })
    names.add(name)

    const colon = skipBlank(text, nameEnd.value)
    if (text[colon] !== ':') return err({ at: colon, expected: { kind: 'colon' } })
    const value = readValue(text, skipBlank(text, colon + 1), depth + 1)
    if (!value.ok) return value
    at = skipBlank(text, value.value)
    if (text[at] === '}') return ok(at + 1)
    if (text[at] !== ',') return err({ at, expected: { kind: 'comma or brace' } })
    at = skipBlank(text, at + 1)
  }
}

function readList(text: string, start: number, depth: number): Result<number, Fault> {
  let at = skipBlank(text, start + 1)
  if (text[at] === ']') return ok(at + 1)
  for (;;) {
    const value = readValue(text, at, depth + 1)
    if (!value.ok) return value
    at = skipBlank(text, value.value)
    if (text[at] === ']') return ok(at + 1)
    if (text[at] !== ',') return err({ at, expected: { kind: 'comma or bracket' } })
    at = skipBlank(text, at + 1)
  }
}

function readText(text: string, start: number): Result<number, Fault> {
  let at = start + 1
  while (at < text.length) {
    const character = text[at] as string
    if (character === '"') return ok(at + 1)
    if (character < ' ') return err({ at, expected: { kind: 'quote before line end' } })
    const step = character === '\\' ? matchAt(/\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y, text, at) : character
    if (step === '') return err({ at, expected: { kind: 'escape' } })
    at += step.length
  }
  return err({ at: start, expected: { kind: 'closing quote' }, found: { kind: 'none' } })
}

const skipBlank = (text: string, at: number): number => at + matchAt(/[ \t\r\n]*/y, text, at).length

function matchAt(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at
  return pattern.exec(text)?.[0] ?? ''
}

/** The word or character at `at`, for a message. */
function wordAt(text: string, at: number): Found {
  if (at >= text.length) return { kind: 'end of text' }
  const word = matchAt(/[\w.+-]{1,40}|./suy, text, at)
  return word < ' ' ? { kind: 'end of line' } : theirs(word)
}
