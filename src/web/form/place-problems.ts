import type { InputProblem } from '../../formats/input-problem.ts'

/** Problems by the field that shows them, and those that no field can show. */
export interface PlacedProblems {
  readonly at: ReadonlyMap<string, readonly InputProblem[]>
  readonly rest: readonly InputProblem[]
}

/**
 * Where each problem is shown: at the field of its place; or at the first field inside its place, as the kind of an
 * alignment for `road.alignment`; or at the field that its place lies in.
 * @param places  of the fields, in the order of the form
 */
export function placeProblems(problems: readonly InputProblem[], places: readonly string[]): PlacedProblems {
  const at = new Map<string, readonly InputProblem[]>()
  const rest: InputProblem[] = []
  for (const problem of problems) {
    const place = fieldFor(problem.place, places)
    if (place === undefined) rest.push(problem)
    else at.set(place, [...(at.get(place) ?? []), problem])
  }
  return { at, rest }
}

const fieldFor = (place: string, places: readonly string[]): string | undefined =>
  places.find((one) => one === place) ??
  places.find((one) => isInside(one, place)) ??
  places.find((one) => isInside(place, one))

const isInside = (inner: string, outer: string): boolean =>
  outer !== '' && (inner.startsWith(`${outer}.`) || inner.startsWith(`${outer}[`))
