import { namesOfThings } from '../core/record/thing-read.ts'
import type { PaperName } from '../core/units/paper-names.ts'
import { writeRecordPdf } from '../documents/pdf/write-record-pdf.ts'
import { recordContents } from '../documents/record-contents.ts'
import type { OnRoad, RecordInput } from '../documents/record-input.ts'
import { signatureDrawing } from '../documents/signature-lines.ts'
import { writeRecordFile } from '../documents/write-record-file.ts'
import type { PageLie } from '../drawing/paper.ts'
import { writePhotoStrokes } from '../drawing/svg/photo-strokes.ts'
import { stripPages } from '../drawing/views/strip.ts'
import type { RunEntries } from '../formats/entry/run-entries.ts'
import type { Print } from '../words/print.ts'
import { askedBy } from './asked-by.ts'
import { entriesInForce } from './entries-in-force.ts'
import { instrumentsOf } from './instruments-of.ts'
import type { JudgedRun } from './judge-readings.ts'
import { pictureOf } from './picture-of.ts'
import { pinned } from './pin-run.ts'
import { firstRecordText, hashRule, photosText, recordText } from './record-hash.ts'
import { type NamedPhoto, photoHashes, photosNamed } from './record-photos.ts'
import { signedVersions } from './sign-off.ts'
import { stripInput } from './strip-input.ts'

export interface RecordOptions {
  readonly page: PaperName
  /** How pages of text lie; drawings always lie. */
  readonly lie: PageLie
  /** ISO 8601 date and time; without a zone it counts as UTC. */
  readonly printedAt: string
  /** Who prints it; empty when not said. */
  readonly author: string
  /** Hexadecimal SHA-256 of bytes, or of a text in UTF-8. */
  readonly sha256: (content: string | Uint8Array) => string
  /** What was recorded at the run besides readings. */
  readonly entries: RunEntries
  /** The photos that are at hand; null where they are left out. They have to be whole pictures. */
  readonly photos: readonly NamedPhoto[] | null
  /** Where it stands by its road; left out where the road is not known. */
  readonly onRoad?: OnRoad | null
  readonly print: Print
}

/** A record with the hash that it prints. */
export interface WrittenRecord {
  readonly pdf: Uint8Array
  readonly hash: string
}

/** The inspection record of a judged run as PDF. */
export async function writeRecord(given: JudgedRun, options: RecordOptions): Promise<WrittenRecord> {
  const { page, lie, entries, photos, print } = options
  const { judged, contents, signatures } = recordOf(given, options)
  const pictures = new Map((photos ?? []).map((one) => [one.photo, pictureOf(one)]))
  const drawn = {
    pages: stripPages(stripInput(judged, print), page, 'of the document'),
    signatures,
    photos: new Map(
      contents.photos.flatMap(({ number, photo, isHere }) => (isHere ? [[number, pictures.get(photo)!] as const] : [])),
    ),
    strokes: new Map(
      contents.photos.map(({ number, photo }) => [
        number,
        entries.photoStrokes.filter((one) => one.photo === photo).map(writePhotoStrokes),
      ]),
    ),
  }
  return { pdf: await writeRecordPdf(contents, drawn, { page, lie }, print), hash: contents.hash }
}

/** All that the record says, with the run as it is pinned and the signatures as drawn, for any document made of it. */
export function recordOf(
  given: JudgedRun,
  { printedAt, author, sha256, entries, photos, onRoad, print }: Omit<RecordOptions, 'page' | 'lie'>,
) {
  const judged = pinned(given, sha256)
  const atHand = new Map((photos ?? []).map((one) => [one.photo, sha256(one.bytes)]))
  const hashes = photoHashes(photosNamed(judged.log, judged.freeFindings, entries.photos), atHand)
  const hash = sha256(recordText(judged, hashes, entries.photoStrokes))
  const first = firstRecordText(judged)
  const signed = signedVersions(entries.signatures, judged, { 1: first === null ? null : sha256(first), 2: hash })
  const side = {
    signed,
    photos: entriesInForce(entries.photos),
    photoStrokes: entries.photoStrokes,
    photoHashes: hashes,
    photosHash: sha256(photosText(hashes)),
    photosHere: new Set(atHand.keys()),
    versions: entries.versions,
    assignments: entries.assignments,
  }
  return {
    judged,
    contents: recordContents(recordInput(judged, print, onRoad), { printedAt, author, hash }, side),
    signatures: signed.map((version) => signatureDrawing(version.signed, print)),
  }
}

/** All that the record says as a JSON file. */
export const recordFileText = (given: JudgedRun, options: Omit<RecordOptions, 'page' | 'lie'>): string =>
  writeRecordFile(recordOf(given, options).contents, hashRule, options.print)

/** @param onRoad  null where the run was not placed on its road */
export const recordInput = (judged: JudgedRun, print: Print, onRoad: OnRoad | null = null): RecordInput => ({
  ...judged,
  onRoad,
  instruments: instrumentsOf(judged.run),
  nameOf: namesOfThings(judged.model, judged.run.version, judged.versions),
  askedBy: askedBy(judged.versions),
  print,
})
