import { dimension, line, point, rectangle, text } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import type { FigureFacts } from './figure-facts.ts'
import type { Pane, Twins } from './pair.ts'
import { beamHeight, beamSection, ground, postBody } from './parts.ts'

const groundLevel = 6

/** Rail, block and post seen along the rail, traffic at the left. The back of the rail lies at x = 24. */
function railSection(pane: Pane, railTop: number, hasBlock: boolean): Item[] {
  const top = groundLevel + railTop
  const back = 24
  const post = back + (hasBlock ? 8 : 0) + 3
  return [
    ...ground(pane, groundLevel),
    postBody(post, 6, groundLevel, top - 0.5),
    ...(hasBlock
      ? [rectangle('block', { minX: back, maxX: back + 8, minY: top - beamHeight - 0.9, maxY: top + 0.9 }, 'blank')]
      : []),
    beamSection(back, top),
  ]
}

/** Top of rail above finish grade: the right one at its nominal height, or on its floor; the wrong one below. */
export function railHeightFigure(facts: FigureFacts): Twins {
  const shown = facts.nominal ?? facts.low ?? facts.high
  const limit = facts.low ?? facts.high
  const isFloor = facts.nominal === null && facts.high === null
  const railTop = shown?.inches ?? 31
  const wrongTop = facts.low ? facts.low.inches - 5 : railTop + 5
  return {
    width: 54,
    isTold: shown !== null && limit !== null,
    right: (pane) => [
      ...railSection(pane, railTop, true),
      height(pane, railTop, isFloor ? `≥ ${shown?.words}` : (shown?.words ?? '')),
    ],
    wrong: (pane) => [
      ...railSection(pane, wrongTop, true),
      height(pane, wrongTop, facts.low ? facts.words.tooLow : facts.words.tooHigh),
      ...(limit ? limitLine(pane, groundLevel + limit.inches, limit.words) : []),
    ],
  }
}

const height = (pane: Pane, inches: number, words: string): Item =>
  dimension('dimensions', point(18, groundLevel), point(18, groundLevel + inches), 5.5 * pane.perPoint, words, 7.5)

function limitLine(pane: Pane, y: number, words: string): Item[] {
  return [
    line('string', point(0, y), point(pane.width, y)),
    text('text', point(pane.width - pane.perPoint * 2, y + pane.perPoint * 2), words, 7, { anchor: 'end' }),
  ]
}

/** The offset block between rail and post, or none. */
export function blockFigure(facts: FigureFacts): Twins {
  const one =
    (hasBlock: boolean) =>
    (pane: Pane): Item[] => [
      ...railSection(pane, 31, hasBlock),
      text(
        'text',
        point(3 * pane.perPoint, pane.height - 9 * pane.perPoint),
        hasBlock ? facts.words.block : facts.words.noBlock,
        7,
      ),
      ...(hasBlock ? [line('dimensions', point(13, pane.height - 4), point(28, groundLevel + 27))] : []),
    ]
  const isPresent = facts.present ?? true
  return { width: 54, isTold: facts.present !== null, right: one(isPresent), wrong: one(!isPresent) }
}
