import { err, ok, type Result } from '../result.ts'
import type { FlareLimits, Site, UnitSystem } from '../site/site.ts'
import { feet, type Metres, metres } from '../units/quantity.ts'
import type { Note } from './note.ts'
import type { NeedRefusal } from './refusal.ts'
import type { AdtClass, DesignTables, TableSource, TableValue } from './tables/table.ts'

/** What a look-up leaves behind: the cells it used, and what the engineer has to know of them. */
export interface Findings {
  readonly found: TableValue[]
  readonly notes: Note[]
}

export const fromTable = (units: UnitSystem, value: number): Metres => (units === 'us' ? feet(value) : metres(value))

/**
 * Runout length by speed and volume, m. Between two speeds of the table it is interpolated linearly if the site says
 * so; otherwise the next higher speed is used, as it is below the lowest one.
 * At a volume where two classes meet the higher class holds, unless the table says "above".
 */
export function runoutLength(site: Site, tables: DesignTables, findings: Findings): Result<Metres, NeedRefusal> {
  if (site.runoutLength !== null) {
    findings.notes.push({ kind: 'runout-length-given', runoutLength: site.runoutLength })
    return ok(site.runoutLength)
  }
  const { runout } = tables
  const { speed, adt } = site.road
  const index = rowIndex(runout.rows, speed)
  if (index < 0) return err(aboveTable(runout, runout.rows, speed, 'runoutLength'))
  const column = runout.classes.findIndex((adtClass) => belongs(adtClass, adt))
  const high = runout.cells[index]![column]!
  const highSpeed = runout.rows[index]!.speed
  const low = runout.cells[index - 1]?.[column]
  if (highSpeed !== speed && site.interpolateSpeeds && low !== undefined) {
    const lowSpeed = runout.rows[index - 1]!.speed
    const share = (speed - lowSpeed) / (highSpeed - lowSpeed)
    findings.found.push(low, high)
    findings.notes.push({ kind: 'interpolated-speed', table: runout.source, lowSpeed, highSpeed })
    return ok(fromTable(site.units, low.value + share * (high.value - low.value)))
  }
  findings.found.push(high)
  if (highSpeed !== speed)
    findings.notes.push({ kind: 'next-higher-speed', table: runout.source, usedSpeed: highSpeed })
  return ok(fromTable(site.units, high.value))
}

/** Shy-line offset at the speed or the next higher one of the table, m; null above the table, with a note. */
export function shyLine(site: Site, { shyLine }: DesignTables, findings: Findings): Metres | null {
  if (site.shyLine !== null) return site.shyLine
  const cell = shyLine.cells[rowIndex(shyLine.rows, site.road.speed)]?.[0]
  if (cell === undefined) {
    findings.notes.push({ kind: 'shy-line-not-tabulated', highestSpeed: shyLine.rows.at(-1)!.speed })
    return null
  }
  findings.found.push(cell)
  return fromTable(site.units, cell.value)
}

/** Flare limits at the speed or the next higher one of the table; null above the table, with a note. */
export function flareLimits(site: Site, { flare }: DesignTables, findings: Findings): FlareLimits | null {
  if (site.flareLimits !== null) return site.flareLimits
  const cells = flare.cells[rowIndex(flare.rows, site.road.speed)]
  if (cells === undefined) {
    findings.notes.push({ kind: 'flare-limit-not-tabulated', highestSpeed: flare.rows.at(-1)!.speed })
    return null
  }
  const [inside, , beyond] = cells
  findings.found.push(inside!, beyond!)
  return { inside: inside!.value, beyond: beyond!.value }
}

/** The row of `speed` or the next higher one; -1 above the table. */
export function rowIndex(rows: readonly { readonly speed: number }[], speed: number): number {
  for (let i = 0; i < rows.length; i++) if (rows[i]!.speed >= speed) return i
  return -1
}

export function aboveTable(
  table: TableSource,
  rows: readonly { readonly speed: number }[],
  speed: number,
  instead: 'runoutLength' | 'clearZone',
): NeedRefusal {
  return { kind: 'speed-above-table', table: table.source, speed, highest: rows.at(-1)!.speed, instead }
}

const belongs = (adtClass: AdtClass, adt: number): boolean =>
  adtClass.inclusive ? adt >= adtClass.from : adt > adtClass.from
