import { dimension, line, point, rectangle, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import type { FigureFacts, FigureLimit } from './figure-facts.ts'
import type { Pane, Twins } from './pair.ts'
import { beamFace, boltHead, ground, postBody } from './parts.ts'

/** The rail seen square to it from the traffic side. */

const groundLevel = 14

/** Rail on posts at `posts`, with splices at `splices`, across the pane. */
function railOnPosts(pane: Pane, posts: readonly number[], splices: readonly number[], postWidth = 6): Item[] {
  const top = groundLevel + 31
  return [
    ...ground(pane, groundLevel),
    ...posts.map((x) => postBody(x, postWidth, groundLevel, top + 1)),
    ...beamFace(0, pane.width, top),
    ...splices.flatMap((x) => spliceMark(pane, x, top)),
  ]
}

function spliceMark(pane: Pane, x: number, top: number): Item[] {
  return [
    line('rail', point(x + 6.25, top - 12.25), point(x + 6.25, top)),
    ...[-4.25, 4.25].flatMap((aside) =>
      [2.9, 9.3].map((down) => boltHead(x + aside, top - down, { ...pane, perPoint: pane.perPoint * 0.55 })),
    ),
  ]
}

export function postSpacingFigure(facts: FigureFacts): Twins {
  const nominal = facts.nominal
  const apart = nominal?.inches ?? 75
  const width = apart * 1.5
  const one =
    (distance: number, words: string) =>
    (pane: Pane): Item[] => {
      const from = (width - apart) / 2 - 4
      const y = groundLevel + 40
      return [
        ...railOnPosts(pane, [from, from + distance], []),
        dimension('dimensions', point(from, y), point(from + distance, y), 0, words, 7.5),
      ]
    }
  const beyond = facts.high ? `> ${facts.high.words}` : facts.words.anotherDistance
  return {
    width,
    isTold: nominal !== null,
    right: one(apart, nominal?.words ?? ''),
    wrong: one(apart * 1.16, beyond),
  }
}

export function panelLengthFigure(facts: FigureFacts): Twins {
  const lengths = facts.lengths ?? { right: { inches: 150, words: '' }, wrong: { inches: 112.5, words: '' } }
  const longest = Math.max(lengths.right.inches, lengths.wrong.inches)
  const width = longest * 1.2
  const one =
    ({ inches: length, words }: FigureLimit) =>
    (pane: Pane): Item[] => {
      const from = (width - longest) / 2
      const top = pane.height / 2 + 8
      return [
        ...beamFace(0, pane.width, top),
        ...[from, from + length].flatMap((x) => spliceMark(pane, x, top)),
        dimension('dimensions', point(from, top), point(from + length, top), 9 * pane.perPoint, words, 7.5),
        text('text', point(from + length / 2, top - 12.25 - 11 * pane.perPoint), facts.words.spliceToSplice, 7, {
          anchor: 'middle',
        }),
      ]
    }
  return { width, isTold: facts.lengths !== null, right: one(lengths.right), wrong: one(lengths.wrong) }
}

export function slottedPanelFigure(facts: FigureFacts): Twins {
  const one =
    (isSlotted: boolean) =>
    (pane: Pane): Item[] => {
      const top = pane.height / 2 + 7
      const slots = Array.from({ length: 5 }, (_, i) => pane.width * (0.14 + 0.18 * i))
      return [
        ...beamFace(0, pane.width, top),
        ...(isSlotted
          ? slots.map((x) => rectangle('hole', { minX: x - 2, maxX: x + 2, minY: top - 6.6, maxY: top - 5.6 }, 'solid'))
          : []),
        text(
          'text',
          point(pane.width / 2, top - 12.25 - 11 * pane.perPoint),
          isSlotted ? facts.words.slots : facts.words.noSlots,
          7,
          {
            anchor: 'middle',
          },
        ),
      ]
    }
  const isSlotted = facts.present ?? true
  return { width: 56, isTold: facts.present !== null, right: one(isSlotted), wrong: one(!isSlotted) }
}

export function splicePositionFigure(facts: FigureFacts): Twins {
  const one =
    (position: 'post' | 'midspan') =>
    (pane: Pane): Item[] => {
      const posts = [15, 90, 165]
      const x = position === 'post' ? 90 : 127.5
      return [
        ...railOnPosts(pane, posts, [x], 8),
        text('text', point(x, groundLevel + 31 + 9 * pane.perPoint), facts.words.splice, 7, { anchor: 'middle' }),
        line('dimensions', point(x, groundLevel + 31 + 7 * pane.perPoint), point(x, groundLevel + 32)),
      ]
    }
  const right = facts.splice ?? 'post'
  return {
    width: 180,
    isTold: facts.splice !== null,
    right: one(right),
    wrong: one(right === 'post' ? 'midspan' : 'post'),
  }
}
