import { dimension, line, point, polyline, rectangle, text } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import { fitRows } from '../../fit-rows.ts'
import type { FigureFacts } from './figure-facts.ts'
import { note, type Pane, type Twins } from './pair.ts'
import { trafficArrow } from './parts.ts'

/** Seen from above, the traffic side up. */

const postMark = (pane: Pane, x: number, y: number): Item => {
  const half = 2.4 * pane.perPoint
  return rectangle('post', { minX: x - half, maxX: x + half, minY: y - 3 * half, maxY: y - half }, 'solid')
}

/** Offset of post 1 from the line of the run; drawn four times wider than long. */
export function flareOffsetFigure(facts: FigureFacts): Twins {
  const { nominal, low } = facts
  const one =
    (offset: number, words: string) =>
    (pane: Pane): Item[] => {
      const [from, to] = [14 * pane.perPoint, 78 * pane.perPoint]
      const line0 = pane.height - 24 * pane.perPoint
      const at = (t: number): number =>
        line0 - offset * pane.perPoint * (facts.flareShape === 'parabola' ? (1 - t) ** 2 : 1 - t)
      const steps = Array.from({ length: 13 }, (_, i) => i / 12)
      return [
        ...trafficArrow(pane, facts),
        line('string', point(2 * pane.perPoint, line0), point(pane.width, line0)),
        polyline('rail', [...steps.map((t) => point(from + (to - from) * t, at(t))), point(pane.width, line0)]),
        ...[0, 0.25, 0.5, 0.75, 1].map((t) => postMark(pane, from + (to - from) * t, at(t))),
        dimension('dimensions', point(from, line0), point(from, at(0)), -6 * pane.perPoint, '', 7),
        text('text', point(from - pane.perPoint * 9, at(0) - 18 * pane.perPoint), words, 7.5),
        text('text', point(pane.width - pane.perPoint * 2, line0 - 24 * pane.perPoint), facts.words.lineOfRun, 6.5, {
          anchor: 'end',
        }),
        line(
          'dimensions',
          point(pane.width - 20 * pane.perPoint, line0 - 18 * pane.perPoint),
          point(pane.width - 36 * pane.perPoint, line0),
        ),
      ]
    }
  return {
    width: 98,
    isTold: nominal !== null || low !== null,
    right: one(34, (nominal ?? low)?.words ?? ''),
    wrong: one(13, low ? `< ${low.words}` : facts.words.tooLittle),
  }
}

export function straightnessFigure(facts: FigureFacts): Twins {
  const limit = facts.high
  const one =
    (bow: number, words: string) =>
    (pane: Pane): Item[] => {
      const [from, to] = [6 * pane.perPoint, pane.width - 6 * pane.perPoint]
      const y = pane.height / 2 + 4 * pane.perPoint
      const steps = Array.from({ length: 17 }, (_, i) => i / 16)
      const at = (t: number): number => y - bow * pane.perPoint * 4 * t * (1 - t)
      const middle = (from + to) / 2
      return [
        ...trafficArrow(pane, facts),
        line('string', point(from, y), point(to, y)),
        polyline(
          'rail',
          steps.map((t) => point(from + (to - from) * t, at(t))),
        ),
        ...[0, 0.5, 1].map((t) => postMark(pane, from + (to - from) * t, at(t))),
        ...(bow > 4
          ? [dimension('dimensions', point(middle, y), point(middle, at(0.5)), 9 * pane.perPoint, '', 7)]
          : []),
        text('text', point(middle + 8 * pane.perPoint, y - (bow > 4 ? 29 : 10) * pane.perPoint), words, 7.5),
        text('text', point((from + middle) / 2, y + 4 * pane.perPoint), facts.words.string, 6.5, { anchor: 'middle' }),
      ]
    }
  return {
    width: 98,
    isTold: limit !== null,
    right: one(0, limit ? `≤ ${limit.words}` : ''),
    wrong: one(16, limit ? `> ${limit.words}` : ''),
  }
}

/** Which panel lies on the traffic side of the splice. */
export function lapFigure(facts: FigureFacts): Twins {
  const one =
    (over: 'upstream' | 'downstream') =>
    (pane: Pane): Item[] => {
      const p = pane.perPoint
      const front = pane.height / 2 + 5 * p
      const back = front - 5 * p
      const [left, right] = [34 * p, 64 * p]
      const isUp = over === 'upstream'
      // The panel in front runs straight; the other steps back behind it along the lap.
      const straight = isUp ? [point(0, front), point(right, front)] : [point(left, front), point(pane.width, front)]
      const stepping = isUp
        ? [point(left, back), point(right, back), point(right + 8 * p, front), point(pane.width, front)]
        : [point(0, front), point(left - 8 * p, front), point(left, back), point(right, back)]
      const edge: [number, number] = [isUp ? right : left, front]
      return [
        ...trafficArrow(pane, facts),
        polyline('rail', straight),
        polyline('rail', stepping),
        ...[left + 7 * p, right - 7 * p].map((x) => line('part', point(x, front + 3 * p), point(x, back - 3 * p))),
        ...note(pane, facts.words.edge, [edge[0] + (isUp ? 12 : -12) * p, front + 10 * p], edge, 'middle'),
        ...panelName(facts.words.upstreamPanel, point(2 * p, back - 15 * p), p, 'start'),
        ...panelName(facts.words.downstreamPanel, point(pane.width - 2 * p, back - 15 * p), p, 'end'),
      ]
    }
  const right = facts.over ?? 'upstream'
  return {
    width: 98,
    isTold: facts.over !== null,
    right: one(right),
    wrong: one(right === 'upstream' ? 'downstream' : 'upstream'),
  }
}

/** Which panel it is, in rows that leave room for the other one's beside it. */
function panelName(words: string, at: Point, perPoint: number, anchor: 'start' | 'end'): Item[] {
  const { size, rows } = fitRows(words, 7, 45, 2)
  return rows.map((row, i) => text('text', point(at.x, at.y - i * 8 * perPoint), row, size, { anchor }))
}

/** The gap at an obstruction: as wide as the layout says, or not. */
export function omittedPostFigure(facts: FigureFacts): Twins {
  const { nominal, high } = facts
  const one =
    (shift: number, words: string) =>
    (pane: Pane): Item[] => {
      const p = pane.perPoint
      const y = pane.height / 2 + 8 * p
      const [a, b] = [18 * p, (80 + shift) * p]
      return [
        rectangle('block', { minX: 40 * p, maxX: 60 * p, minY: 8 * p, maxY: y - 3 * p }, 'hatch'),
        line('rail', point(0, y), point(pane.width, y)),
        postMark(pane, a, y),
        postMark(pane, b, y),
        dimension('dimensions', point(a, y), point(b, y), 12 * p, words, 7.5),
      ]
    }
  return {
    width: 98,
    isTold: nominal !== null,
    right: one(0, nominal?.words ?? ''),
    wrong: one(11, high ? `> ${high.words}` : facts.words.anotherDistance),
  }
}
