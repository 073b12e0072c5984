import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import type { CountedPieces, RunEnd, UnknownEnd } from '../core/layout/layout.ts'
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
  first: endOf(seen.first, seen.second, seen.counted),
  second: endOf(seen.second, seen.first, seen.counted),
  ...{ need: null, flare: null, stock: null, obstructions: [], reduced: [], standing: null },
  counted: seen.counted,
  ...{ mayExtendInches: 600, decision: null, decisionRule: { kind: 'guard band', multiple: 1 }, instruments: [] },
  sheets: seen.sheets,
})

/** Of an end that no sheet fits, seen by itself, all that was counted is a part; beside a known one nobody said how much. */
function endOf(end: SeenRun['first'], other: SeenRun['first'], { panels, posts }: CountedPieces): RunFileEnd {
  if (typeof end === 'object') return { kind: 'unit', sheet: end.id, atInches: null }
  const isAll = end === 'no sheet fits' && other === 'not looked at'
  const count = typeof posts === 'number' ? posts : posts.length
  return {
    ...{ kind: 'unknown', because: end, atInches: null },
    ...(isAll ? { posts: count, panels: panels.length } : { posts: 0, panels: 0 }),
  }
}

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
  const ends = [first, second].map((end) => (end.kind === 'unit' ? end.sheet.posts.map(({ along }) => along) : []))
  const own = ends.reduce((sum, posts) => sum + posts.length, 0)
  const reach = ends.reduce((sum, posts) => sum + (posts.at(-1) ?? 0), 0)
  const between = (rail - reach) / system.spacings.full.inches
  const isOpen = ends.some((posts) => posts.length === 0)
  return Math.max(2, own + (isOpen ? Math.max(0, Math.ceil(between) - 1) : Math.max(0, Math.round(between) - 1)))
}
