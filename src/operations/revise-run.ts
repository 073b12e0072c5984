import { askedOtherwise, mapPlaces } from '../core/record/map-places.ts'
import { placeIdsIn, type RunVersion } from '../core/record/version.ts'
import { deriveRequirements } from '../core/requirements/derive-requirements.ts'
import { err, ok, type Result } from '../core/result.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { pinnedTo } from './pin-run.ts'
import type { RequiredRun } from './require-by.ts'
import { requireRun } from './require-run.ts'

/** The next version of a run, and what became of the places of the one before. */
export interface RevisedRun {
  readonly run: RunFile
  readonly kept: readonly string[]
  readonly gone: readonly string[]
  readonly added: readonly string[]
  /** What is read at places that were kept and is asked otherwise now. */
  readonly askedOtherwise: readonly string[]
}

/**
 * The version of a pinned run that follows when `asked` is laid out in its place: another need, other hardware, another
 * edition of a sheet, a layout decided on. Nothing moves silently: what is no longer there is listed.
 * @param version  id of the next version
 * @param because  why the run is changed, as somebody wrote it; null where nobody did
 */
export function reviseRun(
  files: { readonly before: string; readonly asked: string },
  before: RunFile,
  asked: RunFile,
  version: string,
  because: string | null = null,
): Result<RevisedRun, readonly InputProblem[]> {
  const problem = (file: string, kind: 'pinned run' | 'asked run', found: string) =>
    err([{ file, place: 'format', expected: { kind }, found: written(found) }])
  if (before.version === undefined) return problem(files.before, 'pinned run', 'lapwise-run/1')
  if (asked.version !== undefined) return problem(files.asked, 'asked run', 'lapwise-run/2')
  const old = requireRun(files.before, before)
  if (!old.ok) return old
  // What is asked anew seldom says of which site: the run stays made of the one that it was made of.
  const fresh = requireRun(files.asked, { madeOf: before.madeOf, ...asked })
  if (!fresh.ok) return fresh
  return ok(followingVersion(old.value, before.version, fresh.value, version, because))
}

/**
 * The same for a layout that was chosen.
 * @param was      the version that `before` is in
 */
export function followingVersion(
  before: RequiredRun,
  was: RunVersion,
  fresh: RequiredRun,
  version: string,
  because: string | null,
): RevisedRun {
  const { id, earlier, layout } = was
  const used = new Set([...placeIdsIn(layout), ...earlier.flatMap(({ gone }) => gone)])
  const mapped = mapPlaces(before.model, fresh.model, used, markOf(version))
  const model = { ...fresh.model, layout: mapped.layout }
  const changed = askedOtherwise(before, { model, requirements: deriveRequirements(model) })
  const { kept, gone, added } = mapped
  const step = { id, gone, askedOtherwise: changed, ...(because === null ? {} : { because }) }
  return {
    run: pinnedTo({ run: fresh.run, model }, { id: version, earlier: [...earlier, step] }),
    ...{ kept, gone, added, askedOtherwise: changed },
  }
}

/** The end of an id of a version, which is random: marks the places that it adds. */
const markOf = (version: string): string => version.replace(/[^0-9a-z]/g, '').slice(-12)
