import type { Kinds } from '../kinds.ts'

/** Why bytes are no picture that is read. */
export type PictureFault =
  | Kinds<'empty file' | 'no picture' | 'picture cut short' | 'picture without size' | 'picture too costly'>
  | { readonly kind: 'picture of pixels'; readonly width: number; readonly height: number }
  /** @property reason  what the typesetter says; null where the browser says nothing */
  | { readonly kind: 'unreadable picture'; readonly reason: string | null }

/** What a file or folder has to be or hold as a whole. */
export type FileProblem =
  | PictureFault
  | { readonly kind: 'whole picture'; readonly megapixels: number }
  | Kinds<
      'picture of that name' | 'one picture of that name' | 'no such file' | 'a folder' | 'a file' | 'no permission'
    >
  | Kinds<
      'readable file' | 'writable file' | 'readable folder' | 'readable database' | 'writable folder' | 'free folder'
    >
  | { readonly kind: 'folder with files'; readonly files: number }
  | { readonly kind: 'bytes with hash'; readonly sha256: string }
  // Entries of a device and of a store.
  | Kinds<
      | 'counted on id'
      | 'same content under id'
      | 'run id in time'
      | 'own id of entry'
      | 'as in the reading'
      | 'time of the reading'
    >
  | Kinds<'run named' | 'run of a device', { readonly name: string }>
  | { readonly kind: 'several runs'; readonly count: number }
  | { readonly kind: 'other runs'; readonly names: readonly string[] }
  // Parts of a ZIP file, and of a handover.
  | Kinds<'whole zip' | 'readable zip part' | 'undamaged zip part' | 'zip part once' | 'zip part apart'>
  | { readonly kind: 'handover of version'; readonly version: number }
  | { readonly kind: 'zip part at most'; readonly bytes: number }
  | Kinds<'part of handover' | 'part that the manifest names' | 'run of manifest'>
  // A table as a spreadsheet writes it.
  | Kinds<'text in UTF-8' | 'end of cell'>
  | { readonly kind: 'columns of table'; readonly columns: readonly string[] }
  | { readonly kind: 'same as in row'; readonly row: number }
  | Kinds<'finite number' | 'JSON value'>
  | { readonly kind: 'levels at most'; readonly most: number }
