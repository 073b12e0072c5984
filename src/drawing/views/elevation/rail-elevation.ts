import type { LayoutPanel, LayoutSplice } from '../../../core/layout/layout.ts'
import { drawnRailTop, drawnSizes, spliceBoltPlaces } from '../../../core/scene/drawn-sizes.ts'
import { circle, group, line, point, rectangle } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { runWords } from '../../words/run-words.ts'
import { type Frame, lengthLabel } from '../strip/frame.ts'
import type { StripInput } from '../strip/strip-input.ts'
import { railHeightOf } from './elevation-sizes.ts'

/** Depths below the top edge at which the corrugations turn, inches. */
const ribs = [3, 6.125, 9.25] as const

/** Top of rail above finish grade at `along`, by the sheet of the panel there; null where none is stated. */
export function railTopAt(input: StripInput, along: number): number | null {
  const panel = input.layout.panels.find((one) => along >= one.fromInches && along <= one.toInches)
  return drawnRailTop(railHeightOf(input, panel?.unit ?? 'run'))
}

/** Panels and splices of the band; a rail whose height no sheet states is left out. */
export function railElevation(frame: Frame): Item[] {
  const { range, input } = frame
  const { panels, splices } = input.layout
  return [
    ...panels
      .filter((panel) => panel.toInches > range.from && panel.fromInches < range.to)
      .flatMap((panel) => panelItems(frame, panel)),
    ...splices
      .filter(({ alongInches: along }) => along >= range.from && along <= range.to)
      .flatMap((splice) => spliceItems(frame, splice)),
  ]
}

function panelItems(frame: Frame, panel: LayoutPanel): Item[] {
  const top = drawnRailTop(railHeightOf(frame.input, panel.unit))
  if (top === null) return []
  const from = Math.max(panel.fromInches, frame.range.from)
  const to = Math.min(panel.toInches, frame.range.to)
  const box = { minX: from, maxX: to, minY: top - drawnSizes.beam, maxY: top }
  const words = runWords(frame.input.print)
  const length = lengthLabel(frame.input, panel.inches)
  const title = words.panelFacts(words.panel(panel.number), length, panel.nested ? words.nested : null)
  return [
    group(panel.id, title, [
      rectangle('rail', box, panel.nested ? 'tint' : 'blank', false),
      ...[top, top - drawnSizes.beam].map((y) => line('rail', point(from, y), point(to, y))),
      ...[panel.fromInches, panel.toInches]
        .filter((end) => end >= frame.range.from && end <= frame.range.to && isRailEnd(frame.input, end))
        .map((end) => line('rail', point(end, top - drawnSizes.beam), point(end, top))),
      ...ribs.map((down) => line('ribs', point(from, top - down), point(to, top - down))),
    ]),
  ]
}

const isRailEnd = ({ layout }: StripInput, along: number): boolean =>
  layout.splices.every((splice) => splice.alongInches !== along)

/** The lap's two edges and its eight bolts, a column of four on each side of its middle. */
function spliceItems(frame: Frame, splice: LayoutSplice): Item[] {
  const top = drawnRailTop(railHeightOf(frame.input, splice.unit))
  if (top === null) return []
  const along = splice.alongInches
  const half = drawnSizes.halfLap
  const title = runWords(frame.input.print).splice(splice.number, splice.position)
  return [
    group(splice.id, title, [
      ...[-half, half].map((aside) =>
        line('splices', point(along + aside, top - drawnSizes.beam), point(along + aside, top)),
      ),
      ...spliceBoltPlaces.map(([aside, down]) => circle('splices', point(along + aside, top - down), 0.6, 'solid')),
    ]),
  ]
}
