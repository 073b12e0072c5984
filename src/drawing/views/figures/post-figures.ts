import { circle, dimension, line, point, rectangle, text } from '../../draw.ts'
import type { Box, Item } from '../../drawing.ts'
import type { FigureFacts } from './figure-facts.ts'
import { note, type Pane, type Twins } from './pair.ts'
import { beamFace, beamHeight, boltHead, ground, openHole, postBody, towardHead } from './parts.ts'

/** Posts seen square to the rail, the head at the left. */

const groundLevel = 11

/** Upper post on a lower one that stands `stub` inches above grade, its hinge bolt toward the head or away from it. */
function hingedPost(pane: Pane, stub: number, hinge: 'head' | 'away' | null): Item[] {
  const middle = pane.width / 2
  const joint = groundLevel + stub
  const left = middle - 2.6
  const right = middle + 2.6
  return [
    ...ground(pane, groundLevel),
    rectangle('post', { minX: middle - 4, maxX: middle + 4, minY: 0, maxY: joint }, 'tint'),
    rectangle(
      'post',
      { minX: middle - 3, maxX: middle + 3, minY: joint - 3, maxY: pane.height - 12 * pane.perPoint },
      'blank',
    ),
    ...(hinge === null ? [] : [boltHead(hinge === 'head' ? left : right, joint - 1.5, pane)]),
    ...(hinge === null ? [] : [openHole(hinge === 'head' ? right : left, joint - 1.5, pane)]),
  ]
}

export function hingeSideFigure(facts: FigureFacts): Twins {
  const one =
    (hinge: 'head' | 'away') =>
    (pane: Pane): Item[] => {
      const middle = pane.width / 2
      const isLeft = hinge === 'head'
      const bolt: [number, number] = [middle + (isLeft ? -2.6 : 2.6), groundLevel + 2.5]
      const at: [number, number] = [isLeft ? 1 : pane.width - 1, groundLevel + 8]
      return [
        ...hingedPost(pane, 4, hinge),
        ...towardHead(pane, facts),
        ...note(pane, facts.words.hinge, at, bolt, isLeft ? 'start' : 'end'),
      ]
    }
  const right = facts.toward ?? 'head'
  return {
    width: 36,
    isTold: facts.toward !== null,
    right: one(right),
    wrong: one(right === 'head' ? 'away' : 'head'),
  }
}

export function stubHeightFigure(facts: FigureFacts): Twins {
  const limit = facts.high
  const most = limit?.inches ?? 4
  const one =
    (stub: number, words: string) =>
    (pane: Pane): Item[] => {
      const x = pane.width / 2 - 4
      return [
        ...hingedPost(pane, stub, null),
        dimension('dimensions', point(x, groundLevel), point(x, groundLevel + stub), 4 * pane.perPoint, '', 7),
        text('text', point(x - 6 * pane.perPoint, groundLevel + stub / 2), words, 7, {
          anchor: 'end',
          level: 'middle',
        }),
      ]
    }
  return {
    width: 36,
    isTold: limit !== null,
    right: one(most, `≤ ${limit?.words}`),
    wrong: one(most * 2, `> ${limit?.words}`),
  }
}

/** Heights of the two pairs of slots or holes in the figures below, inches above the pane's lower edge. */
const sets = { upper: [23, 12], lower: [19.5, 8.5] } as const

/** The upper end of the post with open slots in its side; the rail's holders stand in one of the two pairs. */
export function slotSetFigure(facts: FigureFacts): Twins {
  const one =
    (set: 'upper' | 'lower') =>
    (pane: Pane): Item[] => {
      const out = facts.toward === 'away' ? 1 : -1
      const middle = pane.width / 2 + out * -1
      const edge = middle + out * 4
      const box = (from: number, to: number, y: number): Box => ({
        minX: edge + Math.min(out * from, out * to),
        maxX: edge + Math.max(out * from, out * to),
        minY: y - 0.6,
        maxY: y + 0.6,
      })
      const top = sets[set][0] + 2.5
      const railEnd = out < 0 ? 1 : pane.width - 1
      const rail = { minX: Math.min(railEnd, middle - out * 4.5), maxX: Math.max(railEnd, middle - out * 4.5) }
      return [
        rectangle('post', { minX: middle - 4, maxX: middle + 4, minY: 0, maxY: 26.5 }, 'tint'),
        ...[...sets.upper, ...sets.lower].map((y) => rectangle('hole', box(0, -3, y), 'blank')),
        ...sets[set].map((y) => rectangle('part', box(1.5, -3, y), 'solid')),
        rectangle('behind', { ...rail, minY: top - beamHeight - 3.5, maxY: top }, 'none'),
        ...setNames(facts, middle - out * 6, out < 0 ? 'start' : 'end'),
        text('text', point(railEnd - out * 2, (sets[set][0] + sets[set][1]) / 2), facts.words.rail, 7, {
          level: 'middle',
          anchor: out < 0 ? 'start' : 'end',
        }),
        ...towardHead(pane, facts),
      ]
    }
  const right = facts.set ?? 'upper'
  return {
    width: 38,
    isTold: facts.set !== null,
    right: one(right),
    wrong: one(right === 'upper' ? 'lower' : 'upper'),
  }
}

