import type { EntryKind, FirstSignOffBody, SecondSignOffBody, SignOffBody, ThirdSignOffBody } from './entry-kinds.ts'
import { nameLine } from './signature.ts'

/** The version in which a new entry of each kind is written. */
export const schemaVersions: Readonly<Record<EntryKind, number>> = {
  run: 2,
  reading: 3,
  photo: 1,
  'photo-strokes': 1,
  'sign-off': 4,
  'day-log': 2,
  'locate-ticket': 2,
  archive: 1,
  'free-finding': 1,
  'free-finding-end': 1,
  assignment: 1,
}

/** How the hash of a record is computed: 1 before runs held their layout, 2 as docs/record-hash.md says. */
export type HashRule = 1 | SignOffBody['hashRule']

/** A signature, whichever version its entry was written in. */
export interface SignOff extends Omit<SignOffBody, 'hashRule' | 'version' | 'readings' | 'photos'> {
  readonly hashRule: HashRule
  /** Id of the version of the run that was signed; null where runs had none, or the signature did not say it. */
  readonly version: string | null
  /** Ids of the readings that were signed; null when the first version named only the last. */
  readonly readings: readonly string[] | null
  /** The photos that were signed; null when the signature did not name them. */
  readonly photos: readonly string[] | null
}

/** The signature of an entry that was checked when it came in. In the first version a typed one was its plain line. */
export function signOffOf(schemaVersion: number, body: unknown): SignOff {
  if (schemaVersion > 3) return body as SignOffBody
  const unsaid = { hashRule: 1, version: null, photos: null } as const
  if (schemaVersion > 2) return { ...(body as ThirdSignOffBody), ...unsaid }
  const { acceptance: kind, ...older } = body as FirstSignOffBody | SecondSignOffBody
  const acceptance = { kind }
  if ('signature' in older) return { ...older, ...unsaid, acceptance }
  const { strokes, upTo: _, ...rest } = older
  const isTyped = JSON.stringify(strokes) === JSON.stringify(nameLine)
  return {
    ...rest,
    ...unsaid,
    acceptance,
    signature: isTyped ? { kind: 'typed' } : { kind: 'drawn', strokes },
    readings: null,
  }
}
