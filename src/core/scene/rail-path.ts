import type { RunModel } from '../requirements/run-model.ts'
import { railLine } from '../staking/rail-line.ts'
import { inches, type Metres, type Radians } from '../units/quantity.ts'
import { moved, vector } from './mesh.ts'
import type { Vector } from './scene.ts'
import type { Standing } from './standing.ts'

/** The face of rail as it stands, by the distance along it from the centre of post 1, m. The road runs straight. */
export interface RailPath {
  /** Foot of the face of rail, z positive away from the road. */
  at(along: Metres): Vector
  /** Turn of the rail there, right-handed round the vertical. */
  turn(along: Metres): Radians
  /** Top of rail above finish grade. */
  top(along: Metres): Metres
  /** Where the rail may bend, rising. */
  readonly bends: readonly Metres[]
}

export function railPath(model: RunModel, { posts, panels }: Standing): RailPath {
  const line = railLine(model)
  const awayOnLine = (along: Metres): Metres => (line.ok ? line.value.awayAt(along) : 0)
  const alongRoad = (along: Metres): Metres => (line.ok ? line.value.alongAt(along) : along)
  const aside = between(posts.map(({ along, away }) => [along, away - awayOnLine(along)]))
  const top = between(posts.map(({ along, top }) => [along, top]))
  const bow = bows(inches(model.layout.panels[0]?.fromInches ?? 0), panels)
  const awayAt = (along: Metres): Metres => awayOnLine(along) + aside(along) + bow(along)
  const start = alongRoad(0)
  const at = (along: Metres): Vector => vector(alongRoad(along) - start, 0, awayAt(along))
  return {
    at,
    turn: (along) => {
      const [a, b] = [at(along - inches(1)), at(along + inches(1))]
      return -Math.atan2(b.z - a.z, b.x - a.x)
    },
    top,
    bends: [...posts.map(({ along }) => along), ...(line.ok ? line.value.corners : [])]
      .filter(Number.isFinite)
      .sort((a, b) => a - b),
  }
}

/** Linear between known places, and as at the nearest beyond them. */
function between(known: readonly (readonly [along: Metres, value: Metres])[]): (along: Metres) => Metres {
  return (along) => {
    const after = known.findIndex(([at]) => at >= along)
    if (after === 0) return known[0]![1]
    if (after < 0) return known.at(-1)?.[1] ?? 0
    const [[from, a], [to, b]] = [known[after - 1]!, known[after]!]
    return a + ((b - a) * (along - from)) / (to - from)
  }
}

/** What the bows of panels add: a parabola over each, which vanishes at its ends. */
function bows(from: Metres, panels: Standing['panels']): (along: Metres) => Metres {
  if (panels.every(({ bow }) => bow === 0)) return () => 0
  return (along) => {
    let start = from
    for (const { length, bow } of panels) {
      const share = (along - start) / length
      if (share >= 0 && share <= 1) return 4 * bow * share * (1 - share)
      start += length
    }
    return 0
  }
}

/** A point of a shape whose x lies along the rail, y up and z away from the road, at its place. */
export function placed({ x, y, z }: Vector, at: Vector, turn: Radians): Vector {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  return moved(vector(x * cos + z * sin, y, z * cos - x * sin), at)
}
