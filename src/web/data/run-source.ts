import type { Reading } from '../../core/measurement/reading.ts'
import type { Result } from '../../core/result.ts'
import type { PaperName } from '../../core/units/paper-names.ts'
import type { FreeFinding } from '../../core/verdicts/free-findings.ts'
import type { Acceptance } from '../../core/verdicts/verdict.ts'
import type { LeftOut } from '../../formats/entry/carried.ts'
import type {
  ArchiveBody,
  AssignmentBody,
  DayLogBody,
  EntryKind,
  FreeFindingBody,
  FreeFindingEndBody,
  LocateTicketBody,
  PhotoBody,
  PhotoStrokesBody,
  SignOffBody,
} from '../../formats/entry/entry-kinds.ts'
import type { SignOff } from '../../formats/entry/sign-off.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import type { RunFile } from '../../formats/run/run-file.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { LaidOut } from '../../operations/lay-out-run.ts'
import type { VersionAtHand } from '../../operations/run-history.ts'
import type { SheetDocument } from '../../operations/sheet-document.ts'
import type { PacketStep, PacketWish } from '../../protocol/packets.ts'
import type { Saying } from '../../words/saying.ts'
import type { Language } from '../language.ts'
import type { Begun, BegunSeen } from './begun.ts'
import type { RunList } from './choose-runs.ts'
import type { HeldRow } from './device-tables.ts'
import type { DrillRow } from './drill-row.ts'
import type { ListWish } from './list-wish.ts'
import type { OwnSheet } from './shelf-of.ts'

/** Why something was not answered, in words to show. */
export interface Trouble {
  readonly kind: /** No server, or no connection to it. */
    | 'unreachable'
    /** What was handed in is not as it has to be; `problems` say what. */
    | 'refused'
    /** The server does not know this device, or shut it out. */
    | 'not let in'
    /** This device has no room left for it. */
    | 'no room'
    /** The store of this device, or the server, did not do as it should. Never to be shown as "nothing there". */
    | 'fault'
  /** A text is in the words of the page already. */
  readonly message: Saying | string
  readonly problems: readonly InputProblem[]
}

export type Answer<T> = Promise<Result<T, Trouble>>

/** A run with everything that was read at it, in the order that counts. */
export interface KeptRun {
  readonly id: string
  /** Id of the version in force, which readings taken now name. */
  readonly version: string
  /** In the version in force. */
  readonly run: RunFile
  /** What was recorded before runs held their layout, while no version but that of the migration followed; else null. */
  readonly firstAsked: RunFile | null
  /** Every version at hand that has a layout, by id. */
  readonly versions: ReadonlyMap<string, VersionAtHand>
  readonly readings: readonly Reading[]
  /** What was seen that no requirement asks for. */
  readonly freeFindings: readonly FreeFinding[]
  /** Corrections of one and the same reading: both stand until somebody corrects them. By the reading corrected. */
  readonly rivals: ReadonlyMap<string, readonly string[]>
}

/** A run as it is opened. */
export interface OpenedRun {
  readonly kept: KeptRun
  /** Everything that follows from the run and its readings; or why it cannot be laid out. */
  readonly drawn: Result<DrawnRun, readonly InputProblem[]>
}

/** A judged run and the picture of its strip, in English. */
export interface DrawnRun {
  readonly judged: JudgedRun
  readonly stripSvg: string
}

export type ReadingAnswer =
  /** On this device's disk. */
  | { readonly id: string; readonly outcome: 'stored' | 'already' }
  | {
      readonly id: string
      readonly outcome: 'rejected'
      readonly reason: Saying
      readonly problems: readonly InputProblem[]
    }

/** What a device records at a run besides readings, as it is read: older versions as the newest. */
export interface SideBodies {
  readonly photo: PhotoBody
  readonly 'photo-strokes': PhotoStrokesBody
  readonly 'sign-off': SignOff
  readonly 'day-log': DayLogBody
  readonly 'locate-ticket': LocateTicketBody
  readonly archive: ArchiveBody
  readonly 'free-finding': FreeFindingBody
  readonly 'free-finding-end': FreeFindingEndBody
  readonly assignment: AssignmentBody
}

export type SideKind = keyof SideBodies

/** The same as it is written. */
export interface NewSideBodies extends Omit<SideBodies, 'sign-off'> {
  readonly 'sign-off': SignOffBody
}

/** A fact as this device holds it. */
export interface KeptEntry<K extends SideKind = SideKind> {
  readonly id: string
  readonly run: string
  readonly kind: K
  readonly author: string
  /** Name of the device that made it. */
  readonly device: string
  /** ISO 8601 by the clock of the device that made it: for showing, not for ordering. */
  readonly capturedAt: string
  readonly supersedes: string | null
  /** Other entries that supersede the same one; empty unless two people corrected it at once. */
  readonly rivals: readonly string[]
  /** Whether another entry on this device supersedes it. */
  readonly isSuperseded: boolean
  /** `here`: on this device only. `sent`: the server has it too. */
  readonly state: 'here' | 'sent'
  readonly body: SideBodies[K]
}

