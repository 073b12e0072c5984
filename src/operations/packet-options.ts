import type { PaperName } from '../core/units/paper-names.ts'
import type { PageLie } from '../drawing/paper.ts'
import type { PointColumns } from '../formats/csv/write-points.ts'
import type { RunEntries } from '../formats/entry/run-entries.ts'
import type { ReferenceSystem } from '../formats/map/reference-system.ts'
import type { PacketPurpose } from '../protocol/packet-purposes.ts'
import type { PacketStep } from '../protocol/packets.ts'
import type { Print } from '../words/print.ts'
import type { AbsentPhotos } from './packet-photos.ts'
import type { RunPlace } from './place-run.ts'
import type { NamedPhoto } from './record-photos.ts'
import type { PayRule } from './write-exports.ts'

export interface PacketOptions {
  /** Null for all that can be true now. */
  readonly purpose: PacketPurpose | null
  readonly page: PaperName
  /** How pages of text lie; drawings always lie. */
  readonly lie: PageLie
  /** ISO 8601 date and time; without a zone it counts as UTC. */
  readonly printedAt: string
  /** Who prints it; empty when not said. */
  readonly author: string
  /** Of the program that writes it. */
  readonly version: string
  /** Hexadecimal SHA-256 of bytes, or of a text in UTF-8. */
  readonly sha256: (content: string | Uint8Array) => string
  /** What run and readings were read from, as problems name it. */
  readonly sources: { readonly run: string; readonly readings: string }
  readonly pay: PayRule
  /** Columns of the stakes. */
  readonly stakes: Pick<PointColumns, 'order' | 'header'>
  /** The utility ticket as somebody wrote it; null to take those of the entries. */
  readonly ticket: string | null
  /** Null where the run has no place on a road with coordinates. */
  readonly place: PacketPlace | null
  /** The photos that the readings name and that were entered; null to leave them out. */
  readonly photos: readonly NamedPhoto[] | null
  /** What was recorded at the run besides readings. */
  readonly entries: RunEntries
  /** IANA name of the zone whose days the daily reports take, as `America/Denver`. */
  readonly zone: string
  readonly absentPhotos: AbsentPhotos
  /** Of all documents but the crew sheet, which is made in every language. */
  readonly print: Print
  /** Told of each file before it is made; the making goes on when it is done. */
  readonly progress: (step: PacketStep) => void | Promise<void>
}

export interface PacketPlace {
  readonly run: RunPlace
  /** Null where it is not known, so that there are no maps. */
  readonly system: ReferenceSystem | null
  /** Where the database library's own file lies; null where it finds it by itself. */
  readonly sqliteAt: string | null
}
