import { drawnRailTop, drawnSizes } from '../../../core/scene/drawn-sizes.ts'
import { dimension, group, line, point, rectangle, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { runWords } from '../../words/run-words.ts'
import type { MatchLines } from '../strip/band.ts'
import { type Band, matchLines, rowName } from '../strip/band.ts'
import { type Frame, isWithin, lengthLabel, type Range, stripFrame } from '../strip/frame.ts'
import { distanceRow, obstructionRow, partsRow } from '../strip/rows.ts'
import type { StripInput } from '../strip/strip-input.ts'
import { heightLabel, railHeightOf } from './elevation-sizes.ts'
import { endElevation } from './end-elevation.ts'
import { postElevation } from './post-elevation.ts'
import { railElevation, railTopAt } from './rail-elevation.ts'
import { spacingItems } from './spacing-items.ts'

/** One stretch of the elevation; x is inches along the rail from post 1, y = 0 finish grade, both to the same scale. */
export function elevationBand(input: StripInput, scale: number, range: Range, matches: MatchLines): Band {
  const frame = stripFrame(input, scale, range)
  const { perPoint } = frame
  const depth = drawnSizes.cutBelow / perPoint
  const highest = Math.max(
    ...(['first', 'run', 'second'] as const).map((unit) => drawnRailTop(railHeightOf(input, unit)) ?? 0),
  )
  const panelLevel = highest / perPoint + 10
  const rows = [...obstructionRow(frame), ...partsRow(frame), ...distanceRow(frame)]
  const items: Item[] = [
    ...groundItems(frame),
    ...railElevation(frame),
    ...input.layout.posts.filter((post) => isWithin(range, post.alongInches)).map((post) => postElevation(frame, post)),
    ...endElevation(input, range),
    ...panelLengths(frame, panelLevel),
    ...heightItems(frame),
    ...postNumbers(frame, depth + 5),
    ...spacingItems(frame, depth + 32),
  ]
  let below = depth + 38
  for (const row of rows) {
    items.push(rowName(frame, row.name, below), ...row.draw(below))
    below += row.height + 1
  }
  const above = panelLevel + 22
  items.push(...matchLines(frame, matches, above, below))
  return { items, range, above, below }
}

/** Finish grade, drawn level, and what lies in the ground where posts cannot stand. */
function groundItems(frame: Frame): Item[] {
  const { range, perPoint, input } = frame
  const { postOneAtInches } = input.layout
  const obstructions = input.obstructions
    .map((one) => ({ ...one, from: one.fromInches - postOneAtInches, to: one.toInches - postOneAtInches }))
    .filter(({ from, to }) => to > range.from && from < range.to)
    .map(({ name, from, to }) =>
      group('obstruction', input.print.theirs(name), [
        rectangle(
          'obstructions',
          {
            minX: Math.max(from, range.from),
            maxX: Math.min(to, range.to),
            minY: -drawnSizes.cutBelow,
            maxY: -3 * perPoint,
          },
          'hatch',
        ),
      ]),
    )
  const ticks: Item[] = []
  for (let along = range.from + 2 * perPoint; along < range.to - 3 * perPoint; along += 12 * perPoint)
    ticks.push(line('ground', point(along + 3 * perPoint, 0), point(along, -3 * perPoint)))
  return [...obstructions, line('finish grade', point(range.from, 0), point(range.to, 0)), ...ticks]
}

/** Splice to splice, above the rail; a panel that is cut by a match line has its length in the row that shows more of it. */
export function panelLengths(frame: Frame, level: number): Item[] {
  const { range, perPoint, input } = frame
  const { panelLength } = runWords(input.print)
  return input.layout.panels
    .filter((panel) => panel.toInches > range.from && panel.fromInches < range.to)
    .flatMap((panel): Item[] => {
      const [from, to] = [Math.max(panel.fromInches, range.from), Math.min(panel.toInches, range.to)]
      const words = lengthLabel(input, panel.inches)
      const long = panelLength(panel.number, words)
      const isLongFitting = textWidth(long, 6.5) + 6 <= (to - from) / perPoint
      const label = to - from < panel.inches / 2 ? '' : isLongFitting ? long : words
      return [dimension('dimensions', frame.level(from, level), frame.level(to, level), 0, label, 6.5)]
    })
}

/**
 * The height of the rail, dimensioned in the first and the last of the band's widest spaces, off a splice at its middle; at a
 * scale at which its words would lie on rail or posts, not at all: they stand in the legend.
 */
export function heightItems(frame: Frame): Item[] {
  const { input, range, perPoint } = frame
  const posts = input.layout.posts.filter((post) => isWithin(range, post.alongInches))
  const all = posts.slice(1).map((post, i) => ({
    ...{ from: posts[i]!.alongInches, width: post.alongInches - posts[i]!.alongInches },
    isOfRun: post.unit === 'run' && posts[i]!.unit === 'run',
  }))
  // In an end unit the anchor cable lies where the words would stand.
  const ofRun = all.filter(({ isOfRun }) => isOfRun)
  const spaces = ofRun.length > 0 ? ofRun : all
  const widest = spaces.filter(({ width }) => width === Math.max(...spaces.map((one) => one.width)))
  const places = new Set([widest[0], widest.at(-1)].map((space) => space && space.from + space.width * 0.28))
  return [...places].flatMap((along): Item[] => {
    const top = along === undefined ? null : railTopAt(input, along)
    if (along === undefined || top === null) return []
    const label = heightLabel(input.units, top)
    const [high, wide] = [(top - drawnSizes.beam) / perPoint, (widest[0]!.width * 0.72 - halfPost) / perPoint]
    if (high < labelPoints + 1 || wide < textWidth(label, labelPoints) + 5) return []
    return [
      dimension('dimensions', point(along, 0), point(along, top), 0, '', labelPoints),
      text('text', point(along + 4 * perPoint, (top - drawnSizes.beam) / 2), label, labelPoints, {
        level: 'middle',
      }),
    ]
  })
}

const labelPoints = 6.5
/** Half the width of a drawn post, inches. */
const halfPost = 4

/** Numbers of the posts below them, with those of their end unit in brackets. */
function postNumbers(frame: Frame, below: number): Item[] {
  return frame.input.layout.posts
    .filter((post) => isWithin(frame.range, post.alongInches))
    .flatMap((post): Item[] => [
      text('text', frame.level(post.alongInches, -below), String(post.number), 7, {
        anchor: 'middle',
        level: 'top',
        bold: true,
      }),
      ...(post.ownNumber === null
        ? []
        : [
            text('text', frame.level(post.alongInches, -below - 7.5), `(${post.ownNumber})`, 6.5, {
              anchor: 'middle',
              level: 'top',
            }),
          ]),
    ])
}
