import type { FigureKind, HardwareSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import { figureFacts } from '../../drawing/views/figures/figure-facts.ts'
import { figureDrawing } from '../../drawing/views/figures.ts'
import { requirementsOf } from '../../operations/sheet-requirements.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { printIn } from '../messages.ts'

/** The figure of each kind with its wrong twin, by the first shipped sheet that has one. */
export function termFigures(): ReadonlyMap<FigureKind, Drawing> {
  const system = shippedSheets.find((sheet): sheet is LongitudinalSheet => sheet.kind === 'longitudinal')!
  const found = new Map<FigureKind, readonly [Requirement, HardwareSheet]>()
  for (const sheet of shippedSheets)
    for (const requirement of requirementsOf(sheet, system))
      if (requirement.figure !== null && !found.has(requirement.figure))
        found.set(requirement.figure, [requirement, sheet])
  return new Map(
    [...found].map(([figure, [requirement, sheet]]) => [
      figure,
      figureDrawing(figure, figureFacts(requirement, sheet, printIn('us'))),
    ]),
  )
}
