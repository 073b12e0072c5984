import type { LapRule } from '../../../core/hardware/hardware-sheet.ts'
import type { LayoutPanel, LayoutSplice, Unit } from '../../../core/layout/layout.ts'
import { dimension, group, line, polyline, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { runWords } from '../../words/run-words.ts'
import { type Frame, isWithin, lengthLabel } from './frame.ts'
import type { StripInput } from './strip-input.ts'

/** Height above the line of the run at which the lengths of panels stand, points. */
const panelLevel = 14
/** A panel that lies behind its neighbour at a splice is drawn this much behind it, points. */
const behind = -2.4
/** Half of the 12 1/2 in by which W-beam panels lap (from memory); never drawn shorter than 7 points. */
const halfLap = (frame: Frame): number => Math.max(6.25, 3.5 * frame.perPoint)

/** Panels with their lengths and the splices between them, as far as they lie in the frame. */
export function railItems(frame: Frame): Item[] {
  const { panels, splices } = frame.input.layout
  const spliceAt = new Map(splices.map((splice) => [splice.alongInches, splice]))
  const shown = panels.filter((panel) => panel.toInches > frame.range.from && panel.fromInches < frame.range.to)
  return [
    ...shown.map((panel) => panelGroup(frame, panel, spliceAt)),
    ...splices
      .filter((splice) => isWithin(frame.range, splice.alongInches))
      .map((splice) => spliceGroup(frame, splice)),
  ]
}

function panelGroup(frame: Frame, panel: LayoutPanel, splices: ReadonlyMap<number, LayoutSplice>): Item {
  const items: Item[] = [railLine(frame, panel, splices)]
  if (panel.nested)
    items.push(
      polyline(
        'nested rail',
        faceAlong(frame, panel.fromInches, panel.toInches, () => -4.6),
      ),
    )
  return group(panel.id, panelTitle(frame.input, panel), [...items, ...lengthItems(frame, panel)])
}

/** The panel's face; at a splice where it lies behind, it steps back over the length of the lap. */
function railLine(frame: Frame, panel: LayoutPanel, splices: ReadonlyMap<number, LayoutSplice>): Item {
  const half = halfLap(frame)
  const up = splices.get(panel.fromInches)
  const down = splices.get(panel.toInches)
  const from = up ? panel.fromInches - half : panel.fromInches
  const to = down ? panel.toInches + half : panel.toInches
  const stepsBackUp = up !== undefined && isUpstreamPanelInFront(frame.input, up.unit)
  const stepsBackDown = down !== undefined && !isUpstreamPanelInFront(frame.input, down.unit)
  const step = 2.5 * frame.perPoint
  const aside = (along: number): number => {
    const into = Math.min(stepsBackUp ? along - (from + 2 * half) : step, stepsBackDown ? to - 2 * half - along : step)
    return behind * (1 - Math.min(1, Math.max(0, into / step)))
  }
  const kinks = [from + 2 * half, from + 2 * half + step, to - 2 * half - step, to - 2 * half]
  return polyline('rail', faceAlong(frame, from, to, aside, kinks))
}

/** Points on the face of rail from `from` to `to` within the range, `aside` of it, with a point at each bend and kink. */
function faceAlong(
  frame: Frame,
  from: number,
  to: number,
  aside: (along: number) => number,
  kinks: readonly number[] = [],
): { x: number; y: number }[] {
  const start = Math.max(from, frame.range.from)
  const end = Math.min(to, frame.range.to)
  const inner = [...frame.bends, ...kinks].filter((along) => along > start && along < end).sort((a, b) => a - b)
  return [start, ...inner, end].map((along) => frame.at(along, aside(along)))
}

const isUpstreamPanelInFront = (input: StripInput, unit: Unit): boolean =>
  !(unit === 'second' && lapRule(input, unit) === 'terminal end-on')

function lapRule(input: StripInput, unit: Unit): LapRule {
  const sheet = unit === 'run' ? input.system : input[unit].sheet
  return (sheet ?? input.system).lap.rule
}

/** The length over the panel; a panel cut by a match line has it where the larger part lies. */
function lengthItems(frame: Frame, panel: LayoutPanel): Item[] {
  const { range, perPoint } = frame
  const words = lengthLabel(frame.input, panel.inches)
  const from = Math.max(panel.fromInches, range.from)
  const to = Math.min(panel.toInches, range.to)
  const room = (to - from) / perPoint
  const named = runWords(frame.input.print).panelLength(panel.number, words)
  const isWhole = from === panel.fromInches && to === panel.toInches
  const label = textWidth(named, 6.5) + 6 <= room ? named : words
  const isLargerPart = to - from > panel.inches / 2 || (to - from === panel.inches / 2 && from > panel.fromInches)
  const hasRoom = textWidth(label, 6.5) + 4 <= room
  const middle = (from + to) / 2
  const note = panelNote(frame.input, panel)
  const items: Item[] = []
  // Too long for a short panel: its length stands higher, clear of its neighbours' lengths.
  const isRaised = isWhole && textWidth(label, 6.5) + 2 > room
  if (isRaised) items.push(text('text', frame.level(middle, panelLevel + 9), label, 6.5, { anchor: 'middle' }))
  else if (note !== null && isLargerPart && (isWhole || hasRoom) && textWidth(note, 6.5) <= room - 3)
    items.push(text('text', frame.level(middle, panelLevel + 9), note, 6.5, { anchor: 'middle' }))
  if (isWhole)
    return [
      dimension(
        'dimensions',
        frame.level(from, panelLevel),
        frame.level(to, panelLevel),
        0,
        isRaised ? '' : label,
        6.5,
      ),
      ...items,
    ]

  items.push(line('dimensions', frame.level(from, panelLevel), frame.level(to, panelLevel)))
  const end = from === panel.fromInches ? from : to
  items.push(line('dimensions', frame.level(end, panelLevel - 2), frame.level(end, panelLevel + 2)))
  const height = panelLevel + 1.9
  if (hasRoom) items.push(text('text', frame.level(middle, height), label, 6.5, { anchor: 'middle' }))
  // Too short for its words: they stand higher, inside the match line, and reach over the neighbouring panel.
  else if (isLargerPart && from === panel.fromInches)
    items.push(text('text', frame.level(to - 2 * perPoint, panelLevel + 9), label, 6.5, { anchor: 'end' }))
  else if (isLargerPart) items.push(text('text', frame.level(from + 2 * perPoint, panelLevel + 9), label, 6.5))
  return items
}

/** What sets a panel apart from the run's standard ones. */
function panelNote({ print }: StripInput, { role, nested }: LayoutPanel): string | null {
  const { roles, nested: nestedWord } = runWords(print)
  const words = [...(role === 'standard' || role === 'own' ? [] : [roles[role]]), ...(nested ? [nestedWord] : [])]
  return words.length === 0 ? null : words.join(', ')
}

function panelTitle(input: StripInput, panel: LayoutPanel): string {
  const words = runWords(input.print)
  const { number, ownNumber: own, unit } = panel
  const name = own === null || unit === 'run' ? words.panel(number) : words.panelOf(number, own, input[unit].name)
  return words.panelFacts(name, lengthLabel(input, panel.inches), panelNote(input, panel))
}

function spliceGroup(frame: Frame, splice: LayoutSplice): Item {
  const inFront = isUpstreamPanelInFront(frame.input, splice.unit) ? 'upstream' : 'downstream'
  const words = runWords(frame.input.print)
  const title = words.spliceWithLap(words.splice(splice.number, splice.position), inFront)
  const along = splice.alongInches
  return group(splice.id, title, [line('rail', frame.at(along, 2.2), frame.at(along, behind - 1.2))])
}
