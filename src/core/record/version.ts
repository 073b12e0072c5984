import type { HardwareSheet } from '../hardware/hardware-sheet.ts'
import type { Layout } from '../layout/layout.ts'

/** A run as it was decided at one time. What is read is judged by this layout, whatever the program makes of the run since. */
export interface RunVersion {
  readonly id: string
  readonly layout: Layout
  /** The versions that it came from, the first one first. */
  readonly earlier: readonly EarlierVersion[]
}

/** A version with the sheets that it holds. */
export interface HeldVersion extends RunVersion {
  readonly sheets: readonly HardwareSheet[]
}

/** A version, and what became of it in the next. */
export interface EarlierVersion {
  readonly id: string
  /** Ids of places that the next version no longer has. They are never used again. */
  readonly gone: readonly string[]
  /** Ids of what is read at places that the next version has too, but asks otherwise: readings do not answer that. */
  readonly askedOtherwise: readonly string[]
  /** Why the next version was made, as somebody wrote it; left out where nobody did. */
  readonly because?: string | undefined
}

/** The ids of every place of a layout. */
export const placeIdsIn = ({ posts, spaces, panels, splices, endIds }: Layout): readonly string[] => [
  ...[...posts, ...spaces, ...panels, ...splices].map(({ id }) => id),
  endIds.first,
  endIds.second,
  'run',
]

/** The id of the version that a reading means which names none: the first. */
export const firstVersionOf = ({ id, earlier }: RunVersion): string => earlier[0]?.id ?? id

/** The ids of a version and of those that it came from, the first one first. */
export const chainOf = ({ id, earlier }: Pick<RunVersion, 'id' | 'earlier'>): readonly string[] => [
  ...earlier.map((one) => one.id),
  id,
]

/** What a reading says of the version that its person sees: its id, and nothing where it is the first or there is none. */
export const seenVersion = (version: RunVersion | undefined): { readonly version?: string } =>
  version === undefined || version.earlier.length === 0 ? {} : { version: version.id }
