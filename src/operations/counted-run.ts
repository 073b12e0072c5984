import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { panelsOfUnit } from '../core/layout/counted-layout.ts'
import type { CountedPieces, Obstruction, ReducedPart, RunEnd, UnknownEnd } from '../core/layout/layout.ts'
import type { DevicePosition } from '../formats/device-position.ts'
import type { RunFile, RunFileEnd } from '../formats/run/run-file.ts'

/** What somebody who stands at a run says of it; null and left out is not said. */
export interface SeenRun {
  readonly name: string
  readonly units: RunFile['units']
  readonly system: LongitudinalSheet
  /** A sheet; or why there is none. */
  readonly first: EndSheet | UnknownEnd['because']
  readonly second: EndSheet | UnknownEnd['because']
  readonly counted: CountedPieces
  /** Parts of it at half or quarter spacing, and where a post is left out. */
  readonly reduced: readonly ReducedPart[]
  readonly obstructions: readonly Obstruction[]
  /** How many panels belong to an end that no sheet fits: nothing is asked of them, nor of the posts that hold them. */
  readonly unknownPanels: number
  /** Whether opposing traffic can reach the second end. */
  readonly opposingReaches: boolean | null
  readonly side: RunFile['road']['side']
  readonly letting: string | null
  readonly datumStation: string | null
  /** Where the device says that it is; null where it was not asked. */
  readonly position: DevicePosition | null
  /** Sheets of an agency that are in use. */
  readonly sheets: readonly HardwareSheet[]
}

/** The run file of a run that is checked where it stands. */
export const countedRun = (seen: SeenRun): RunFile => ({
  ...{ name: seen.name, units: seen.units, work: 'standing', letting: seen.letting },
  road: {
    ...{ route: null, side: seen.side, datumStation: seen.datumStation },
    ...{ speed: null, traffic: null, opposingReaches: seen.opposingReaches },
    ...(seen.position === null ? {} : { position: seen.position }),
  },
  system: seen.system.id,
  first: endOf(seen.first, seen, seen.counted.panels),
  second: endOf(seen.second, seen, seen.counted.panels.toReversed()),
  ...{ need: null, flare: null, stock: null, standing: null },
  ...{ obstructions: seen.obstructions, reduced: seen.reduced },
  counted: seen.counted,
  ...{ mayExtendInches: 600, decision: null, decisionRule: { kind: 'guard band', multiple: 1 }, instruments: [] },
  sheets: seen.sheets,
})

/**
 * Of an end that no sheet fits, seen by itself, all that was counted is a part; in a whole run so many panels as were said.
 * @param panels  from this end on
 */
function endOf(end: SeenRun['first'], seen: SeenRun, panels: readonly number[]): RunFileEnd {
  if (typeof end === 'object') return { kind: 'unit', sheet: end.id, atInches: null }
  const unknown = { kind: 'unknown', because: end, atInches: null } as const
  if (end === 'not looked at') return { ...unknown, posts: 0, panels: 0 }
  const { first, second, counted, system, unknownPanels } = seen
  const isAlone = [first, second].includes('not looked at')
  const isBoth = first === 'no sheet fits' && second === 'no sheet fits'
  const own = isAlone ? panels.length : Math.min(unknownPanels, isBoth ? Math.floor(panels.length / 2) : panels.length)
  const count = typeof counted.posts === 'number' ? counted.posts : counted.posts.length
  const rail = panels.slice(0, own).reduce((sum, inches) => sum + inches, 0)
  const posts = isAlone ? count : Math.floor(rail / system.spacings.full.inches) + 1
  return { ...unknown, posts: Math.min(posts, isBoth ? Math.floor(count / 2) : count), panels: own }
}

/** The most panels that one of these ends has: so many are taken for those of an end that no sheet fits, until somebody says. */
export const mostPanelsOf = (ends: readonly EndSheet[]): number => Math.max(0, ...ends.map(panelsOfUnit))

/** The panels that a unit has by its sheet, from its outermost inward: what somebody counts from. */
export const panelsBySheet = ({ panels }: EndSheet): readonly number[] => [
  ...panels.own.map(({ inches }) => inches),
  ...panels.adapters.slice(0, 1).map(({ inches }) => inches),
]

/** How many posts come out at the spacings of the sheets for so much rail: what somebody counts from. */
export function postsBySheets(
  { first, second, system }: { readonly first: RunEnd; readonly second: RunEnd; readonly system: LongitudinalSheet },
  panels: readonly number[],
): number {
  const rail = panels.reduce((sum, inches) => sum + inches, 0)
  const ends = [first, second].map(postsOfEnd)
  const own = ends.reduce((sum, posts) => sum + posts.length, 0)
  const reach = ends.reduce((sum, posts) => sum + (posts.at(-1) ?? 0), 0)
  const between = (rail - reach) / system.spacings.full.inches
  const isOpen = ends.some((posts) => posts.length === 0)
  return Math.max(2, own + (isOpen ? Math.max(0, Math.ceil(between) - 1) : Math.max(0, Math.round(between) - 1)))
}

/** Of an end that no sheet fits, the post that the rail ends at. */
function postsOfEnd(end: RunEnd): readonly number[] {
  if (end.kind === 'unit') return end.sheet.posts.map(({ along }) => along)
  return end.kind === 'unknown' && end.because === 'no sheet fits' ? [0] : []
}
