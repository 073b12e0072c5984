import type { PaperName } from '../../core/units/paper-names.ts'
import type { Drawing } from '../drawing.ts'
import { plainScales } from '../paper.ts'
import { runWords } from '../words/run-words.ts'
import { stripWords } from '../words/strip-words.ts'
import { stripBand } from './strip/band.ts'
import { stripLegend } from './strip/legend.ts'
import { type PageNumbers, type RunView, runDrawing, runPages } from './strip/run-sheets.ts'
import { type StripInput, unitNames } from './strip/strip-input.ts'
import { stripLayers } from './strip/strip-layers.ts'
import { placeVerdicts } from './strip/verdict-rows.ts'

/** The whole run as one long strip without paper: x is inches along the rail from post 1, y = 0 the line of the run. */
export const stripDrawing = (input: StripInput): Drawing => runDrawing(input, stripView(input))

/** The strip on landscape pages, in rows with match lines. */
export const stripPages = (input: StripInput, page: PaperName, numbers: PageNumbers): Drawing[] =>
  runPages(input, stripView(input), page, numbers)

function stripView(input: StripInput): RunView {
  const { layout, titles, print } = input
  const [run, strip] = [runWords(print), stripWords(print)]
  const verdicts = placeVerdicts(input.verdicts ?? [])
  const failing = verdicts.filter((one) => one.worst === 'fails')
  const verdictWords =
    input.verdicts === null
      ? strip.notJudged
      : failing.length === 0
        ? strip.noneFails
        : print.say({ kind: 'fails at', places: failing.map(({ place }) => place) })
  const pieces = run.pieces(layout.posts.length, layout.panels.length, layout.splices.length)
  return {
    title: [strip.title(titles.run), titles.route, titles.stations].filter((part) => part).join(', '),
    description: strip.description(unitNames(input), pieces, verdictWords),
    measureWords: strip.measure(hasFlare(input) ? input.lateralExaggeration : null, input.flareRate),
    layers: stripLayers,
    screenScale: plainScales[input.units][1]!,
    band: (scale, range, matches) => stripBand(input, verdicts, scale, range, matches),
    legend: (width, perPoint) => stripLegend(input, width, perPoint),
  }
}

const hasFlare = ({ first, second }: StripInput): boolean =>
  [first, second].some((end) => end.sheet !== null && end.sheet.flare !== 'none')
