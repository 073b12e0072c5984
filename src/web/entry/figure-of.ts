import type { FigureKind, HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import { figureFacts } from '../../drawing/views/figures/figure-facts.ts'
import { figureDrawing, figureHalves } from '../../drawing/views/figures.ts'
import type { Print } from '../../words/print.ts'

/** The right one and its wrong twin; fetched apart, as the figures are large and the walk begins without them. */
export const figureOf = (figure: FigureKind, requirement: Requirement, sheet: HardwareSheet, print: Print): Drawing =>
  figureDrawing(figure, figureFacts(requirement, sheet, print))

/** Each of the two by itself, as an answer to choose. */
export const halvesOf = (figure: FigureKind, requirement: Requirement, sheet: HardwareSheet, print: Print) =>
  figureHalves(figure, figureFacts(requirement, sheet, print))
