import { sheetText } from '../core/hardware/sheet-text.ts'
import type { RunEnd } from '../core/layout/layout.ts'
import { flareBends } from '../core/layout/run-flare.ts'
import { titleBlockContents } from '../documents/title-block.ts'
import type { StripEnd, StripInput } from '../drawing/views/strip/strip-input.ts'
import { runWords } from '../drawing/words/run-words.ts'
import type { Print } from '../words/print.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-by.ts'

/** What a view of the run shows, in the words of `print`; the verdicts when it is judged. */
export function stripInput(required: RequiredRun | JudgedRun, print: Print): StripInput {
  const { run, request, model } = required
  const { road } = run
  const block = titleBlockContents(run, print)
  return {
    layout: model.layout,
    system: model.system,
    first: stripEnd(request.first, print),
    second: stripEnd(request.second, print),
    areEndsKnown: request.first.kind !== 'unknown' && request.second.kind !== 'unknown',
    flareRate: isFlared(model) ? (run.flare?.rate ?? null) : null,
    traffic: road.traffic,
    obstructions: run.obstructions,
    need: run.need,
    verdicts: 'judgement' in required ? required.judgement.verdicts : null,
    titles: {
      run: print.theirs(run.name),
      route: print.theirs(road.route ?? ''),
      block: block && { cells: block.cells, revision: block.revisions.at(-1) ?? null },
      stations: road.datumStation === null ? '' : runWords(print).datumAt(print.theirs(road.datumStation)),
    },
    units: run.units === 'metric' ? 'metric' : 'feet and inches',
    print: print,
    lateralExaggeration: 2,
  }
}

const isFlared = ({ layout, flare }: RequiredRun['model']): boolean =>
  Object.values(flareBends(layout, flare)).some((bend) => bend !== null)

function stripEnd(end: RunEnd, print: Print): StripEnd {
  if (end.kind === 'unit')
    return { name: print.say(sheetText(end.sheet, end.sheet.name)), kind: end.sheet.kind, sheet: end.sheet }
  const { standingRun, unknownEnd } = runWords(print)
  return end.kind === 'unknown' && end.because === 'no sheet fits'
    ? { name: unknownEnd, kind: 'unknown end', sheet: null }
    : { name: standingRun, kind: 'standing splice', sheet: null }
}
