import { err, ok, type Result } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import type { InputProblem } from '../input-problem.ts'

/**
 * The text of an XML file in the encoding that its first bytes or its declaration name; without either it is UTF-8, as
 * XML has it (XML 1.0, appendix F). A text that is no XML comes back as UTF-8.
 */
export function decodeXml(file: string, bytes: Uint8Array): Result<string, readonly InputProblem[]> {
  const label = encodingOf(bytes)
  const wrong = (expected: 'encoding of road' | 'characters of encoding') =>
    err([{ file, place: '', expected: { kind: expected }, found: theirs(label) }] as const)
  // A name in the wrong characters keeps no road from being read where its file says nothing.
  const decode = (content: Uint8Array): string => new TextDecoder(label, { fatal: label !== 'utf-8' }).decode(content)
  try {
    decode(new Uint8Array())
  } catch {
    return wrong('encoding of road')
  }
  try {
    return ok(decode(bytes))
  } catch {
    return wrong('characters of encoding')
  }
}

function encodingOf(bytes: Uint8Array): string {
  const [first, second] = bytes
  // A mark of the byte order, or "<" in two bytes.
  if ((first === 0xff && second === 0xfe) || (first === 0x3c && second === 0)) return 'utf-16le'
  if ((first === 0xfe && second === 0xff) || (first === 0 && second === 0x3c)) return 'utf-16be'
  const begin = new TextDecoder('latin1').decode(bytes.subarray(0, 200))
  const [, declared = 'utf-8'] =
    /^(?:\u00EF\u00BB\u00BF)?\s*<\?xml[^>]*?encoding\s*=\s*["']([^"']+)["']/.exec(begin) ?? []
  return declared.toLowerCase()
}
