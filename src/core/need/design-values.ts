import { ok, type Result } from '../result.ts'
import type { FlareLimits, Site } from '../site/site.ts'
import type { Metres } from '../units/quantity.ts'
import { clearZoneWidth } from './clear-zone.ts'
import { type Findings, flareLimits, runoutLength, shyLine } from './look-up.ts'
import type { Note } from './note.ts'
import type { NeedRefusal } from './refusal.ts'
import { designTables } from './tables/design-tables.ts'
import type { TableValue } from './tables/table.ts'
import { adjacentView, curveSides } from './traffic-view.ts'

/** What the tables (or the site) say for a site, with the cells used and what has to be said of them. */
export interface DesignValues {
  readonly runout: Metres
  readonly clearZone: Metres
  readonly shyLine: Metres | null
  readonly flareLimits: FlareLimits | null
  readonly found: readonly TableValue[]
  readonly notes: readonly Note[]
}

/** Every value that the need of `site` rests on, or why one cannot be had. */
export function designValues(site: Site): Result<DesignValues, NeedRefusal> {
  const tables = designTables(site.edition, site.units)
  const findings: Findings = { found: [], notes: [] }
  const runout = runoutLength(site, tables, findings)
  if (!runout.ok) return runout
  const clearZone = clearZoneWidth(site, tables, outsideRadius(site, runout.value), findings)
  if (!clearZone.ok) return clearZone
  return ok({
    runout: runout.value,
    clearZone: clearZone.value,
    shyLine: shyLine(site, tables, findings),
    flareLimits: site.barrier.flare === null ? null : flareLimits(site, tables, findings),
    ...findings,
  })
}

/** Sharpest radius of the edge where vehicles leave it towards hazards on the outside of a curve. */
function outsideRadius(site: Site, runout: Metres): Metres | null {
  const { direction } = adjacentView(site)
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const hazard of site.hazards) {
    const front = direction === 1 ? hazard.from : hazard.to
    low = Math.min(low, front)
    high = Math.max(high, front)
  }
  return direction === 1 ? curveSides(site, low - runout, high).outside : curveSides(site, low, high + runout).outside
}
