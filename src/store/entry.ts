import { z } from 'zod'
import { err, ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { form } from '../formats/range/form.ts'
import { checkShape } from '../formats/read-json.ts'
import { storableJson } from './storable-json.ts'
import { storableText } from './storable-text.ts'

/** A fact as its writer hands it in. It is never changed; a correction is a new entry that supersedes it. */
export interface NewEntry {
  /** Made by the writer, unique everywhere and sorting by time (ULID or UUIDv7): handing it in twice stores it once. */
  readonly id: string
  readonly project: string
  /** Null for a fact about the project as a whole. */
  readonly run: string | null
  /** `reading`, `decision`, `sign-off` …: which kinds there are is the operations' business, not the store's. */
  readonly kind: string
  /** Version of the shape of `body`, from 1. */
  readonly schemaVersion: number
  readonly author: string
  readonly device: string
  /** When the device says it happened: ISO 8601 with a zone. A claim, kept to the millisecond. */
  readonly capturedAt: string
  /** Id of the entry this one corrects. That entry may arrive later than this one, so it need not be stored yet. */
  readonly supersedes: string | null
  /** Any JSON value. */
  readonly body: unknown
}

/** A fact as it is kept. */
export interface StoredEntry extends NewEntry {
  /** Place in the order of storing, increasing without being consecutive: the cursor for reading on. */
  readonly seq: number
  /** When the store took it in, ISO 8601 in UTC, by the store's clock. */
  readonly storedAt: string
  /** SHA-256 of the body's canonical JSON, hexadecimal. */
  readonly bodyHash: string
}

/** What became of one entry of a batch. Only `stored` and `already` mean that the writer may let go of it. */
export type EntryAnswer =
  | { readonly id: string; readonly outcome: 'stored'; readonly seq: number }
  /** The same entry had been stored before; `seq` is where. */
  | { readonly id: string; readonly outcome: 'already'; readonly seq: number }
  | { readonly id: string; readonly outcome: 'rejected'; readonly reason: RejectionReason }

export type RejectionReason =
  /** Another body is kept under this id; `storedHash` is the hash of that one. */
  | { readonly kind: 'same-id-different-body'; readonly storedHash: string }
  /** The body is the same, but `fields` (author, run …) are not. */
  | { readonly kind: 'same-id-different-fields'; readonly fields: readonly string[] }
  | { readonly kind: 'unknown-project'; readonly project: string }
  /** The database cannot hold this entry unchanged. */
  | { readonly kind: 'unstorable'; readonly problems: readonly InputProblem[] }

/** An entry brought into the form in which it is compared and kept. */
export interface CheckedEntry extends Omit<NewEntry, 'body'> {
  readonly bodyText: string
}

/**
 * `entry` with its time in UTC and its body as canonical JSON; or what in it PostgreSQL would refuse or change.
 * @param file  name shown in the problems
 */
export function checkEntry(file: string, entry: NewEntry): Result<CheckedEntry, readonly InputProblem[]> {
  const fields = checkShape(file, entry, fieldsShape)
  const body = storableJson(entry.body)
  if (fields.ok && body.ok) {
    const capturedAt = new Date(entry.capturedAt).toISOString()
    return ok({ ...fields.value, capturedAt, bodyText: body.value })
  }
  return err([
    ...(fields.ok ? [] : fields.error),
    ...(body.ok
      ? []
      : [{ file, place: `body${body.error.place}`, expected: body.error.expected, found: body.error.found }]),
  ])
}

const fieldsShape = z.object({
  id: storableText,
  project: storableText,
  run: storableText.nullable(),
  kind: storableText,
  schemaVersion: z.int().min(1).max(2_147_483_647),
  author: storableText,
  device: storableText,
  capturedAt: z.string().refine(isTimeWithZone, form('moment with zone')),
  supersedes: storableText.nullable(),
})

function isTimeWithZone(value: string): boolean {
  const time = new Date(value)
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d.*(Z|[+-]\d\d:\d\d)$/.test(value) || Number.isNaN(time.getTime())) return false
  return /^(?!0000)\d{4}-/.test(time.toISOString())
}
