import type { EntryKind, FirstSignOffBody, SecondSignOffBody, SignOffBody } from './entry-kinds.ts'
import { nameLine } from './signature.ts'

/** The version in which a new entry of each kind is written. */
export const schemaVersions: Readonly<Record<EntryKind, number>> = {
  run: 2,
  reading: 3,
  photo: 1,
  'sign-off': 3,
  'day-log': 1,
  'locate-ticket': 1,
}

/** A signature, whichever version its entry was written in. */
export interface SignOff extends Omit<SignOffBody, 'readings'> {
  /** Ids of the readings that were signed; null when the first version named only the last. */
  readonly readings: readonly string[] | null
}

/** The signature of an entry that was checked when it came in. In the first version a typed one was its plain line. */
export function signOffOf(schemaVersion: number, body: unknown): SignOff {
  if (schemaVersion > 2) return body as SignOffBody
  const { acceptance: kind, ...older } = body as FirstSignOffBody | SecondSignOffBody
  const acceptance = { kind }
  if ('signature' in older) return { ...older, acceptance }
  const { strokes, upTo: _, ...rest } = older
  const isTyped = JSON.stringify(strokes) === JSON.stringify(nameLine)
  return { ...rest, acceptance, signature: isTyped ? { kind: 'typed' } : { kind: 'drawn', strokes }, readings: null }
}
