import type { RunEnd } from '../core/layout/layout.ts'
import { flareBends } from '../core/layout/run-flare.ts'
import type { StripEnd, StripInput } from '../drawing/views/strip/strip-input.ts'
import { leavingProse, type Print } from '../words/print.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-run.ts'

/** What a view of the run shows, in the words of `print`; the verdicts when it is judged. */
export function stripInput(required: RequiredRun | JudgedRun, print: Print): StripInput {
  const { run, request, model } = required
  const { road } = run
  return {
    layout: model.layout,
    system: model.system,
    first: stripEnd(request.first),
    second: stripEnd(request.second),
    flareRate: isFlared(model) ? (run.flare?.rate ?? null) : null,
    traffic: road.traffic,
    obstructions: run.obstructions,
    need: run.need,
    verdicts: 'judgement' in required ? required.judgement.verdicts : null,
    titles: {
      run: run.name,
      route: road.route ?? '',
      stations: road.datumStation === null ? '' : `datum at ${road.datumStation}`,
    },
    units: run.units === 'metric' ? 'metric' : 'feet and inches',
    print: leavingProse(print),
    lateralExaggeration: 2,
  }
}

const isFlared = ({ layout, flare }: RequiredRun['model']): boolean =>
  Object.values(flareBends(layout, flare)).some((bend) => bend !== null)

const stripEnd = (end: RunEnd): StripEnd =>
  end.kind === 'unit'
    ? { name: end.sheet.name, kind: end.sheet.kind, sheet: end.sheet }
    : { name: 'standing run', kind: 'standing splice', sheet: null }
