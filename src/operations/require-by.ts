import type { Layout, LayoutRequest } from '../core/layout/layout.ts'
import { deriveRequirements } from '../core/requirements/derive-requirements.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { chooseLayout } from './choose-layout.ts'
import type { LayoutMeans } from './means-of-today.ts'

/** A run with its chosen layout and all that must be true of it. */
export interface RequiredRun {
  readonly run: RunFile
  readonly request: LayoutRequest
  readonly model: RunModel
  readonly requirements: readonly Requirement[]
}

/** @param means  what a run that is not pinned is laid out by; without them such a run is refused */
export function requireBy(
  means: LayoutMeans | null,
  file: string,
  run: RunFile,
): Result<RequiredRun, readonly InputProblem[]> {
  const chosen = chooseLayout(file, run, means)
  return chosen.ok ? ok(requiredFor(run, chosen.value)) : chosen
}

/** The run with a layout that somebody chose for it. */
export function requiredFor(
  run: RunFile,
  { request, layout }: { readonly request: LayoutRequest; readonly layout: Layout },
): RequiredRun {
  const isLocated = run.road.datumStation !== null || run.road.position !== undefined
  const model: RunModel = {
    layout,
    system: request.system,
    first: request.first,
    second: request.second,
    flare: run.flare,
    work: run.work,
    letting: run.letting,
    curb: run.curb,
    siteChecks: run.madeOf?.checks,
    counted: run.counted === undefined ? undefined : { ...run.counted, need: run.need, isLocated },
    speed: run.road.speed === null ? null : { value: run.road.speed, unit: run.units === 'us' ? 'mi/h' : 'km/h' },
    opposingReaches: run.road.opposingReaches ?? (run.road.traffic === 'one-way' ? false : null),
  }
  return { run, request, model, requirements: deriveRequirements(model) }
}
