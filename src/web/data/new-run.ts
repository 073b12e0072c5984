import { solveLayout } from '../../core/layout/solve-layout.ts'
import { err, ok } from '../../core/result.ts'
import { runFromValue } from '../../formats/run/run-file.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { pinRun } from '../../operations/pin-run.ts'
import { d } from './messages.ts'
import type { Answer } from './run-source.ts'
import { type OwnSheet, shelfOf } from './shelf-of.ts'

type Now<T> = Awaited<Answer<T>>

/**
 * The body of the entry of a new run, pinned to its layout and sheets; or what is wrong with the run.
 * @param own  sheets of this device, which it may name as those that ship without bringing them
 */
export function newRunBody(id: string, file: string, run: object, own: readonly OwnSheet[]): Now<unknown> {
  const read = runFromValue(file, run)
  if (!read.ok) return err({ kind: 'refused', message: d.trouble.notRunFile(file), problems: read.error })
  // A version that the file was pinned as elsewhere is a run of its own here.
  const known = read.value.version
  const pinned =
    known === undefined
      ? pinRun(file, read.value, id, { shelf: shelfOf(own), solve: solveLayout, keepsClear: true })
      : ok({ ...read.value, version: { ...known, id, earlier: [] } })
  if (!pinned.ok) return err({ kind: 'refused', message: d.trouble.cannotLayOut(file), problems: pinned.error })
  return ok(runToValue(pinned.value))
}
