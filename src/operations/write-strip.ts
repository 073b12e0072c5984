import type { PaperName } from '../core/units/paper-names.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { writeDxf } from '../drawing/dxf/write-dxf.ts'
import { writeSvg } from '../drawing/svg/write-svg.ts'
import { elevationDrawing, elevationPages } from '../drawing/views/elevation.ts'
import type { StripInput } from '../drawing/views/strip/strip-input.ts'
import { stripDrawing, stripPages } from '../drawing/views/strip.ts'
import { terminalDetail } from '../drawing/views/terminal-detail.ts'
import type { Print } from '../words/print.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-by.ts'
import { stripInput } from './strip-input.ts'

/** What of a run can be drawn: from above, square to its rail, and each end unit larger with its parts. */
export const runViews = ['strip', 'elevation', 'detail'] as const
export type RunViewName = (typeof runViews)[number]

/** The strip as SVG: one long picture for a screen, or one picture a sheet of paper. Verdicts when the run is judged. */
export const writeStrip = (
  required: RequiredRun | JudgedRun,
  page: 'web' | PaperName,
  print: Print,
): readonly string[] => writeRunView(required, 'strip', page, print)

/** One view of the run as SVG, in one long picture or a picture a sheet of paper. */
export const writeRunView = (
  required: RequiredRun | JudgedRun,
  view: RunViewName,
  page: 'web' | PaperName,
  print: Print,
): readonly string[] => drawingsOf(stripInput(required, print), view, page).map(writeSvg)

/**
 * One view of the run as DXF drawings, every distance true, in inches, or in metres for a metric run: strip and elevation
 * have x along the rail from post 1 and y from the line of the run or above finish grade; a detail has its page's corner
 * as origin.
 */
export const writeRunViewDxf = (
  required: RequiredRun | JudgedRun,
  view: RunViewName,
  author: string,
  print: Print,
): readonly string[] => {
  const unit = required.run.units === 'metric' ? 'metre' : 'inch'
  const input = { ...stripInput(required, print), lateralExaggeration: 1 }
  return drawingsOf(input, view, 'web').map((drawing) => writeDxf(drawing, { unit, author }))
}

/** A detail needs a sheet of paper: letter, or A4 for a metric run, where none is asked for. */
function drawingsOf(input: StripInput, view: RunViewName, page: 'web' | PaperName): readonly Drawing[] {
  switch (view) {
    case 'strip':
      return page === 'web' ? [stripDrawing(input)] : stripPages(input, page, 'own')
    case 'elevation':
      return page === 'web' ? [elevationDrawing(input)] : elevationPages(input, page, 'own')
    case 'detail': {
      const paper = page !== 'web' ? page : input.units === 'metric' ? 'A4' : 'letter'
      return (['first', 'second'] as const).flatMap((which) => terminalDetail(input, which, paper) ?? [])
    }
    default:
      return view satisfies never
  }
}
