import type { PaperName } from '../../core/units/paper-names.ts'
import type { Drawing } from '../drawing.ts'
import { plainScales } from '../paper.ts'
import { stripBand } from './strip/band.ts'
import { stripLegend } from './strip/legend.ts'
import { type RunView, runDrawing, runPages } from './strip/run-sheets.ts'
import { type StripInput, unitNames } from './strip/strip-input.ts'
import { stripLayers } from './strip/strip-layers.ts'
import { placeVerdicts } from './strip/verdict-rows.ts'

/** The whole run as one long strip without paper: x is inches along the rail from post 1, y = 0 the line of the run. */
export const stripDrawing = (input: StripInput): Drawing => runDrawing(input, stripView(input))

/** The strip on landscape pages, in rows with match lines. */
export const stripPages = (input: StripInput, page: PaperName): Drawing[] => runPages(input, stripView(input), page)

function stripView(input: StripInput): RunView {
  const { layout, titles, print } = input
  const verdicts = placeVerdicts(input.verdicts ?? [])
  const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`
  const failing = verdicts.filter((one) => one.worst === 'fails')
  const verdictWords =
    input.verdicts === null
      ? 'Nothing is judged yet.'
      : failing.length === 0
        ? 'No place fails.'
        : print.say({ kind: 'fails at', places: failing.map(({ place }) => place) })
  return {
    title: [`Strip of ${titles.run}`, titles.route, titles.stations].filter((part) => part).join(', '),
    description: `Plan of the run from its upstream end at the left to its downstream end at the right: ${unitNames(input).join(', then ')}; ${count(layout.posts.length, 'post')}, ${count(layout.panels.length, 'panel')}, ${count(layout.splices.length, 'splice')}. ${verdictWords}`,
    measureWords: measureWords(input),
    layers: stripLayers,
    screenScale: plainScales[input.units][1]!,
    band: (scale, range, matches) => stripBand(input, verdicts, scale, range, matches),
    legend: (width, perPoint) => stripLegend(input, width, perPoint),
  }
}

function measureWords(input: StripInput): string {
  const times = input.lateralExaggeration
  const hasFlare = [input.first, input.second].some((end) => end.sheet !== null && end.sheet.flare !== 'none')
  const offsets = !hasFlare
    ? ''
    : times === 1
      ? ' offsets of the flare are to the same scale;'
      : ` OFFSETS ARE DRAWN ${times} TIMES THEIR SIZE;`
  const own = input.flareRate === null ? '' : ` the flare of the run, ${input.flareRate}:1, is drawn straight;`
  return `Distances along the rail are to scale;${offsets}${own} rail, blocks, posts and ends are signs, not to scale. Traffic side up.`
}
