import { area, circle, dimension, line, point, polyline, rectangle, text } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import type { FigureFacts, FigureLimit } from './figure-facts.ts'
import { note, type Pane, type Twins } from './pair.ts'
import { beamFace, boltHead, ground, postBody, towardHead } from './parts.ts'

/** The anchorage of a terminal: bearing plate, cable and cable anchor bracket. */

export function bearingPlateFigure(facts: FigureFacts): Twins {
  const upward = facts.plate?.up ?? { words: '', inches: 5 }
  const downward = facts.plate?.down ?? { words: '', inches: 3 }
  if (facts.fixing === 'retainer')
    return {
      width: 22,
      isTold: true,
      right: (pane) => heldPlate(facts, pane, upward, downward, true),
      wrong: (pane) => heldPlate(facts, pane, upward, downward, false),
    }
  return {
    width: 22,
    isTold: facts.plate !== null,
    right: (pane) => plate(facts, pane, upward, downward),
    wrong: (pane) => plate(facts, pane, downward, upward),
  }
}

/** The plate in front of its post, seen along the cable, with the distances of the hole from its edges. */
function plate(facts: FigureFacts, pane: Pane, up: FigureLimit, down: FigureLimit): Item[] {
  const middle = pane.width / 2
  const hole = point(middle, pane.height / 2 - (up.inches - down.inches) / 2)
  const [top, bottom] = [hole.y + up.inches, hole.y - down.inches]
  const x = middle + 4
  return [
    postBody(middle, 6, 0, pane.height - 1),
    rectangle('part', { minX: middle - 4, maxX: middle + 4, minY: bottom, maxY: top }, 'blank'),
    circle('cable', hole, 0.6, 'solid'),
    line('string', hole, point(x + 0.5, hole.y)),
    dimension('dimensions', point(x, hole.y), point(x, top), -5 * pane.perPoint, '', 7),
    dimension('dimensions', point(x, bottom), point(x, hole.y), -5 * pane.perPoint, '', 7),
    text('text', point(x + 8 * pane.perPoint, (hole.y + top) / 2), up.words, 7.5, { level: 'middle' }),
    text('text', point(x + 8 * pane.perPoint, (hole.y + bottom) / 2), down.words, 7.5, { level: 'middle' }),
    ...note(pane, facts.words.cable, [0.5, hole.y - 4.6], [hole.x - 0.6, hole.y - 0.3]),
  ]
}

/** The plate with a retainer at its upper edge, or turned for want of one. */
function heldPlate(facts: FigureFacts, pane: Pane, up: FigureLimit, down: FigureLimit, isHeld: boolean): Item[] {
  const middle = pane.width / 2
  const hole = point(middle, pane.height / 2 - 1)
  const angle = isHeld ? 0 : (38 * Math.PI) / 180
  const corner = (x: number, y: number): Point =>
    point(hole.x + x * Math.cos(angle) - y * Math.sin(angle), hole.y + x * Math.sin(angle) + y * Math.cos(angle))
  const corners = [corner(-4, -down.inches), corner(4, -down.inches), corner(4, up.inches), corner(-4, up.inches)]
  const top = hole.y + up.inches
  return [
    postBody(middle, 6, 0, pane.height - 1),
    area('part', corners, 'blank'),
    circle('cable', hole, 0.6, 'solid'),
    ...(isHeld
      ? [
          rectangle('part', { minX: middle - 4.6, maxX: middle + 4.6, minY: top - 0.7, maxY: top + 0.7 }, 'solid'),
          ...note(pane, facts.words.retainer, [0.5, top + 2.4], [middle - 3.6, top + 0.7]),
        ]
      : [text('text', point(0.5, 1), facts.words.turned, 7)]),
  ]
}

