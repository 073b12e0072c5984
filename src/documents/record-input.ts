import type { Instrument } from '../core/measurement/instruments.ts'
import type { Reading } from '../core/measurement/reading.ts'
import type { AskedEarlier } from '../core/record/readings-in-force.ts'
import type { ThingNames } from '../core/record/thing-read.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import type { GroundUnit } from '../core/units/ground-unit.ts'
import type { Judgement } from '../core/verdicts/verdict.ts'
import type { Unusual } from '../formats/range/unusual.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'

/** A judged run: all that the documents of a run are written from. */
export interface RecordInput {
  readonly run: RunFile
  readonly model: RunModel
  /** In walking order, what later work covers first. */
  readonly requirements: readonly Requirement[]
  /** Everything that was read, in the order in which it was entered. */
  readonly log: readonly Reading[]
  /** What of it answers the version in force, the corrected ones too. */
  readonly readings: readonly Reading[]
  /** Names what readings and photos are of. */
  readonly nameOf: ThingNames
  /** What an earlier version asked and this one does not: shown, never judged. */
  readonly askedEarlier: readonly AskedEarlier[]
  /** What a version asked under an id; undefined where that is not known. */
  readonly askedBy: (of: string, version: string) => Requirement | undefined
  readonly judgement: Judgement
  /** What of run file and readings is seldom right. */
  readonly unusual: readonly Unusual[]
  /** Every instrument that a reading may name. */
  readonly instruments: readonly Instrument[]
  /** Where a place of the rail lies by its road; null where the run was not placed on one. */
  readonly onRoad: OnRoad | null
  /** Says the words of the model in the document's language. */
  readonly print: Print
}

/** @param alongInches  along the rail from the centre of post 1 @returns null of a place that nothing of the run names */
export type OnRoad = (alongInches: number) => WrittenPlace | null

/** A place by its road as every document writes it, in the unit of the road. */
export interface WrittenPlace {
  /** `108+18.65`; two at a station equation. */
  readonly station: string
  /** From the alignment, positive to the right looking up-station: `+12.00`. */
  readonly offset: string
  readonly unit: GroundUnit
}

/** What a document says of itself. The same input and printing give the same bytes. */
export interface Printing {
  /** ISO 8601 date and time; without a zone it counts as UTC. */
  readonly printedAt: string
  /** Who printed it; empty when not said. */
  readonly author: string
  /** SHA-256 of what the document is printed from, as docs/record-hash.md says. */
  readonly hash: string
}
