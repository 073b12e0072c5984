import type { FigureKind } from '../../core/hardware/hardware-sheet.ts'
import type { Drawing } from '../drawing.ts'
import { bearingPlateFigure, bracketOpeningFigure, cablePlayFigure } from './figures/anchor-figures.ts'
import type { FigureFacts } from './figures/figure-facts.ts'
import { halfDrawing, pairDrawing, type Twins } from './figures/pair.ts'
import { flareOffsetFigure, lapFigure, omittedPostFigure, straightnessFigure } from './figures/plan-figures.ts'
import {
  headHolesFigure,
  hingeSideFigure,
  postKindFigure,
  railBoltFigure,
  slotSetFigure,
  stubHeightFigure,
} from './figures/post-figures.ts'
import {
  panelLengthFigure,
  postSpacingFigure,
  slottedPanelFigure,
  splicePositionFigure,
} from './figures/rail-figures.ts'
import { blockFigure, railHeightFigure } from './figures/section-figures.ts'

const twins: Readonly<Record<FigureKind, (facts: FigureFacts) => Twins>> = {
  'rail-height': railHeightFigure,
  'flare-offset': flareOffsetFigure,
  straightness: straightnessFigure,
  'post-spacing': postSpacingFigure,
  'panel-length': panelLengthFigure,
  'slotted-panel': slottedPanelFigure,
  lap: lapFigure,
  'splice-position': splicePositionFigure,
  'rail-bolt': railBoltFigure,
  block: blockFigure,
  'hinge-side': hingeSideFigure,
  'stub-height': stubHeightFigure,
  'slot-set': slotSetFigure,
  'head-holes': headHolesFigure,
  'bearing-plate': bearingPlateFigure,
  'cable-play': cablePlayFigure,
  'bracket-opening': bracketOpeningFigure,
  'post-kind': postKindFigure,
  'omitted-post': omittedPostFigure,
}

/**
 * The right one and its wrong twin, side by side, for one kind of requirement; every number and side in it comes from
 * `facts`. It is a schematic drawing of our own, 206 points wide, to be read at the width of a phone.
 */
export const figureDrawing = (kind: FigureKind, facts: FigureFacts): Drawing => pairDrawing(facts, twins[kind](facts))

/** Each of the two by itself, to choose from; null where the sheet's words do not tell which of them is right. */
export function figureHalves(
  kind: FigureKind,
  facts: FigureFacts,
): { readonly right: Drawing; readonly wrong: Drawing } | null {
  const both = twins[kind](facts)
  return both.isTold ? { right: halfDrawing(facts, both, 'right'), wrong: halfDrawing(facts, both, 'wrong') } : null
}
