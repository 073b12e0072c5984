import type { Drawing } from '../../drawing/drawing.ts'
import type { PaperName } from '../../drawing/paper.ts'
import type { RecordContents } from '../record-contents.ts'
import { frameData } from './page-frame.ts'
import { printableData } from './printable-text.ts'
import { recordTemplate } from './record-template.ts'
import { type PdfStandard, typeset } from './typeset.ts'

export interface PdfOptions {
  /** The paper that text stands upright on; a drawing brings its own. */
  readonly page: PaperName
  readonly standard: PdfStandard
}

/** The inspection record as PDF, with `drawings` on pages of their own at true scale. */
export const writeRecordPdf = (
  contents: RecordContents,
  drawings: readonly Drawing[],
  { page, standard }: PdfOptions,
): Uint8Array =>
  typeset(
    recordTemplate,
    {
      contents: { ...(printableData(contents) as object), hash: contents.hash },
      ...frameData(contents, page, drawings),
    },
    standard,
  )
