import { severityRank } from '../core/hardware/severity.ts'
import { firstVersionOf } from '../core/record/version.ts'
import { writeSummary } from '../documents/pdf/summary.ts'
import { qrDrawing } from '../documents/qr-drawing.ts'
import { documentWords } from '../documents/words/document-words.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { JudgedRun } from './judge-readings.ts'
import { hashRule } from './record-hash.ts'
import { stripInput } from './strip-input.ts'
import { type RecordOptions, recordOf, type WrittenRecord } from './write-record.ts'

/** Inches: read by a phone at the distance at which a page is held. */
const codeWidth = 1.28

/** What decides of the inspection record as PDF, two pages for the file beside it. The worst findings come first. */
export async function writeRunSummary(given: JudgedRun, options: RecordOptions): Promise<WrittenRecord> {
  const { print } = options
  const { judged, contents, signatures } = recordOf(given, options)
  const { hash } = contents
  const rank = (number: number): number => severityRank(judged.judgement.findings[number - 1]!.severity)
  const worstFirst = contents.findings.toSorted((a, b) => rank(a.number) - rank(b.number))
  const pdf = await writeSummary(
    { ...contents, findings: worstFirst },
    {
      strip: stripInput(judged, print),
      signatures,
      code: qrDrawing(recordCode(judged.run, hash), codeWidth, documentWords(print).summary.code),
    },
    { ...options, hash },
  )
  return { pdf, hash }
}

/** What the QR code of a record holds, as docs/formats.md says. */
const recordCode = ({ version }: RunFile, hash: string): string =>
  [`lapwise-record/${hashRule}`, `run ${firstVersionOf(version!)}`, `sha256 ${hash}`].join('\n')
