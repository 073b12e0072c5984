import { SaxesParser } from 'saxes'
import { err, ok, type Result } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import type { InputProblem } from '../input-problem.ts'

/** One XML element; `place` is the line and column of its start tag. */
export interface XmlElement {
  readonly name: string
  readonly namespace: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly XmlElement[]
  readonly text: string
  readonly place: string
}

/**
 * The root element of `text` with the children named in `keep` at the second level, and everything below them;
 * surfaces and other bulk are passed over without being held.
 *
 * A document type declaration is not acted upon: nothing is fetched, and an entity other than the five of XML is an error.
 */
export function readXml(file: string, text: string, keep: readonly string[]): Result<XmlElement, InputProblem> {
  type Growing = XmlElement & { readonly children: XmlElement[]; text: string }
  const parser = new SaxesParser({ xmlns: true, position: true })
  const open: (Growing | null)[] = []
  let root: Growing | null = null
  let problem: InputProblem | null = null
  parser.on('error', (cause) => {
    problem ??= {
      file,
      place: `${parser.line}:${parser.column}`,
      expected: { kind: 'well-formed XML' },
      found: theirs(cause.message.replace(/^\d+:\d+: /, '')),
    }
  })
  parser.on('opentag', (tag) => {
    const parent = open.at(-1)
    const isHeld = open.length === 0 || (parent !== null && (open.length > 1 || keep.includes(tag.local)))
    if (!isHeld) {
      open.push(null)
      return
    }
    const element: Growing = {
      name: tag.local,
      namespace: tag.uri,
      attributes: Object.fromEntries(
        Object.values(tag.attributes).map((attribute) => [attribute.local, attribute.value]),
      ),
      children: [],
      text: '',
      place: `${parser.line}:${parser.column}`,
    }
    if (parent) parent.children.push(element)
    else root = element
    open.push(element)
  })
  const addText = (part: string): void => {
    const element = open.at(-1)
    if (element) element.text += part
  }
  parser.on('text', addText)
  parser.on('cdata', addText)
  parser.on('closetag', () => {
    open.pop()
  })
  parser.write(text.replace(/^\uFEFF/, '')).close()
  if (problem !== null) return err(problem)
  if (root === null) return err({ file, place: '', expected: { kind: 'XML element' }, found: { kind: 'nothing' } })
  return ok(root)
}

/** The children of `element` with this name. */
export const childrenOf = (element: XmlElement, name: string): readonly XmlElement[] =>
  element.children.filter((child) => child.name === name)
