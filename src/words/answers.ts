import type { Kinds } from './kinds.ts'
import type { FileProblem, PictureFault } from './problems/file.ts'
import type { ProblemSaying } from './problems/problem-saying.ts'

/** Why the server does not do what it is asked. */
export type Answer =
  | Kinds<'no packet made' | 'packet no longer kept' | 'run not laid out' | 'request not as it has to be' | 'own fault'>
  | Kinds<'stored run unreadable' | 'stored readings unreadable' | 'stored entries unreadable' | 'no JSON document'>
  | { readonly kind: 'nothing at'; readonly request: string }
  | { readonly kind: 'no run'; readonly run: string }
  | { readonly kind: 'sheets of strip'; readonly sheets: number }
  | Kinds<'store silent' | 'store silent for now', { readonly reason: string }>
  | Kinds<'device not let in' | 'unencrypted' | 'too many codes' | 'wrong code' | 'only trust here'>
  | { readonly kind: 'host of another'; readonly host: string }
  | { readonly kind: 'page of another'; readonly origin: string }
  | Kinds<'no hash with upload' | 'photo not written'>
  | { readonly kind: 'no photo'; readonly sha256: string }
  | { readonly kind: 'another hash'; readonly found: string }
  | { readonly kind: 'not a photo'; readonly expected: FileProblem; readonly found: PictureFault }

/** Why an entry is not stored. */
export type Rejection =
  | Kinds<
      | 'no entry'
      | 'no version of run'
      | 'no reading of run'
      | 'no run to lay out'
      | 'run of another id'
      | 'id far ahead'
      | 'unstorable'
    >
  | Kinds<'run of entry unreadable' | 'run of entry not laid out' | 'readings of run unreadable' | 'same id stored'>
  | { readonly kind: 'no run of entry'; readonly run: string }
  | { readonly kind: 'no project'; readonly project: string }
  | { readonly kind: 'fields differ'; readonly fields: readonly string[] }
  /** With the first of its problems. */
  | {
      readonly kind: 'rejected for'
      readonly why: Rejection | ProblemSaying
      readonly place: string
      readonly expected: ProblemSaying
    }
