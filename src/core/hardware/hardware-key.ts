import type { HardwareSheet } from './hardware-sheet.ts'
import { type KeyTrait, type KeyValue, keyTraits, valuesOf } from './key-traits.ts'

/** What somebody answered to a question of the key. */
export interface KeyAnswer {
  readonly of: KeyTrait
  readonly is: KeyValue | 'not sure' | 'none of these'
}

/** One way in which a question can be answered, with the sheets that are left then. */
export interface KeyOption<S> {
  readonly is: KeyValue
  readonly left: readonly S[]
}

export interface KeyQuestion<S> {
  readonly of: KeyTrait
  readonly options: readonly KeyOption<S>[]
}

/** Where somebody stands in the key: what it can still be, and what to look at next. */
export interface KeyState<S> {
  readonly left: readonly S[]
  /** Null where no question would tell apart what is left. */
  readonly question: KeyQuestion<S> | null
}

/**
 * The key that finds the hardware, computed from what the sheets say: the one of `sheets` that fit `answers`, and the
 * question that divides them best. A sheet that does not say is left by every answer, and every answer leaves out some.
 *
 * @param shelf  every sheet at hand: the systems among them tell what an end unit joins
 */
export function hardwareKey<S extends HardwareSheet>(
  sheets: readonly S[],
  shelf: readonly HardwareSheet[],
  answers: readonly KeyAnswer[],
): KeyState<S> {
  const left = answers.reduce((some, answer) => fitting(some, shelf, answer), sheets)
  const answered = new Set(answers.map(({ of }) => of))
  const questions = (Object.keys(keyTraits) as KeyTrait[]).flatMap((of) => {
    const options = answered.has(of) ? [] : optionsOf(of, left, shelf)
    return options.length > 1 && options.every((one) => one.left.length < left.length) ? [{ of, options }] : []
  })
  // The fewest left on the whole; among equals what is easiest to see.
  const [question = null] = questions.toSorted((a, b) => expectedLeft(a) - expectedLeft(b))
  return { left, question }
}

function fitting<S extends HardwareSheet>(
  sheets: readonly S[],
  shelf: readonly HardwareSheet[],
  { of, is }: KeyAnswer,
): readonly S[] {
  if (is === 'not sure') return sheets
  return sheets.filter((sheet) => {
    const values = valuesOf(of, sheet, shelf)
    return values.length === 0 || values.some((value) => value === is)
  })
}

function optionsOf<S extends HardwareSheet>(
  of: KeyTrait,
  sheets: readonly S[],
  shelf: readonly HardwareSheet[],
): readonly KeyOption<S>[] {
  const values = new Set(sheets.flatMap((sheet) => valuesOf(of, sheet, shelf)))
  return [...values].map((is) => ({ is, left: fitting(sheets, shelf, { of, is }) }))
}

/** How many are left on the average, where each of them is as likely. */
const expectedLeft = ({ options }: KeyQuestion<HardwareSheet>): number =>
  options.reduce((sum, { left }) => sum + left.length ** 2, 0)
