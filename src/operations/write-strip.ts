import type { RunEnd } from '../core/layout/layout.ts'
import type { PaperName } from '../drawing/paper.ts'
import { writeSvg } from '../drawing/svg/write-svg.ts'
import type { StripEnd, StripInput } from '../drawing/views/strip/strip-input.ts'
import { stripDrawing, stripPages } from '../drawing/views/strip.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-run.ts'

/** The strip as SVG: one long picture for a screen, or one picture a sheet of paper. Verdicts when the run is judged. */
export function writeStrip(required: RequiredRun | JudgedRun, page: 'web' | PaperName): readonly string[] {
  const input = stripInput(required)
  return page === 'web' ? [writeSvg(stripDrawing(input))] : stripPages(input, page).map((drawing) => writeSvg(drawing))
}

export function stripInput(required: RequiredRun | JudgedRun): StripInput {
  const { run, request, model } = required
  const { road } = run
  return {
    layout: model.layout,
    system: model.system,
    first: stripEnd(request.first),
    second: stripEnd(request.second),
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
    lateralExaggeration: 2,
  }
}

const stripEnd = (end: RunEnd): StripEnd =>
  end.kind === 'unit'
    ? { name: end.sheet.name, kind: end.sheet.kind, sheet: end.sheet }
    : { name: 'standing run', kind: 'standing splice', sheet: null }
