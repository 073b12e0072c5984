import { inches } from '../units/quantity.ts'
import type { Mesh, Vector } from './scene.ts'

/**
 * The closed surface over rings of as many points each, which run against the clock looked at from where the sweep goes
 * to. Caps are strips from the ring's first and last points inward, so an outline of two like sides, as that of a plate
 * bent to a rail, is capped rightly too.
 *
 * @param rings  two or more, each of an even number of points
 */
export function sweep(rings: readonly (readonly Vector[])[]): Mesh {
  const size = rings[0]!.length
  const last = (rings.length - 1) * size
  const triangles: number[] = []
  for (let ring = 0; ring < rings.length - 1; ring++)
    for (let i = 0; i < size; i++) {
      const j = (i + 1) % size
      const [a, b] = [ring * size, (ring + 1) * size]
      triangles.push(a + i, a + j, b + j, a + i, b + j, b + i)
    }
  for (let i = 0; i < size / 2 - 1; i++) {
    const [j, k, l] = [i + 1, size - 2 - i, size - 1 - i]
    triangles.push(i, k, j, i, l, k)
    triangles.push(last + i, last + j, last + k, last + i, last + k, last + l)
  }
  return { points: rings.flat(), triangles }
}

export const vector = (x: number, y: number, z: number): Vector => ({ x, y, z })

export const moved = ({ x, y, z }: Vector, by: Vector): Vector => vector(x + by.x, y + by.y, z + by.z)

/** A box between two levels of each axis, inches. */
export function box(x: Span, y: Span, z: Span): Mesh {
  const ring = (level: number): Vector[] => [
    vector(inches(x[0]), inches(level), inches(z[0])),
    vector(inches(x[0]), inches(level), inches(z[1])),
    vector(inches(x[1]), inches(level), inches(z[1])),
    vector(inches(x[1]), inches(level), inches(z[0])),
  ]
  return sweep([ring(y[0]), ring(y[1])])
}

export type Span = readonly [from: number, to: number]

/** A round bar along z, inches. */
export function roundAcross(x: number, y: number, z: Span, radius: number, sides: number): Mesh {
  const ring = (at: number): Vector[] =>
    Array.from({ length: sides }, (_, i) => {
      const angle = (2 * Math.PI * i) / sides
      return vector(inches(x + radius * Math.cos(angle)), inches(y + radius * Math.sin(angle)), inches(at))
    })
  return sweep([ring(z[0]), ring(z[1])])
}

/** A round bar along a line that never runs straight up, m. */
export function bar(line: readonly Vector[], radius: number, sides = 6): Mesh {
  return sweep(
    line.map((at, i) => {
      const [a, b] = [line[Math.max(i - 1, 0)]!, line[Math.min(i + 1, line.length - 1)]!]
      const flat = Math.hypot(b.x - a.x, b.z - a.z)
      const long = Math.hypot(flat, b.y - a.y)
      const [ahead, aside, rise] = [(b.x - a.x) / flat, (b.z - a.z) / flat, (b.y - a.y) / long]
      const level = flat / long
      return Array.from({ length: sides }, (_, side) => {
        const angle = (2 * Math.PI * side) / sides
        const [up, right] = [radius * Math.cos(angle), radius * Math.sin(angle)]
        return vector(
          at.x - up * rise * ahead - right * aside,
          at.y + up * level,
          at.z - up * rise * aside + right * ahead,
        )
      })
    }),
  )
}

/** Several closed surfaces as one. */
export function joined(meshes: readonly Mesh[]): Mesh {
  const points: Vector[] = []
  const triangles: number[] = []
  for (const mesh of meshes) {
    for (const corner of mesh.triangles) triangles.push(corner + points.length)
    points.push(...mesh.points)
  }
  return { points, triangles }
}

/** The same on the other side of the plane z = 0. */
export function mirrored({ points, triangles }: Mesh): Mesh {
  const turned: number[] = []
  for (let i = 0; i < triangles.length; i += 3) turned.push(triangles[i]!, triangles[i + 2]!, triangles[i + 1]!)
  return { points: points.map(({ x, y, z }) => vector(x, y, -z)), triangles: turned }
}
