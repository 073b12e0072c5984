/**
 * What an object or list of a sheet holds, by the name under which a path of values has it: things with an id or a number by
 * that, whatever their place in the list; null for a plain value.
 * @example [...namedFields([{ id: 'cable' }, { id: 'plate' }])!.keys()]  // ['[cable]', '[plate]']
 */
export function namedFields(value: unknown): ReadonlyMap<string, unknown> | null {
  if (typeof value !== 'object' || value === null) return null
  if (!Array.isArray(value)) return new Map(Object.entries(value))
  const keys = value.map(keyOf)
  const areNamed = keys.every((key) => key !== null) && new Set(keys).size === keys.length
  return new Map(value.map((one, i) => [`[${areNamed ? keys[i] : i}]`, one]))
}

/** The path of what is called `name` in what stands at `place`. */
export const pathWithin = (place: string, name: string): string =>
  name.startsWith('[') || place === '' ? `${place}${name}` : `${place}.${name}`

/** The same value with what stands at each path changed, from the outermost inward. */
export function withEach<T>(value: T, change: (inner: unknown, place: string) => unknown, place = ''): T {
  const next = change(value, place)
  const fields = namedFields(next)
  if (fields === null) return next as T
  const inner = [...fields].map(([name, one]) => [name, withEach(one, change, pathWithin(place, name))] as const)
  return (Array.isArray(next) ? inner.map(([, one]) => one) : Object.fromEntries(inner)) as T
}

function keyOf(value: unknown): string | null {
  if (typeof value !== 'object' || value === null) return null
  const { id, number } = value as { readonly id?: unknown; readonly number?: unknown }
  const key = id ?? number
  return typeof key === 'string' || typeof key === 'number' ? `${key}` : null
}
