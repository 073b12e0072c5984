import type { PaperName } from '../core/units/paper-names.ts'
import { writeRecordPdf } from '../documents/pdf/write-record-pdf.ts'
import { recordContents } from '../documents/record-contents.ts'
import { recordHash } from '../documents/record-hash.ts'
import type { RecordInput } from '../documents/record-input.ts'
import { signatureDrawing } from '../documents/signature-lines.ts'
import type { PageLie } from '../drawing/paper.ts'
import { sayDrawing } from '../drawing/say-drawing.ts'
import { stripPages } from '../drawing/views/strip.ts'
import type { RunEntries } from '../formats/entry/run-entries.ts'
import type { Print } from '../words/print.ts'
import { entriesInForce } from './entries-in-force.ts'
import { instrumentsOf } from './instruments-of.ts'
import type { JudgedRun } from './judge-readings.ts'
import { type NamedPhoto, pictureOf } from './packet-photos.ts'
import { firstRecordText, signedVersions } from './sign-off.ts'
import { stripInput } from './strip-input.ts'

export interface RecordOptions {
  readonly page: PaperName
  /** How pages of text lie; drawings always lie. */
  readonly lie: PageLie
  /** ISO 8601 date and time; without a zone it counts as UTC. */
  readonly printedAt: string
  /** Who prints it; empty when not said. */
  readonly author: string
  /** Hexadecimal SHA-256 of a text in UTF-8. */
  readonly sha256: (text: string) => string
  /** What was recorded at the run besides readings. */
  readonly entries: RunEntries
  /** The photos that are at hand; null where they are left out. They have to be whole pictures. */
  readonly photos: readonly NamedPhoto[] | null
  readonly print: Print
}

/**
 * The inspection record of a judged run as PDF. It needs the typesetter's native library, so that a page asks the
 * server for it.
 */
export async function writeRecord(judged: JudgedRun, options: RecordOptions): Promise<Uint8Array> {
  const { page, lie, printedAt, author, sha256, entries, photos, print } = options
  const input = recordInput(judged, print)
  const hash = recordHash(input, sha256)
  const first = firstRecordText(judged)
  const signed = signedVersions(entries.signatures, judged, first === null ? [hash] : [hash, sha256(first)])
  const given = new Map((photos ?? []).map((one) => [one.photo, pictureOf(one)]))
  const side = { signed, photos: entriesInForce(entries.photos), photosHere: new Set(given.keys()) }
  const contents = recordContents(input, { printedAt, author, hash }, side)
  const pictures = {
    pages: stripPages(stripInput(judged, print), page).map((one) => sayDrawing(one, print)),
    signatures: signed.map((version) => signatureDrawing(version.signed)),
    photos: new Map(
      contents.photos.flatMap(({ number, photo, isHere }) => (isHere ? [[number, given.get(photo)!] as const] : [])),
    ),
  }
  return writeRecordPdf(contents, pictures, { page, lie }, print)
}

export const recordInput = (judged: JudgedRun, print: Print): RecordInput => ({
  ...judged,
  instruments: instrumentsOf(judged.run),
  print,
})
