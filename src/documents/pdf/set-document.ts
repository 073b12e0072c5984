import type { SaidPicture } from '../../core/hardware/rule-picture.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import type { Print } from '../../words/print.ts'
import { printedText } from '../printed-text.ts'
import type { Printing } from '../record-input.ts'
import { ownPictureData } from './own-picture.ts'
import { frameData, type TextPaper } from './page-frame.ts'
import { printableData } from './printable-text.ts'
import { typeset } from './typeset.ts'

/** How a document of the packet is printed. */
export interface DocumentPrinting extends Printing, TextPaper {
  readonly print: Print
}

/**
 * `contents` set by `template` as PDF. The template finds them in `doc`, drawings that have a page of their own in
 * `data.drawings`, those that stand in the text in `data.figures`, and pictures of sheets' own in `data.pictures`.
 */
export async function setDocument(
  template: string,
  contents: Readonly<Record<string, unknown>> & { readonly title: string; readonly run: string },
  drawings: {
    readonly pages: readonly Drawing[]
    readonly figures: readonly Drawing[]
    readonly pictures?: readonly SaidPicture[]
  },
  { page, lie, printedAt, author, hash, print }: DocumentPrinting,
): Promise<Uint8Array> {
  const printed = printedText({ printedAt, author }, print)
  const text = { title: contents.title, run: contents.run, printed, printedAt, author, hash }
  return typeset(
    template,
    {
      contents: printableData({ ...contents, ...text }),
      ...frameData(text, { page, lie }, drawings.pages, print),
      figures: frameData(text, { page, lie }, drawings.figures, print).drawings,
      pictures: await Promise.all((drawings.pictures ?? []).map((one) => ownPictureData(one, print))),
    },
    new Map(),
  )
}
