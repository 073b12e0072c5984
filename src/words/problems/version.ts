import type { Kinds } from '../kinds.ts'

/** What a pinned run and its versions have to say so that they hold together. */
export type VersionProblem =
  /** @property format  of a file that only asks */
  | { readonly kind: 'nothing where asked'; readonly format: string }
  | { readonly kind: 'field of format'; readonly field: string; readonly format: string }
  | Kinds<"id of a system's sheet" | "id of an end's sheet" | 'sheet in use' | 'id of no gone place'>
  | Kinds<'place of no post' | 'splice at post' | 'standing post' | 'origin of layout'>
  | { readonly kind: 'nothing before'; readonly unit: string }
  | Kinds<'one between posts' | 'one between panels', { readonly count: number }>
  | Kinds<'beyond post in layout' | 'end of panel before' | 'end of panel at splice', { readonly inches: number }>
  | { readonly kind: 'posts of end'; readonly posts: number; readonly end: 'first' | 'second' }
  | Kinds<'post of sheet' | 'panel of sheet', { readonly sheet: string }>
  /** @property forms  as `post-9` and one that a version added */
  | { readonly kind: 'id of form'; readonly forms: readonly string[] }
  /** As it would stand in the file. */
  | { readonly kind: 'this value'; readonly value: string }
  // A version that follows another.
  | Kinds<'pinned run' | 'asked run'>
  | Kinds<
      | 'nothing unpinned'
      | 'version of run'
      | 'id of the entry'
      | 'no earlier version'
      | 'versions'
      | 'id of this place'
      | 'gone places'
    >
  /** A post or panel that somebody logged. */
  | { readonly kind: 'piece of run'; readonly piece: 'post' | 'panel' }
  | { readonly kind: 'no version yet'; readonly format: string }
  | { readonly kind: 'earlier versions'; readonly before: string }
  | { readonly kind: 'version in force'; readonly version: string }
  | { readonly kind: 'first version'; readonly run: string }
  | { readonly kind: 'version count'; readonly count: number }
  | { readonly kind: 'unlisted place'; readonly place: string }
