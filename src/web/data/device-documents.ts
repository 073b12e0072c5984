import { sha256 as digest } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { err, ok } from '../../core/result.ts'
import { inLogOrder } from '../../formats/entry/log-order.ts'
import { runEntries } from '../../formats/entry/run-entries.ts'
import { recordText } from '../../operations/record-hash.ts'
import { photoHashes, photosNamed } from '../../operations/record-photos.ts'
import { writeRecord } from '../../operations/write-record.ts'
import { writeRunCrewSheet } from '../../operations/write-run-crew-sheet.ts'
import { writeRunSummary } from '../../operations/write-run-summary.ts'
import { writeSheetDocument } from '../../operations/write-sheet-document.ts'
import { english } from '../../words/english.ts'
import { spanish } from '../../words/spanish.ts'
import { now } from './device.ts'
import { judgeKept } from './kept-run.ts'
import type { DeviceEntry } from './merge-entries.ts'
import { d } from './messages.ts'
import type { Answer, DocumentWish, KeptRun, SheetDocumentWish } from './run-source.ts'

/**
 * A document of a run as PDF, made on this device.
 * @param entries  all that is kept of the run
 */
export async function documentHere(
  kept: KeptRun,
  entries: readonly DeviceEntry[],
  { kind, language, page, author }: DocumentWish,
): Answer<Blob> {
  const judged = judgeKept(kept)
  if (!judged.ok) return err({ kind: 'fault', message: d.trouble.cannotLayOut(kept.run.name), problems: judged.error })
  const side = runEntries(inLogOrder(entries))
  const printing = {
    page,
    author,
    lie: 'portrait',
    printedAt: now(),
    print: printIn(language)(kept.run.units),
  } as const
  return made(async () => {
    if (kind !== 'crew-sheet') {
      const write = kind === 'record' ? writeRecord : writeRunSummary
      return (await write(judged.value, { ...printing, sha256, entries: side, photos: null })).pdf
    }
    const { log, freeFindings } = judged.value
    const photos = photoHashes(photosNamed(log, freeFindings, side.photos), new Map())
    const hash = sha256(recordText(judged.value, photos, side.photoStrokes))
    return writeRunCrewSheet(judged.value, { entries: side, ticket: null, onRoad: null }, { ...printing, hash })
  })
}

/** A document of hardware sheets, to be printed. */
export const sheetDocumentHere = ({ language, units, page, author, ...document }: SheetDocumentWish): Answer<Blob> =>
  made(() => writeSheetDocument(document, { ...{ page, author, printedAt: now() }, print: printIn(language)(units) }))

async function made(make: () => Promise<Uint8Array>): Answer<Blob> {
  try {
    return ok(new Blob([(await make()) as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }))
  } catch (cause) {
    // What a browser says of a file that it cannot fetch.
    if (cause instanceof TypeError) return err({ kind: 'unreachable', message: d.trouble.part, problems: [] })
    return err({ kind: 'fault', message: d.trouble.notSet(String(cause)), problems: [] })
  }
}

const printIn = (language: DocumentWish['language']) => (language === 'es' ? spanish : english)

const sha256 = (content: string | Uint8Array): string =>
  bytesToHex(digest(typeof content === 'string' ? utf8ToBytes(content) : content))
