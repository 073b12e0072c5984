import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { RecordInput } from './record-input.ts'

/**
 * The hash that names exactly what a record was printed from: run file, sheets in use, readings and decision rule, as
 * canonical JSON. Anyone who has these files can compute it again and see whether one of them was changed.
 * @param sha256 hexadecimal SHA-256 of a text in UTF-8
 */
export function recordHash(
  { run, model, log }: Pick<RecordInput, 'run' | 'model' | 'log'>,
  sha256: (text: string) => string,
): string {
  return sha256(
    canonicalJson({ decisionRule: run.decisionRule, readings: log, run: saidBy(run), sheets: sheetsInUse(model) }),
  )
}

/**
 * The same as the program made it before runs held their layout and readings named a version: what signatures given then
 * name. Readings of then are all lengths, choices and confirmations.
 * @param asked  the run as it was recorded then
 */
export function firstRecordHash(
  { model, log }: Pick<RecordInput, 'model' | 'log'>,
  asked: RunFile,
  sha256: (text: string) => string,
): string {
  const readings = log.map(({ version: _, ...reading }) =>
    reading.answer.kind === 'measured' ? { ...reading, answer: { ...reading.answer, kind: 'length' } } : reading,
  )
  return sha256(
    canonicalJson({ decisionRule: asked.decisionRule, readings, run: saidBy(asked), sheets: sheetsInUse(model) }),
  )
}

/** Fields that the format did not have at first are left out while they say nothing: an older record keeps its hash. */
function saidBy(run: RunFile): unknown {
  const { opposingReaches, ...road } = run.road
  const { flare, ...rest } = run
  return { ...rest, ...(flare && { flare }), road: opposingReaches === null ? road : run.road }
}

/** The system's sheet and those of both ends, each once. */
function sheetsInUse({ system, first, second }: RunModel): readonly HardwareSheet[] {
  const ends = [first, second].flatMap((end) => (end.kind === 'unit' ? [end.sheet] : []))
  return [...new Map([system, ...ends].map((sheet) => [sheet.id, sheet])).values()]
}
