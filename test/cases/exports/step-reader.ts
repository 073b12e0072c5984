/** A value of an exchange file, as ISO 10303-21 writes it. */
export type Value =
  | { readonly kind: 'unset' | 'derived' }
  | { readonly kind: 'reference'; readonly to: number }
  | { readonly kind: 'enumeration'; readonly literal: string }
  | { readonly kind: 'integer' | 'real'; readonly number: number }
  | { readonly kind: 'string'; readonly text: string }
  | { readonly kind: 'list'; readonly values: readonly Value[] }
  | { readonly kind: 'typed'; readonly type: string; readonly value: Value }

export interface Instance {
  readonly entity: string
  readonly values: readonly Value[]
}

export interface StepFile {
  readonly schema: string
  readonly instances: ReadonlyMap<number, Instance>
}

/**
 * An exchange file, read by rules written here from ISO 10303-21:2016 (clauses 5 to 9, the subset that has one
 * instance a line) and not by the writer's. Throws where the file breaks them.
 */
export function readStep(file: string): StepFile {
  const lines = file.split('\n')
  const at = (line: string): number => {
    const index = lines.indexOf(line)
    if (index < 0) throw new Error(`the file has no line ${line}`)
    return index
  }
  if (lines[0] !== 'ISO-10303-21;') throw new Error('the file does not begin as an exchange file')
  if (at('END-ISO-10303-21;') !== lines.length - 2) throw new Error('the file does not end where it should')
  const data = at('DATA;')
  const schema = /^FILE_SCHEMA\(\('([^']+)'\)\);$/.exec(lines[data - 2] ?? '')?.[1]
  if (schema === undefined) throw new Error('the header does not end with one schema')
  const instances = new Map<number, Instance>()
  for (const line of lines.slice(data + 1, lines.lastIndexOf('ENDSEC;'))) {
    const parts = /^#([1-9]\d*)=([A-Z0-9]+)(\(.*\));$/.exec(line)
    if (parts === null) throw new Error(`no instance: ${line}`)
    const number = Number(parts[1])
    if (instances.has(number)) throw new Error(`#${number} is written twice`)
    const values = readValue(parts[3]!)
    if (values.kind !== 'list') throw new Error(`no list of values: ${line}`)
    instances.set(number, { entity: parts[2]!, values: values.values })
  }
  return { schema, instances }
}

const tokens =
  /(?<space>\s+)|(?<punctuation>[(),])|(?<unset>\$)|(?<derived>\*)|#(?<reference>[1-9]\d*)|\.(?<enumeration>[A-Z][A-Z0-9_]*)\.|(?<real>[+-]?\d+\.\d*(?:E[+-]?\d+)?)|(?<integer>[+-]?\d+)|'(?<string>(?:[^'\\]|''|\\\\|\\X[24]\\(?:[0-9A-F]{4})+\\X0\\)*)'|(?<type>[A-Z][A-Z0-9]*)/y

type Token = Readonly<
  Partial<
    Record<
      | 'space'
      | 'punctuation'
      | 'unset'
      | 'derived'
      | 'reference'
      | 'enumeration'
      | 'real'
      | 'integer'
      | 'string'
      | 'type',
      string
    >
  >
>

function readValue(source: string): Value {
  const found: Token[] = []
  for (let index = 0; index < source.length; index = tokens.lastIndex) {
    tokens.lastIndex = index
    const match = tokens.exec(source)
    if (match === null) throw new Error(`not to be read: ${source.slice(index)}`)
    const token: Token = match.groups!
    if (token.space === undefined) found.push(token)
  }
  const value = oneValue(found)
  if (found.length > 0) throw new Error(`more than one value: ${source}`)
  return value
}

function oneValue(rest: Token[]): Value {
  const token = rest.shift()
  if (token === undefined) throw new Error('a value is missing')
  if (token.unset !== undefined) return { kind: 'unset' }
  if (token.derived !== undefined) return { kind: 'derived' }
  if (token.reference !== undefined) return { kind: 'reference', to: Number(token.reference) }
  if (token.enumeration !== undefined) return { kind: 'enumeration', literal: token.enumeration }
  if (token.real !== undefined) return { kind: 'real', number: Number(token.real) }
  if (token.integer !== undefined) return { kind: 'integer', number: Number(token.integer) }
  if (token.string !== undefined) return { kind: 'string', text: decoded(token.string) }
  if (token.punctuation === '(') return { kind: 'list', values: listed(rest) }
  if (token.type === undefined) throw new Error(`no value begins with ${token.punctuation}`)
  rest.shift()
  const inside = listed(rest)
  if (inside.length !== 1) throw new Error(`${token.type} holds one value`)
  return { kind: 'typed', type: token.type, value: inside[0]! }
}

function listed(rest: Token[]): readonly Value[] {
  const values: Value[] = []
  if (rest[0]?.punctuation === ')') {
    rest.shift()
    return values
  }
  for (;;) {
    values.push(oneValue(rest))
    const next = rest.shift()?.punctuation
    if (next === ')') return values
    if (next !== ',') throw new Error('a list is not closed')
  }
}

const decoded = (written: string): string =>
  written.replace(/''|\\\\|\\X([24])\\([0-9A-F]+)\\X0\\/g, (all, octets: string | undefined, codes: string) => {
    if (octets === undefined) return all[0]!
    const size = Number(octets) * 2
    const characters = codes.match(new RegExp(`.{${size}}`, 'g')) ?? []
    return characters.map((code) => String.fromCodePoint(Number.parseInt(code, 16))).join('')
  })
