import type { Drawing } from '../../drawing/drawing.ts'
import type { Print } from '../../words/print.ts'
import type { RecordContents } from '../record-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { frameData, type TextPaper } from './page-frame.ts'
import { printableData } from './printable-text.ts'
import { recordTemplate } from './record-template.ts'
import { typeset } from './typeset.ts'

export interface RecordPictures {
  /** At true scale, each on a page of its own. */
  readonly pages: readonly Drawing[]
  /** In the order of `RecordContents.signed`. */
  readonly signatures: readonly Drawing[]
  /** Of `RecordContents.photos`, by number; those that are not in this packet are missing. */
  readonly photos: ReadonlyMap<number, Uint8Array>
  /** What lies over them, as SVG of the photo's shape, by number. */
  readonly strokes: ReadonlyMap<number, readonly string[]>
}

/** The inspection record as PDF. */
export const writeRecordPdf = (
  contents: RecordContents,
  { pages, signatures, photos, strokes }: RecordPictures,
  paper: TextPaper,
  print: Print,
): Promise<Uint8Array> =>
  typeset(
    recordTemplate,
    {
      contents: printableData({ ...contents, words: documentWords(print).record }),
      ...frameData(contents, paper, pages, print),
      strokes: Object.fromEntries(strokes),
      signatures: frameData(contents, paper, signatures, print).drawings,
    },
    new Map([...photos].map(([number, bytes]) => [`/photos/${number}`, bytes])),
  )
