import type { AskedEarlier } from './readings-in-force.ts'
import type { ThingRead, TopicSaying } from './thing-read.ts'

/** What is said of what was recorded at a run, perhaps at another version than the one in force, and of its sheets. */
export type RecordSaying =
  | { readonly kind: 'asked earlier'; readonly because: AskedEarlier['because'] }
  | OtherSheetOnShelf
  | ThingRead
  | TopicSaying

/** That a run is judged by another edition of a sheet than the one on the shelf. */
interface OtherSheetOnShelf {
  readonly kind: 'other sheet on shelf'
  readonly sheet: string
  /** Version of the one that the run holds, and of the one on the shelf. */
  readonly pinned: string
  readonly onShelf: string
  readonly isNewer: boolean
}

export const askedEarlierReason = ({ because }: Pick<AskedEarlier, 'because'>): RecordSaying => ({
  kind: 'asked earlier',
  because,
})