export interface PhotoSum {
  readonly photos: number
  readonly bytes: number
}

/** How this device stands towards its own disk and towards the server. */
export interface DeviceStatus {
  /** Whether the browser promised not to clear this away; null as long as it was not asked (before the first entry). */
  readonly persisted: boolean | null
  /** Bytes that the browser lets this page use, and those in use; null when it does not say. */
  readonly quota: number | null
  readonly used: number | null
  /** Entries that are on this device only. */
  readonly unsent: number
  /** Photos whose bytes are on this device only. */
  readonly unsentPhotos: number
  /** ISO 8601: since when there are entries on this device only; null when there are none. */
  readonly unsentSince: string | null
  /** Photos that the server has, and whose bytes this device can let go of. */
  readonly freeable: PhotoSum
  /** Entries that the server refused; they stay here. */
  readonly refused: readonly { readonly id: string; readonly kind: string; readonly reason: Saying | string }[]
  /** Files that could not be taken in, or not whole, and are kept until they can be. */
  readonly held: readonly HeldRow[]
  /** ISO 8601 of the last time at which everything was sent and fetched; null for never. */
  readonly lastSync: string | null
  readonly isSyncing: boolean
  /** Why the last attempt to sync did not end well; null when it did. */
  readonly trouble: Trouble | null
}

/** What became different on this device, by this page, by another tab or by what the server sent. */
export interface Change {
  /** Runs with new entries; empty when only the status changed. */
  readonly runs: readonly string[]
  /** Whether this page made them itself, and so has them already. */
  readonly isOwn: boolean
  /** Set when the sheets of this device are others. */
  readonly isOfShelf?: true
}

/** A run that holds a sheet by content. */
export interface RunBySheet {
  readonly id: string
  readonly name: string
  /** The edition that it holds. */
  readonly version: string
  /** How it stands; null where it cannot be judged. */
  readonly acceptance: Acceptance | null
  readonly isArchived: boolean
  /** Entries at it that are on this device only. */
  readonly unsent: number
}

/** How the record is printed. */
export interface RecordWish {
  readonly language: Language
  readonly page: PaperName
  readonly author: string
}

/** A document that a device makes by itself, and how it is printed. */
export interface DocumentWish extends RecordWish {
  readonly kind: 'record' | 'summary' | 'crew-sheet'
}

/** A document of hardware sheets, and how it is printed. */
export interface SheetDocumentWish extends SheetDocument {
  readonly language: Language
  /** Null for lengths as they are published. */
  readonly units: RunFile['units'] | null
  readonly page: PaperName
  readonly author: string
}

/** Runs as one file, to hand over to another device. */
export interface HandoverFile {
  readonly content: Blob
  /** Photos that belong to it and whose bytes neither this device has nor the server gave. */
  readonly lacks: readonly LackedPhoto[]
}

/** A photo that was told of and whose bytes are missing. */
export interface LackedPhoto {
  readonly sha256: string
  readonly author: string
  /** ISO 8601 by the clock of the device that made it. */
  readonly capturedAt: string
}

/** What a file from another device would change here. */
export interface Weighed {
  /** Runs that it brings something of; without a name where the run itself is neither here nor in the file. */
  readonly runs: readonly { readonly id: string; readonly name: string | null; readonly isNew: boolean }[]
  /** New entries, counted by kind. */
  readonly fresh: Readonly<Partial<Record<EntryKind, number>>>
  /** Photos whose bytes are new here. */
  readonly photos: number
  /** Photos that it tells of and whose bytes are neither in it nor here. */
  readonly lacks: readonly LackedPhoto[]
  readonly already: number
  /** What cannot be taken in; photos are looked at only when they are taken. */
  readonly left: readonly LeftOut[]
}

/** What was taken in of a file from another device. */
export interface Imported {
  readonly entries: number
  readonly photos: number
  /** Entries and photos that were here before. */
  readonly already: number
  /** What could not be taken in, each with why; it is kept on this device beside the rest. */
  readonly left: readonly LeftOut[]
}

/**
 * Where runs and all that is recorded at them are kept: on this device. What resolves with a value is on its disk.
 * The server is a peer that is told later, and the page computes all else itself.
 */
