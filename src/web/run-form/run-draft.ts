import type { Layout } from '../../core/layout/layout.ts'
import type { RunFile } from '../../formats/run/run-file.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { type Draft, unitsOf, valueAt, withValue } from '../form/draft.ts'
import { inUnits } from '../site/convert-units.ts'
import { stationLike, stationNumber } from '../site/station-value.ts'

/** The run as it is edited: what it asks, with the sheets that it holds, and without what was laid out. */
export const draftOfRun = (run: RunFile): Draft => runToValue({ ...run, version: undefined }) as unknown as Draft

/** A run of which only the hardware is said: the first of the shelf that goes together. */
export function emptyDraft(name: string, units: 'us' | 'metric'): Draft {
  const system = shippedSheets.find(({ kind }) => kind === 'longitudinal')!
  const joining = (kind: string): string =>
    shippedSheets.find((sheet) => sheet.kind === kind && 'joins' in sheet && sheet.joins.includes(system.id))!.id
  return {
    ...{ format: 'lapwise-run/1', name, units, system: system.id, work: 'new', letting: null },
    road: { route: null, side: null, datumStation: null, speed: null, traffic: null, opposingReaches: null },
    first: { sheet: joining('terminal') },
    second: { sheet: joining('trailing anchor') },
    need: { from: 0 },
    ...{ flare: null, stock: null, obstructions: [], reduced: [], standing: null, mayExtend: 600, decision: null },
    decisionRule: { kind: 'guard band', multiple: 1 },
    ...{ instruments: [], sheets: [] },
  }
}

/** The run with the layout that was chosen among those that it can have: `isBest` where it is the one that it gets unasked. */
export function decidedRun(run: RunFile, layout: Layout, isBest: boolean): RunFile {
  if (run.counted !== undefined || (isBest && run.decision === null)) return run
  const { postOneAtInches, panels } = layout
  return { ...run, decision: { postOneAtInches, panels: panels.map(({ inches }) => inches) } }
}

/** The draft in the other units; lengths along the rail are inches in both, and so stay what they are. */
export function runInUnits(draft: Draft, to: 'us' | 'metric'): Draft {
  const next = inUnits(draft, to)
  const written = valueAt(draft, 'road.datumStation')
  const station = typeof written === 'string' ? stationNumber(written, unitsOf(draft)) : null
  if (station === null || next === draft) return next
  const there = Number((to === 'metric' ? station * 0.3048 : station / 0.3048).toFixed(2))
  return withValue(next, 'road.datumStation', stationLike(written, there, to))
}
