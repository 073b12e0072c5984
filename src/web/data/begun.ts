import type { SeenKind, Severity } from '../../core/hardware/hardware-sheet.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Draft } from '../entry/draft.ts'

/** What somebody has entered at a place and not saved, as it is kept on this device and nowhere else. */
export interface Begun {
  readonly run: string
  /** What is read, and the requirement at which it was entered. */
  readonly of: string
  readonly requirement: string
  /** Id of the version of the run that its person saw. */
  readonly version: string
  /** ISO 8601, of the last key. */
  readonly at: string
  readonly draft: Draft
}

/** The same of something that no requirement asks for: one at a time. */
export interface BegunSeen extends Omit<Begun, 'of' | 'requirement' | 'draft'> {
  readonly of: typeof seenBesides
  readonly seen: SeenDraft
}

/** What it is kept under, which is no requirement. */
export const seenBesides = 'seen besides'

/** What was entered of it. */
export interface SeenDraft {
  readonly what: SeenKind | null
  /** Id of its place. */
  readonly of: string
  readonly severity: Severity | null
  readonly note: string
  /** Hashes of its photos. */
  readonly photos: readonly string[]
}

/** Whether saving `reading` saved what was begun: what was typed after it was pressed, or for another purpose, stays. */
export const isSavedBy = ({ at, draft }: Begun, reading: Pick<Reading, 'at' | 'corrects'>): boolean =>
  at <= reading.at && draft.corrects === reading.corrects
