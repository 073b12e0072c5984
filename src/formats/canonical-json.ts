/**
 * `value` as the one JSON text that equal values share: no spaces, names in order of their UTF-16 code units, numbers
 * and strings as ECMAScript prints them; a field that is `undefined` is left out.
 * @throws TypeError for what JSON cannot hold: NaN, infinities, functions, dates, `undefined` in a list
 * @source the rules of RFC 8785 (JSON Canonicalization Scheme), section 3.2
 * @example canonicalJson({ b: 1, a: [true, null] })  // '{"a":[true,null],"b":1}'
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value)
  if (typeof value === 'number' && Number.isFinite(value)) return JSON.stringify(value)
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`
  if (!isPlainRecord(value)) throw new TypeError(`no JSON value: ${String(value)}`)
  const fields = Object.keys(value)
    .filter((name) => value[name] !== undefined)
    .sort()
    .map((name) => `${JSON.stringify(name)}:${canonicalJson(value[name])}`)
  return `{${fields.join(',')}}`
}

export function isPlainRecord(value: unknown): value is Record<string, unknown> {
  if (typeof value !== 'object' || value === null) return false
  const prototype: unknown = Object.getPrototypeOf(value)
  return prototype === Object.prototype || prototype === null
}
