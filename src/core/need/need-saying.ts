import type { UnitSystem } from '../site/site.ts'
import type { Note } from './note.ts'
import type { CellSaying, TableRemark } from './tables/table.ts'

/** What a need says: in the units of its site, as those of its tables are never converted. */
export type NeedSaying = NoteSaying | CellSaying | TableRemark

/** A note on a need, with the units of the site. */
export interface NoteSaying {
  readonly kind: 'note on need'
  readonly note: Note
  readonly units: UnitSystem
  /** Where notes of both directions stand together, whose it is; else null. */
  readonly direction: 'approach' | 'departure' | null
}
