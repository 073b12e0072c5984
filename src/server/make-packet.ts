import { readFile } from 'node:fs/promises'
import { pointOrders } from '../formats/csv/write-points.ts'
import type { RunEntries } from '../formats/entry/run-entries.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { writeZip } from '../formats/zip/write-zip.ts'
import { dayInZone } from '../operations/day-in-zone.ts'
import { documentFile } from '../operations/document-file.ts'
import type { JudgedRun } from '../operations/judge-readings.ts'
import { writePacket } from '../operations/write-packet.ts'
import type { PacketStep, PacketWish } from '../protocol/packets.ts'
import { sha256 } from '../store/sha256.ts'
import { english } from '../words/english.ts'
import { spanish } from '../words/spanish.ts'

/** All that a packet is made of, as one process hands it to another. */
export interface PacketOrder {
  readonly judged: JudgedRun
  readonly entries: RunEntries
  readonly wish: PacketWish
  /** Null to leave photos out. */
  readonly photos: readonly { readonly photo: string; readonly file: string; readonly path: string }[] | null
  readonly printedAt: string
  /** Of the program. */
  readonly version: string
}

/** What is told of a packet: each file before it is made, at last the ZIP or why there is none. */
export type PacketNews =
  | { readonly making: PacketStep }
  | { readonly zip: Uint8Array }
  | { readonly problems: readonly InputProblem[] }

/** Answers each order that is sent with news of its packet. */
export function makePackets(): void {
  const tell = (news: PacketNews): Promise<void> =>
    new Promise((resolve) => process.send!(news, undefined, undefined, () => resolve()))
  process.on('message', async (order: PacketOrder) => tell(await makePacket(order, tell)))
}

async function makePacket(order: PacketOrder, tell: (news: PacketNews) => Promise<void>): Promise<PacketNews> {
  const { judged, entries, photos, printedAt, version } = order
  const { photos: _, rounding, language, ...printing } = order.wish
  const packet = await writePacket(judged, {
    ...printing,
    ...{ printedAt, version, sha256, entries },
    sources: { run: 'run.json', readings: 'readings.json' },
    pay: { boundaries: { first: { kind: 'splice' }, second: { kind: 'splice' } }, rounding },
    lie: 'portrait',
    stakes: { order: pointOrders[0], header: true },
    ticket: null,
    place: null,
    photos:
      photos &&
      (await Promise.all(photos.map(async ({ photo, file, path }) => ({ photo, file, bytes: await readFile(path) })))),
    absentPhotos: 'left out',
    print: (language === 'es' ? spanish : english)(judged.run.units),
    progress: (making) => tell({ making }),
  })
  return packet.ok
    ? { zip: writeZip(folderName(judged, printedAt, printing.zone), packet.value) }
    : { problems: packet.error }
}

const folderName = ({ run }: JudgedRun, at: string, zone: string): string =>
  documentFile(run, 'packet', dayInZone(zone)(at))
