import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { contentOf } from '../../core/hardware/sheet-text.ts'
import type { PaperName } from '../../core/units/paper-names.ts'
import { point, text } from '../draw.ts'
import type { Drawing } from '../drawing.ts'
import { plainScales } from '../paper.ts'
import { wrapText } from '../text-width.ts'
import { elevationWords } from '../words/elevation-words.ts'
import { runWords } from '../words/run-words.ts'
import { elevationBand } from './elevation/elevation-band.ts'
import { elevationLayers } from './elevation/elevation-layers.ts'
import { railHeightOf } from './elevation/elevation-sizes.ts'
import { type PageNumbers, type RunView, runDrawing, runPages } from './strip/run-sheets.ts'
import { type StripInput, unitName, unitNames } from './strip/strip-input.ts'

/**
 * The whole run seen square to its rail, without paper: x is inches along the rail from post 1, as on the strip, y is
 * inches above finish grade. A flare is unrolled, so that every distance along the rail is true.
 */
export const elevationDrawing = (input: StripInput): Drawing => runDrawing(input, elevationView(input))

/** The elevation on landscape pages, in rows with match lines. */
export const elevationPages = (input: StripInput, page: PaperName, numbers: PageNumbers): Drawing[] =>
  runPages(input, elevationView(input), page, numbers)

function elevationView(input: StripInput): RunView {
  const { titles, layout, print } = input
  const [run, elevation] = [runWords(print), elevationWords(print)]
  const notes = [elevation.heights(railHeights(input)), ...elevation.notes]
  const pieces = run.pieces(layout.posts.length, layout.panels.length, layout.splices.length)
  return {
    title: [elevation.title(titles.run), titles.route, titles.stations].filter((part) => part).join(', '),
    description: elevation.description(unitNames(input), pieces, notes),
    measureWords: elevation.measure,
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

/** Limits of the top of rail: one for all where the sheets state the same, else each with its unit. */
function railHeights(input: StripInput): readonly string[] {
  const { print } = input
  const { unitHeight } = elevationWords(print)
  const units = (['first', 'run', 'second'] as const).filter((unit) => unit === 'run' || input[unit].sheet !== null)
  const limits = units.map((unit) => limitsOf(railHeightOf(input, unit)))
  const isSame = new Set(limits.map(contentOf)).size === 1
  return isSame
    ? [print.say(limits[0]!)]
    : units.map((unit, i) => unitHeight(unitName(input, unit), print.say(limits[i]!)))
}
