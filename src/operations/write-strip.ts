import type { RunEnd } from '../core/layout/layout.ts'
import { writeDxf } from '../drawing/dxf/write-dxf.ts'
import type { PaperName } from '../drawing/paper.ts'
import { writeSvg } from '../drawing/svg/write-svg.ts'
import { elevationDrawing, elevationPages } from '../drawing/views/elevation.ts'
import type { StripEnd, StripInput } from '../drawing/views/strip/strip-input.ts'
import { stripDrawing, stripPages } from '../drawing/views/strip.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-run.ts'

/** What of a run can be drawn from end to end. */
export const runViews = ['strip', 'elevation'] as const
export type RunViewName = (typeof runViews)[number]

const views = {
  strip: { whole: stripDrawing, pages: stripPages },
  elevation: { whole: elevationDrawing, pages: elevationPages },
} as const

/** The strip as SVG: one long picture for a screen, or one picture a sheet of paper. Verdicts when the run is judged. */
export const writeStrip = (required: RequiredRun | JudgedRun, page: 'web' | PaperName): readonly string[] =>
  writeRunView(required, 'strip', page)

/** One view of the run as SVG, in one long picture or a picture a sheet of paper. */
export function writeRunView(
  required: RequiredRun | JudgedRun,
  view: RunViewName,
  page: 'web' | PaperName,
): readonly string[] {
  const input = stripInput(required)
  const drawings = page === 'web' ? [views[view].whole(input)] : views[view].pages(input, page)
  return drawings.map((drawing) => writeSvg(drawing))
}

/**
 * One view of the run as a DXF drawing, every distance true: x along the rail from post 1, y from the line of the run or
 * above finish grade; inches, or metres for a metric run.
 */
export const writeRunViewDxf = (required: RequiredRun | JudgedRun, view: RunViewName, author: string): string =>
  writeDxf(views[view].whole({ ...stripInput(required), lateralExaggeration: 1 }), {
    unit: required.run.units === 'metric' ? 'metre' : 'inch',
    author,
  })

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
