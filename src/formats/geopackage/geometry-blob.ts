import type { Geographic } from '../map/reference-system.ts'

/**
 * A GeoPackage geometry (OGC 12-128r18, 2.1.3): `GP`, version 0, flags, reference system, the envelope of a line, then
 * the well-known binary; little-endian. Coordinates are x before y.
 */
export function geometryBlob(srs: number, kind: 'point' | 'line', points: readonly Geographic[]): Uint8Array {
  const line = kind === 'line'
  const bytes = new Uint8Array(8 + (line ? 32 : 0) + 5 + (line ? 4 : 0) + points.length * 16)
  const view = new DataView(bytes.buffer)
  let at = 0
  const put = (size: 1 | 4 | 8, value: number): void => {
    if (size === 1) view.setUint8(at, value)
    else if (size === 4) view.setInt32(at, value, true)
    else view.setFloat64(at, value, true)
    at += size
  }
  for (const letter of [0x47, 0x50, 0]) put(1, letter)
  // flags: bit 0 little-endian, bits 1 to 3 the envelope's kind (1: x and y)
  put(1, line ? 0b0011 : 0b0001)
  put(4, srs)
  if (line) {
    for (const axis of [0, 1] as const) {
      const values = points.map((point) => point[axis])
      put(8, Math.min(...values))
      put(8, Math.max(...values))
    }
  }
  put(1, 1)
  put(4, line ? 2 : 1)
  if (line) put(4, points.length)
  for (const [x, y] of points) {
    put(8, x)
    put(8, y)
  }
  return bytes
}
