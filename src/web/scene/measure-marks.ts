import { BufferGeometry, type Color, Group, Line, LineBasicMaterial, Points, PointsMaterial, Vector3 } from 'three'
import type { Vector } from '../../core/scene/scene.ts'

/** The points that were touched to measure, and the tape or string between the first two. */
export function measureMarks(points: readonly Vector[], ink: Color): Group {
  const group = new Group()
  const at = points.map(({ x, y, z }) => new Vector3(x, y, z))
  // What is measured is seen through what lies before it.
  const always = { color: ink, depthTest: false }
  group.add(
    new Points(
      new BufferGeometry().setFromPoints(at),
      new PointsMaterial({ ...always, size: 9, sizeAttenuation: false }),
    ),
    new Line(new BufferGeometry().setFromPoints(at.slice(0, 2)), new LineBasicMaterial(always)),
  )
  for (const one of group.children) one.renderOrder = 1
  return group
}
