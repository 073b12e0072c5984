/** Where in plain data the first number stands that is none or endless, as `path[1].station`; null where all are finite. */
export function findNotFinite(value: unknown, place = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : place
  if (typeof value !== 'object' || value === null) return null
  for (const [key, inner] of Object.entries(value)) {
    const below = Array.isArray(value) ? `${place}[${key}]` : place === '' ? key : `${place}.${key}`
    const found = findNotFinite(inner, below)
    if (found !== null) return found
  }
  return null
}
