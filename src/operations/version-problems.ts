import { placesIn } from '../core/record/places-in.ts'
import { placeIdsIn, type RunVersion } from '../core/record/version.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { requireRun } from './require-run.ts'

/**
 * What is wrong with a version of a run that is to follow `from`; empty when it can be taken in. Its history has to be
 * that of the one before it and one step more, an id may mean nothing but what it meant, and what is gone is listed.
 * @param id    that of the entry that brings it
 * @param from  the version before it; without a layout where the run is pinned by this one
 */
export function versionProblems(file: string, run: RunFile, id: string, from: RunFile): readonly InputProblem[] {
  const problem = (place: string, expected: InputProblem['expected'], found: InputProblem['found']): InputProblem => ({
    file,
    place,
    expected,
    found,
  })
  const { version } = run
  if (version === undefined)
    return [problem('format', { kind: 'this value', value: '"lapwise-run/2"' }, written('lapwise-run/1'))]
  if (version.id !== id) return [problem('version', { kind: 'id of the entry' }, written(version.id))]
  const required = requireRun(file, run)
  if (!required.ok) return required.error
  const last = version.earlier.at(-1)
  if (from.version === undefined)
    return last === undefined ? [] : [problem('earlier', { kind: 'no earlier version' }, { kind: 'versions' })]
  const before: RunVersion = from.version
  const wanted = [...before.earlier, { ...last, id: before.id }]
  if (last === undefined || canonicalJson(version.earlier) !== canonicalJson(wanted))
    return [
      problem(
        'earlier',
        { kind: 'earlier versions', before: before.id },
        { kind: 'version count', count: version.earlier.length },
      ),
    ]
  const earlier = requireRun(file, from)
  if (!earlier.ok) return earlier.error
  const [old, now] = [placesIn(earlier.value.model), placesIn(required.value.model)]
  const moved = [...now].filter(([place, is]) => old.has(place) && old.get(place) !== is)
  const gone = new Set(last.gone)
  const here = new Set(placeIdsIn(version.layout))
  const unlisted = placeIdsIn(before.layout).filter((place) => !here.has(place) && !gone.has(place))
  return [
    ...moved.map(([place]) => problem('layout', { kind: 'id of this place' }, written(place))),
    ...unlisted.map((place) => problem('earlier', { kind: 'gone places' }, { kind: 'unlisted place', place })),
  ]
}
