import { writeRecordPdf } from '../documents/pdf/write-record-pdf.ts'
import { recordContents } from '../documents/record-contents.ts'
import { recordHash } from '../documents/record-hash.ts'
import type { RecordInput } from '../documents/record-input.ts'
import type { PaperName } from '../drawing/paper.ts'
import { stripPages } from '../drawing/views/strip.ts'
import { instrumentsOf, type JudgedRun } from './judge-readings.ts'
import { stripInput } from './write-strip.ts'

export interface RecordOptions {
  readonly page: PaperName
  /** ISO 8601 date and time; without a zone it counts as UTC. */
  readonly printedAt: string
  /** Who prints it; empty when not said. */
  readonly author: string
  /** Hexadecimal SHA-256 of a text in UTF-8. */
  readonly sha256: (text: string) => string
}

/**
 * The inspection record of a judged run as PDF/A-2a. It needs the typesetter's native library, so that a page asks the
 * server for it.
 */
export async function writeRecord(judged: JudgedRun, options: RecordOptions): Promise<Uint8Array> {
  const { page, printedAt, author, sha256 } = options
  const input = recordInput(judged)
  const contents = recordContents(input, { printedAt, author, hash: recordHash(input, sha256) })
  return writeRecordPdf(contents, stripPages(stripInput(judged), page), { page, standard: 'PDF/A-2a' })
}

export const recordInput = ({ run, model, requirements, readings, judgement }: JudgedRun): RecordInput => ({
  run,
  model,
  requirements,
  readings,
  judgement,
  instruments: instrumentsOf(run),
})
