import type { Result } from '../../core/result.ts'
import type { InputProblem } from '../input-problem.ts'
import type { Entry, PhotoBody } from './entry-kinds.ts'

/** The place of something in a file, or of what lies within it. */
export type At = (inner?: string) => string

/** An entry that a file brings, sound by itself; whether it fits its run is not looked at. */
export interface CarriedEntry {
  readonly entry: Entry
  /** Name of the file it is in, as a problem shows it. */
  readonly file: string
  readonly at: At
}

/** A photo that a file brings; its bytes are read when they are asked for, and may turn out to be others. */
export interface CarriedPhoto {
  readonly sha256: string
  readonly type: PhotoBody['type']
  readonly file: string
  /** Of its bytes. */
  readonly place: string
  content(): Promise<Result<Uint8Array, readonly InputProblem[]>>
}

/** What a file brings and nobody can take in as it is: the others come in without it. */
export interface LeftOut {
  readonly table: 'entries' | 'photos'
  /** As a file of a device has it. */
  readonly raw: unknown
  readonly problems: readonly InputProblem[]
}

/** What a file from another device brings, whichever format it is in. */
export interface Carried {
  /** The device that wrote it, and when by its clock. */
  readonly device: string
  readonly writtenAt: string
  readonly entries: readonly CarriedEntry[]
  readonly photos: readonly CarriedPhoto[]
  readonly left: readonly LeftOut[]
}
