import { parseLength } from '../../../src/core/units/length-text.ts'

/** One line of boundaries.txt. */
export interface Boundary {
  readonly line: string
  readonly run: string
  readonly of: string
  readonly side: string | null
  /** Standard uncertainty u, half of what the line says, in whole nanometres; null for simple acceptance. */
  readonly doubt: { readonly value: number; readonly unit: 'mm' } | null
  readonly cases: readonly { readonly value: string; readonly verdict: string }[]
}

/**
 * The lines of a list of boundary cases, whose head explains how they are written.
 * @throws on a line that is not written so: a case that is skipped would be a check that is lost
 */
export const readBoundaries = (text: string): readonly Boundary[] =>
  text
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map(readLine)

function readLine(line: string): Boundary {
  const head = /^(\S+) (\S+)(?: (away|toward))? (?:(simple)|± ([^:]+)):(.+)$/.exec(line)
  if (head === null) throw new Error(`boundaries.txt: cannot be read: ${line}`)
  const [, run = '', of = '', side = null, , doubt, cases = ''] = head
  return {
    line,
    run,
    of,
    side,
    doubt: doubt === undefined ? null : halfOf(doubt),
    cases: cases.split(',').map(readCase),
  }
}

function readCase(text: string): Boundary['cases'][number] {
  const found = /^\s*(.+?) (meets|too close|fails|unread)\s*$/.exec(text)
  if (found === null) throw new Error(`boundaries.txt: expected a value and its verdict, found "${text}"`)
  return { value: found[1]!, verdict: found[2]! }
}

function halfOf(text: string): { value: number; unit: 'mm' } {
  const length = parseLength(text, null)
  if (!length.ok) throw new Error(`boundaries.txt: no length: ${text}`)
  return { value: length.value.nanometres / 2 / 1e6, unit: 'mm' }
}