const setNames = ({ words }: FigureFacts, x: number, anchor: 'start' | 'end'): Item[] =>
  (['upper', 'lower'] as const).flatMap((set) =>
    sets[set].map((y) => text('text', point(x, y), words.sets[set], 6.5, { level: 'middle', anchor })),
  )

/** The upper end of post 1 with two sets of holes; the head's bolts stand in one set. */
export function headHolesFigure(facts: FigureFacts): Twins {
  const one =
    (set: 'upper' | 'lower') =>
    (pane: Pane): Item[] => {
      const middle = pane.width * 0.62
      const bolts = sets[set]
      return [
        postBody(middle, 8, 0, 26.5),
        rectangle('part', { minX: 1, maxX: middle - 6, minY: bolts[1] - 2.5, maxY: bolts[0] + 2.5 }, 'tint'),
        ...bolts.map((y) =>
          rectangle('part', { minX: middle - 6, maxX: middle + 2, minY: y - 1.2, maxY: y + 1.2 }, 'blank'),
        ),
        ...bolts.map((y) => boltHead(middle, y, pane)),
        ...sets[set === 'upper' ? 'lower' : 'upper'].map((y) => openHole(middle, y, pane)),
        ...setNames(facts, middle + 5.5, 'start'),
        text('text', point((middle - 5) / 2, (bolts[0] + bolts[1]) / 2), facts.words.head, 7, {
          anchor: 'middle',
          level: 'middle',
        }),
      ]
    }
  const right = facts.set ?? 'upper'
  return {
    width: 38,
    isTold: facts.set !== null,
    right: one(right),
    wrong: one(right === 'upper' ? 'lower' : 'upper'),
  }
}

/** What lets the post break away is drawn: a hinge, or for any other way holes through it; else a plain post. */
export function postKindFigure(facts: FigureFacts): Twins {
  const isHinged = facts.breakaway === 'hinge'
  const breaks = isHinged || facts.breakaway === 'other'
  const plain = (pane: Pane): Item[] => [
    ...ground(pane, groundLevel),
    postBody(pane.width / 2, 6, 0, pane.height - 6 * pane.perPoint),
    line('ribs', point(pane.width / 2, 0), point(pane.width / 2, pane.height - 6 * pane.perPoint)),
  ]
  const holed = (pane: Pane): Item[] => [
    ...ground(pane, groundLevel),
    postBody(pane.width / 2, 7, 0, pane.height - 6 * pane.perPoint),
    ...[groundLevel, groundLevel - 7].map((y) => circle('hole', point(pane.width / 2, y), 1.75, 'blank')),
    ...note(pane, facts.words.hole, [1, groundLevel + 6], [pane.width / 2 - 1.5, groundLevel + 0.6]),
  ]
  const breaking = isHinged ? (pane: Pane) => hingedPost(pane, 4, 'head') : holed
  return {
    width: 36,
    isTold: facts.breakaway !== null,
    right: breaks ? breaking : plain,
    wrong: breaks ? plain : holed,
  }
}

/** The bolt that holds the rail to the post, seen on the face of the rail. */
export function railBoltFigure(facts: FigureFacts): Twins {
  const one =
    (isBolted: boolean, hasWasher: boolean) =>
    (pane: Pane): Item[] => {
      const middle = pane.width / 2
      const top = 25
      const y = top - 6.1
      return [
        postBody(middle, 6, 0, top + 2),
        ...beamFace(2, pane.width - 2, top),
        rectangle('hole', { minX: middle - 1.25, maxX: middle + 1.25, minY: y - 0.4, maxY: y + 0.4 }, 'blank'),
        ...(hasWasher
          ? [rectangle('part', { minX: middle - 3, maxX: middle + 3, minY: y - 1.4, maxY: y + 1.4 }, 'blank')]
          : []),
        ...(isBolted ? [circle('hole', point(middle, y), 0.75, 'solid')] : []),
        text('text', point(middle + 4, 4), facts.words.post, 7),
        text('text', point(3, top + 2), facts.words.rail, 7),
      ]
    }
  const isBolted = facts.present ?? true
  const wrong = isBolted && facts.hasWasher ? one(true, true) : one(!isBolted, false)
  return { width: 36, isTold: facts.present !== null, right: one(isBolted, false), wrong }
}
