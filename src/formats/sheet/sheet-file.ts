import type * as z from 'zod/mini'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Result } from '../../core/result.ts'
import { reportContradictions } from '../contradiction.ts'
import type { InputProblem } from '../input-problem.ts'
import { once } from '../once.ts'
import { checkShape, readJson } from '../read-json.ts'
import { contradictionsIn } from './sheet-sense.ts'
import { sheetShape } from './sheet-shape.ts'

/** A hardware sheet: its shape, and that its parts hold together. */
export const sheetSchema: () => z.core.$ZodType<HardwareSheet> = once(() =>
  sheetShape().check((context) => reportContradictions(context, contradictionsIn(context.value))),
)

/** The hardware sheet in `text`, or every problem found in it; `file` is the name that the problems carry. */
export const readSheet = (file: string, text: string): Result<HardwareSheet, readonly InputProblem[]> =>
  readJson(file, text, sheetSchema())

/** The same of what was JSON. */
export const sheetFromValue = (file: string, value: unknown): Result<HardwareSheet, readonly InputProblem[]> =>
  checkShape(file, value, sheetSchema())

/** The sheet as the text that `readSheet` reads back. */
export const writeSheet = (sheet: HardwareSheet): string => `${JSON.stringify(sheet, null, 2)}\n`