export interface RunSource {
  /** The first `most` of the runs that are wanted. */
  runs(wish: ListWish, most: number): Answer<RunList>
  run(id: string): Answer<OpenedRun>
  /**
   * Takes in a run as a run file has it, not looked at yet; the id is the page's, so that trying again cannot make a
   * second run.
   * @param file  name shown in what is wrong with it
   */
  addRun(id: string, file: string, run: object, author: string): Answer<'stored' | 'already'>
  /** Puts the demo run with its readings onto this device; its id. Where there is a server, it has one already. */
  addDemo(): Answer<string>
  /** Makes a new run of another one as it is now, without its readings, under a name of its own. */
  copyRun(from: string, id: string, name: string, author: string): Answer<'stored' | 'already'>
  /** The lawful layouts of a run as it is being written, best first, or what is wrong with it. Nothing is kept. */
  layOut(draft: unknown): Answer<Result<LaidOut, readonly InputProblem[]>>
  /**
   * Keeps the next version of a run. Its id is the page's, so that trying again cannot make a second one.
   * @param from  the version that its person saw; refused where another has come into force since
   */
  saveVersion(run: string, from: string, id: string, body: unknown, author: string): Answer<'stored' | 'already'>
  /** Appends readings, whose ids are the page's; one answer for each. */
  append(run: string, readings: readonly Reading[]): Answer<readonly ReadingAnswer[]>
  /** What was entered at a run on this device and not saved. Saving it ends it; nothing else does but `dropBegun`. */
  begun(run: string): Answer<readonly (Begun | BegunSeen)[]>
  keepBegun(begun: Begun | BegunSeen): Answer<void>
  dropBegun(run: string, of: string): Answer<void>
  /** The inspection record as PDF, from the server: without it the record has to wait. */
  record(id: string, wish: RecordWish): Answer<Blob>
  /** A document of the run as PDF, made on this device, without a network once what sets it was fetched. */
  document(id: string, wish: DocumentWish): Answer<Blob>
  /** All documents and drawings of the run as a ZIP file, from the server. */
  packet(id: string, wish: PacketWish, making: (step: PacketStep) => void): Answer<Blob>

  /** Entries of one kind at a run, in the order that counts. */
  entries<K extends SideKind>(run: string, kind: K): Answer<readonly KeptEntry<K>[]>
  /**
   * Appends one entry; a correction names the entry that it supersedes. A photo comes by `savePhoto`: here only what is
   * said of one that is kept already.
   */
  appendEntry<K extends SideKind>(
    run: string,
    kind: K,
    body: NewSideBodies[K],
    author: string,
    supersedes: string | null,
  ): Answer<KeptEntry<K>>
  /**
   * Keeps a photo's bytes and the entry that describes it, both or neither. `no room` refuses the photo alone: every
   * reading stays.
   * @throws RangeError when `body.sha256` or `body.bytes` is not that of `bytes`
   */
  savePhoto(run: string, bytes: ArrayBuffer, body: PhotoBody, author: string): Answer<KeptEntry<'photo'>>
  /** The photo from this device, else from the server; null when neither has it (yet). */
  photo(sha256: string): Answer<Blob | null>

  /** Lets go of the bytes of the photos that `freeable` counts; the server is asked of each once more. */
  freePhotos(): Answer<PhotoSum>

  status(): Answer<DeviceStatus>
  /** Calls back after every change, also one made in another tab, until the function returned is called. */
  onChange(callback: (change: Change) => void): () => void
  /** Sends and fetches now, and waits for it; what went wrong is in the status. */
  syncNow(): Answer<DeviceStatus>

  /**
   * A run with everything that is recorded at it as one file; all runs of this device for null. Photos that only the
   * server has are fetched, where it can be reached.
   */
  handOver(run: string | null): Answer<HandoverFile>
  /** What such a file would change. One of a newer program is kept on this device, and refused with what it needs. */
  weighFile(file: File): Answer<Weighed>
  /**
   * Takes in what is whole in such a file; what is here already stays as it is, and what is not whole is kept beside.
   */
  takeInFile(file: File): Answer<Imported>
  /** A file that is held here, as it was. */
  heldFile(id: string): Answer<File>
  /** Takes it in anew; it is held no longer once all of it is taken in. */
  takeInHeld(id: string): Answer<Imported>
  dropHeld(id: string): Answer<void>

  /** Every edition of a hardware sheet that was put on the shelf of this device, in the order of adding. */
  ownSheets(): Answer<readonly OwnSheet[]>
  /**
   * Puts the hardware sheet that `sheet` is the value of on the shelf of this device, or says what is wrong with it. What
   * is there already under its id and version stays as it is, and refuses another content.
   * @param file  name shown in what is wrong with it
   */
  addSheet(file: string, sheet: unknown): Answer<'stored' | 'already'>
  /** The runs on this device whose version in force holds an edition of the sheet. What changes on the shelf moves none of them. */
  runsBySheet(id: string): Answer<readonly RunBySheet[]>
  /** A document of hardware sheets as PDF, from the server; where none answers, made here. */
  sheetDocument(wish: SheetDocumentWish): Answer<Blob>
  /** Takes an edition off the shelf; a run that took it in keeps it. */
  dropSheet(id: string, version: string): Answer<void>

  /** Drills that were begun here, the first begun first; none in the store of real runs. */
  drills(): Answer<readonly DrillRow[]>
  /** Keeps a drill, in the place of the one at the same run. */
  keepDrill(drill: DrillRow): Answer<void>
  /** Lets go of all that the store of practice holds; real runs are in another and stay. */
  dropPractice(): Answer<void>

  /** Says its troubles in this language from then on. */
  speak(language: Language): void
}
