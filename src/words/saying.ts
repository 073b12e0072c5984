import type { Theirs } from '../core/theirs.ts'

/** Everything that is said to a person, as data. The union of each part's own; a kind belongs to one part. */
export type Saying = Theirs