/** The cable from the foot of post 1 to its bracket on the rail: taut, or with play. */
export function cablePlayFigure(facts: FigureFacts): Twins {
  const limit = facts.high
  const one =
    (sag: number, words: string) =>
    (pane: Pane): Item[] => {
      const grade = 10
      const [from, to] = [point(10, grade + 3), point(66, grade + 24)]
      const steps = Array.from({ length: 17 }, (_, i) => i / 16)
      const at = (t: number, drop: number): Point =>
        point(from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t - drop * 4 * t * (1 - t))
      const middle = at(0.5, sag)
      const straight = at(0.5, 0)
      return [
        ...ground(pane, grade),
        postBody(10, 6, grade - 10, grade + 32),
        postBody(85, 6, grade - 10, grade + 32),
        ...beamFace(4, pane.width, grade + 31),
        rectangle('part', { minX: to.x - 2, maxX: to.x + 10, minY: to.y - 2, maxY: to.y + 2 }, 'tint'),
        ...(sag > 2 ? [line('string', from, to)] : []),
        polyline(
          'cable',
          steps.map((t) => at(t, sag)),
        ),
        ...(sag > 2 ? [dimension('dimensions', straight, middle, 0, '', 7)] : []),
        text('text', point(50, grade + 5), words, 7.5, { level: 'middle' }),
        ...towardHead(pane, facts),
      ]
    }
  return {
    width: 96,
    isTold: limit !== null,
    right: one(0, limit ? `≤ ${limit.words}` : ''),
    wrong: one(9, limit ? `> ${limit.words}` : ''),
  }
}

export function bracketOpeningFigure(facts: FigureFacts): Twins {
  if (facts.fixing === 'seat')
    return {
      width: 44,
      isTold: true,
      right: (pane) => seatedBracket(facts, pane, 0),
      wrong: (pane) => seatedBracket(facts, pane, 2.6),
    }
  const right = facts.toward ?? 'head'
  return {
    width: 44,
    isTold: facts.toward !== null,
    right: (pane) => bracket(facts, pane, right),
    wrong: (pane) => bracket(facts, pane, right === 'head' ? 'away' : 'head'),
  }
}

/** The bracket on the back of the rail: a channel that is open at one end. */
function bracket(facts: FigureFacts, pane: Pane, opens: 'head' | 'away'): Item[] {
  const middle = pane.width / 2
  const y = pane.height / 2 - 1
  const out = opens === 'head' ? -1 : 1
  const at = (x: number, dy: number): Point => point(middle + out * x, y + dy)
  return [
    ...beamFace(0, pane.width, y + 6.1),
    area(
      'part',
      [at(9, 3.4), at(-9, 3.4), at(-9, -3.4), at(9, -3.4), at(9, -1.6), at(-6, -1.6), at(-6, 1.6), at(9, 1.6)],
      'tint',
    ),
    ...[-4, 1, 6].flatMap((x) =>
      [2.5, -2.5].map((dy) => boltHead(middle + out * x, y + dy, { ...pane, perPoint: pane.perPoint * 0.6 })),
    ),
    ...note(pane, facts.words.opening, [middle + out * 10, 4], [middle + out * 8.5, y], 'middle'),
    ...towardHead(pane, facts),
  ]
}

/** The bracket seen from above on the shoulders of its bolts, or `lift` inches off them. */
function seatedBracket(facts: FigureFacts, pane: Pane, lift: number): Item[] {
  const y = pane.height / 2 + 3
  const bolts = [10, 22, 34]
  return [
    line('rail', point(0, y), point(pane.width, y)),
    ...bolts.flatMap((x) => [
      rectangle('hole', { minX: x - 2, maxX: x + 2, minY: y - 2.2, maxY: y }, 'solid'),
      rectangle('hole', { minX: x - 0.8, maxX: x + 0.8, minY: y - 8, maxY: y - 2.2 }, 'blank'),
    ]),
    rectangle('part', { minX: 5, maxX: 39, minY: y - 4.6 - lift, maxY: y - 2.2 - lift }, 'tint'),
    ...note(pane, facts.words.shoulder, [1, y - 14], [8.4, y - 1.2]),
    text('text', point(pane.width - 1, y + 2), facts.words.rail, 7, { anchor: 'end' }),
    text('text', point(pane.width - 1, y - 13.5), facts.words.bracket, 7, { anchor: 'end' }),
  ]
}
