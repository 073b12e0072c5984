import type { Metres } from '../units/quantity.ts'

/**
 * A place where the stationing jumps: traffic that reaches `back` goes on from `ahead`. `internal` is the continuous
 * station of the same place. All in m; `back` follows from the others and is what a file states for checking.
 */
export interface StationEquation {
  readonly internal: Metres
  readonly back: Metres
  readonly ahead: Metres
}

/** The stations written on the stakes at a continuous station: two at an equation itself (back first), else one. */
export function writtenStations(equations: readonly StationEquation[], internal: Metres): readonly Metres[] {
  const at = equations.find((equation) => Math.abs(equation.internal - internal) < sameStation)
  if (at !== undefined) return [at.back, at.ahead]
  const passed = equations.findLast((equation) => equation.internal < internal)
  return [passed === undefined ? internal : passed.ahead + (internal - passed.internal)]
}

/** One place that a written station can mean. */
export interface StationMeaning {
  readonly internal: Metres
  /** Number of equations that lie before it: 0 up to the first, and so on. */
  readonly region: number
}

/**
 * Every place that the written station can mean, in order: one as a rule, two where the stationing overlaps,
 * none in a gap. How far the alignment reaches is for the caller to judge.
 */
export function meaningsOf(equations: readonly StationEquation[], written: Metres): readonly StationMeaning[] {
  const meanings: StationMeaning[] = []
  for (let region = 0; region <= equations.length; region++) {
    const before = equations[region - 1]
    const after = equations[region]
    const internal = before === undefined ? written : before.internal + (written - before.ahead)
    if (before !== undefined && internal < before.internal - sameStation) continue
    if (after !== undefined && internal > after.internal + sameStation) continue
    if (meanings.some((meaning) => Math.abs(meaning.internal - internal) < sameStation)) continue
    meanings.push({ internal, region })
  }
  return meanings
}

/** Stations closer than this are the same place, m. */
const sameStation = 1e-7
