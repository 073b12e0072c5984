import { limitsOf } from '../../core/hardware/limits-saying.ts'
import type { PaperName } from '../../core/units/paper-names.ts'
import { point, text } from '../draw.ts'
import type { Drawing } from '../drawing.ts'
import { plainScales } from '../paper.ts'
import { wrapText } from '../text-width.ts'
import { elevationBand } from './elevation/elevation-band.ts'
import { elevationLayers } from './elevation/elevation-layers.ts'
import { railHeightOf } from './elevation/elevation-sizes.ts'
import { type RunView, runDrawing, runPages } from './strip/run-sheets.ts'
import { type StripInput, unitName, unitNames } from './strip/strip-input.ts'

/**
 * The whole run seen square to its rail, without paper: x is inches along the rail from post 1, as on the strip, y is
 * inches above finish grade. A flare is unrolled, so that every distance along the rail is true.
 */
export const elevationDrawing = (input: StripInput): Drawing => runDrawing(input, elevationView(input))

/** The elevation on landscape pages, in rows with match lines. */
export const elevationPages = (input: StripInput, page: PaperName): Drawing[] =>
  runPages(input, elevationView(input), page)

function elevationView(input: StripInput): RunView {
  const { titles, layout } = input
  const notes = notesOf(input)
  return {
    title: [`Elevation of ${titles.run}`, titles.route, titles.stations].filter((part) => part).join(', '),
    description: `The run seen square to its rail, upstream end at the left: ${unitNames(input).join(', then ')}; ${layout.posts.length} posts, ${layout.panels.length} panels, ${layout.splices.length} splices. ${notes.join(' ')}`,
    measureWords:
      'Elevation: distances along the rail and heights above finish grade are to the same scale. Upstream end at the left.',
    layers: elevationLayers,
    screenScale: plainScales[input.units][0]!,
    band: (scale, range, matches) => elevationBand(input, scale, range, matches),
    legend: (width, perPoint) => {
      const lines = notes.flatMap((note) => wrapText(note, width, 7, 2))
      return {
        items: lines.map((words, i) => text('text', point(0, -(i * 9 + 7) * perPoint), words, 7)),
        height: lines.length * 9 + 4,
      }
    },
  }
}

/** What the drawing rests on, and what it does not know. */
function notesOf(input: StripInput): string[] {
  const units = (['first', 'run', 'second'] as const).filter((unit) => unit === 'run' || input[unit].sheet !== null)
  const names = units.map((unit) => ({
    name: unitName(input, unit),
    limits: input.print.say(limitsOf(railHeightOf(input, unit))),
  }))
  const isSame = names.every(({ limits }) => limits === names[0]!.limits)
  const heights = isSame ? names[0]!.limits : names.map(({ name, limits }) => `${name} ${limits}`).join('; ')
  return [
    `Top of rail above finish grade, as the sheets state it: ${heights}. Finish grade is drawn level.`,
    'Posts are cut off in the ground: the sheets do not state their length. A flare is unrolled: see the strip for its offsets.',
    'Profile of the rail and widths of posts and blocks are drawn as is common practice; head, anchor cable and bridge are signs.',
    'With the upstream end at the left, a rail on the right of its traffic is seen from behind, one on the left from the traffic side.',
  ]
}
