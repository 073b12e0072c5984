import { err, ok } from '../../core/result.ts'
import { readRun, runFromValue } from '../../formats/run/run-file.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { pinRun } from '../../operations/pin-run.ts'
import { requireRun } from '../../operations/require-run.ts'
import { d } from './messages.ts'
import type { Answer } from './run-source.ts'

type Now<T> = Awaited<Answer<T>>

/** The body of the entry of a new run, pinned to its layout and sheets; or what is wrong with the file. */
export function newRunBody(id: string, file: string, text: string): Now<unknown> {
  const read = readRun(file, text)
  if (!read.ok) return err({ kind: 'refused', message: d.trouble.notRunFile(file), problems: read.error })
  // A version that the file was pinned as elsewhere is a run of its own here.
  const known = read.value.version
  const pinned =
    known === undefined ? pinRun(file, read.value, id) : ok({ ...read.value, version: { ...known, id, earlier: [] } })
  if (!pinned.ok) return err({ kind: 'refused', message: d.trouble.cannotLayOut(file), problems: pinned.error })
  return ok(runToValue(pinned.value))
}

/** The body of a run's entry in a file as this page would write it; or what is wrong with it, or why it cannot be laid out. */
export function runBody(file: string, body: unknown): Now<unknown> {
  const read = runFromValue(file, body)
  if (!read.ok) return err({ kind: 'refused', message: d.trouble.notRunFile(file), problems: read.error })
  const required = requireRun(file, read.value)
  if (!required.ok) return err({ kind: 'refused', message: d.trouble.cannotLayOut(file), problems: required.error })
  return ok(runToValue(read.value))
}
