import { drawnSizes } from '../../core/scene/drawn-sizes.ts'
import { point, polyline, rectangle } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
import { elevationLayers } from './elevation/elevation-layers.ts'
import { endElevation, endPlaces } from './elevation/end-elevation.ts'
import { postElevation } from './elevation/post-elevation.ts'
import { railElevation } from './elevation/rail-elevation.ts'
import { type Frame, type Range, railRange, stripFrame } from './strip/frame.ts'
import type { StripInput } from './strip/strip-input.ts'

/** What of an end unit is shown: all of it, its outermost posts, the splice beyond it; or from above, whether it leaves its line. */
export type UnitView = 'whole' | 'end' | 'splice' | 'line'

/** Points across the picture, to be read at half the width of a phone. */
const width = 200

/** The first end of a run without words, square to the rail or from above; the name says it to those who hear it. */
export function drawUnit(input: StripInput, view: UnitView): Drawing {
  const range = rangeOf(input, view)
  const scale = ((range.to - range.from) / width) * 72
  const frame = stripFrame(input, scale, range)
  const items = view === 'line' ? lineItems(frame) : elevationItems(frame)
  const top = view === 'line' ? 30 : endPlaces(input, 'first').railTop + 14
  const bottom = view === 'line' ? -70 : -drawnSizes.cutBelow
  return {
    title: input.titles.run,
    description: '',
    ...{ scale, paper: null, layers: elevationLayers, items },
    extent: { minX: range.from, maxX: range.to, minY: bottom, maxY: top },
  }
}

function rangeOf(input: StripInput, view: UnitView): Range {
  const { from, to } = railRange(input)
  const splice = input.layout.splices.at(-1)?.alongInches ?? to
  switch (view) {
    case 'end':
      return { from: from - 30, to: from + 140 }
    case 'splice':
      return { from: splice - 85, to: splice + 85 }
    case 'whole':
    case 'line':
      return { from: from - 40, to }
  }
}

function elevationItems(frame: Frame): Item[] {
  const { range, input } = frame
  return [
    polyline('finish grade', [point(range.from, 0), point(range.to, 0)]),
    ...railElevation(frame),
    ...input.layout.posts
      .filter(({ alongInches }) => alongInches >= range.from && alongInches <= range.to)
      .map((post) => postElevation(frame, post)),
    ...endElevation({ ...input, second: input.first }, { from: range.from, to: Math.min(range.to, endBeyond(input)) }),
  ]
}

/** The other end of the picture is none. */
const endBeyond = (input: StripInput): number => endPlaces(input, 'second').postOne - 1

/** The face of rail and its posts from above, and the line of the run carried on. */
function lineItems(frame: Frame): Item[] {
  const { range, input, rail } = frame
  const places = [rail.from, ...frame.bends, rail.to]
  return [
    polyline('omitted posts', [point(range.from, 0), point(range.to, 0)]),
    polyline(
      'rail',
      places.map((along) => frame.at(along, 0)),
    ),
    ...input.layout.posts.map(({ alongInches }) => {
      const { x, y } = frame.at(alongInches, 0)
      return rectangle('posts', { minX: x - 3, maxX: x + 3, minY: y - 14, maxY: y - 6 }, 'solid')
    }),
  ]
}
