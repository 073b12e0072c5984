import { placesIn } from '../core/record/places-in.ts'
import { placeIdsIn, type RunVersion } from '../core/record/version.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { requireRun } from './require-run.ts'

/**
 * What is wrong with a version of a run that is to follow `from`; empty when it can be taken in. Its history has to be
 * that of the one before it and one step more, an id may mean nothing but what it meant, and what is gone is listed.
 * @param id    that of the entry that brings it
 * @param from  the version before it; without a layout where the run is pinned by this one
 */
export function versionProblems(file: string, run: RunFile, id: string, from: RunFile): readonly InputProblem[] {
  const problem = (place: string, expected: string, found: string): InputProblem => ({ file, place, expected, found })
  const { version } = run
  if (version === undefined) return [problem('format', '"lapwise-run/2"', '"lapwise-run/1"')]
  if (version.id !== id) return [problem('version', 'the id of the entry', JSON.stringify(version.id))]
  const required = requireRun(file, run)
  if (!required.ok) return required.error
  const last = version.earlier.at(-1)
  if (from.version === undefined)
    return last === undefined ? [] : [problem('earlier', 'nothing, as the run was not pinned before', 'versions')]
  const before: RunVersion = from.version
  const wanted = [...before.earlier, { ...last, id: before.id }]
  if (last === undefined || canonicalJson(version.earlier) !== canonicalJson(wanted))
    return [problem('earlier', `those of version ${before.id}, and that one`, `${version.earlier.length} of them`)]
  const earlier = requireRun(file, from)
  if (!earlier.ok) return earlier.error
  const [old, now] = [placesIn(earlier.value.model), placesIn(required.value.model)]
  const moved = [...now].filter(([place, is]) => old.has(place) && old.get(place) !== is)
  const gone = new Set(last.gone)
  const here = new Set(placeIdsIn(version.layout))
  const unlisted = placeIdsIn(before.layout).filter((place) => !here.has(place) && !gone.has(place))
  return [
    ...moved.map(([place]) => problem('layout', 'another id for another place', JSON.stringify(place))),
    ...unlisted.map((place) => problem('earlier', 'every place that is gone', `no ${place}`)),
  ]
}
