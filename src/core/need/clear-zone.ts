import { err, ok, type Result } from '../result.ts'
import type { ClearZone, Site } from '../site/site.ts'
import { isShorter } from '../units/exact-length.ts'
import type { Metres } from '../units/quantity.ts'
import { aboveTable, type Findings, fromTable, rowIndex } from './look-up.ts'
import type { NeedRefusal } from './refusal.ts'
import { speedPart, tableUnit } from './tables/cite.ts'
import type { CellPart, DesignTables, TableValue } from './tables/table.ts'

/**
 * Width of the clear zone from the edge of travelled way, m.
 *
 * A width that the site gives is taken as it stands. Looked up by slope, it is multiplied by the curve factor on the
 * outside of a curve; where the factor's table ends, nothing is computed.
 *
 * @param outsideRadius  smallest radius of the edge where the hazards are on the outside of a curve, m; null elsewhere
 */
export function clearZoneWidth(
  site: Site,
  tables: DesignTables,
  outsideRadius: Metres | null,
  findings: Findings,
): Result<Metres, NeedRefusal> {
  if (site.clearZone.kind === 'width') {
    if (outsideRadius !== null) findings.notes.push({ kind: 'curve-factor-not-applied', radius: outsideRadius })
    return ok(site.clearZone.width)
  }
  const width = widthBySlope(site, site.clearZone, tables, findings)
  if (!width.ok || outsideRadius === null) return width
  const factor = curveFactor(site, tables, outsideRadius)
  if (!factor.ok) return factor
  if (factor.value === null) return width
  const clearZone = width.value * factor.value.value
  findings.found.push(factor.value)
  findings.notes.push({ kind: 'curve-factor', factor: factor.value.value, radius: outsideRadius, clearZone })
  return ok(clearZone)
}

function widthBySlope(
  site: Site,
  zone: ClearZone & { kind: 'slope' },
  tables: DesignTables,
  findings: Findings,
): Result<Metres, NeedRefusal> {
  const { clearZone } = tables
  const { speed, adt } = site.road
  const column = columnOf(zone.slope, zone.run)
  if (column === null) {
    const steepest = zone.slope === 'foreslope' ? 4 : 3
    return err({ kind: 'slope-not-tabulated', slope: zone.slope, run: zone.run, steepest })
  }
  const block = clearZone.blocks[rowIndex(clearZone.blocks, speed)]
  if (block === undefined) return err(aboveTable(clearZone, clearZone.blocks, speed, 'clearZone'))
  const row = adt > 6000 ? 3 : adt >= 1500 ? 2 : adt >= 750 ? 1 : 0
  const [low, high, star] = block.rows[row]![column.index]!
  const used = zone.take === 'low' ? low : high
  const inMetres = (value: number) => fromTable(site.units, value)
  findings.notes.push({
    kind: 'clear-zone-range',
    narrowest: inMetres(low),
    widest: inMetres(high),
    clearZone: inMetres(used),
  })
  if (star !== undefined && used > clearZone.limit)
    findings.notes.push({ kind: 'clear-zone-may-be-limited', clearZone: inMetres(clearZone.limit) })
  const parts = [speedPart(block.speed, site.units, true), volumes[row]!, column.part]
  const isPublished = block.published?.cells.some(([r, c]) => r === row && c === column.index) ?? false
  findings.found.push({
    what: 'clear zone',
    value: used,
    unit: tableUnit(site.units),
    source: {
      kind: 'table cell',
      ...{ table: clearZone.source, parts, confirmedBy: isPublished ? block.published!.source : null },
    },
    confirmation: isPublished ? 'published' : clearZone.confirmation,
    ...(clearZone.remark === undefined ? {} : { remark: clearZone.remark }),
  })
  return ok(inMetres(used))
}

const volumes: readonly CellPart[] = [
  { kind: 'volume', from: 0, to: 750 },
  { kind: 'volume', from: 750, to: 1500 },
  { kind: 'volume', from: 1500, to: 6000 },
  { kind: 'volume', from: 6000, to: null },
]

/**
 * The table's column. Between columns the one with the wider clear zone is used: the steeper foreslope, the flatter
 * backslope. Null where the table gives no distance to use directly: a foreslope steeper than 1V:4H is not recoverable.
 */
function columnOf(slope: 'foreslope' | 'backslope', run: number): { index: number; part: CellPart } | null {
  const column = (index: number, steepest: number, flattest: number | null) => ({
    index,
    part: { kind: 'slope', slope, steepest, flattest } as const,
  })
  if (slope === 'foreslope') {
    if (run >= 6) return column(0, 6, null)
    return run >= 4 ? column(1, 4, 5) : null
  }
  if (run < 3) return null
  if (run === 3) return column(2, 3, 3)
  return run <= 5 ? column(3, 4, 5) : column(4, 6, null)
}

/**
 * The factor at the next smaller radius and the next higher speed of the table, both on the safe side (the book prints
 * no interpolation); null for radii above the table, which need none.
 */
function curveFactor(site: Site, tables: DesignTables, radius: Metres): Result<TableValue | null, NeedRefusal> {
  const table = tables.curveFactor
  const { units } = site
  const { speed } = site.road
  const above = (rowRadius: number) => isShorter(fromTable(units, rowRadius), radius)
  const first = table.rows[0]!
  if (above(first.radius)) return ok(null)
  const column = table.speeds.findIndex((tabulated) => tabulated >= speed)
  const next = table.rows.findIndex((row) => !isShorter(radius, fromTable(units, row.radius)))
  const row = table.rows[next]
  const factor = row?.factors[column]
  if (row === undefined || factor === undefined || factor === null) {
    const last = table.rows.findLast((other) => typeof other.factors[column] === 'number')
    const smallest = last === undefined ? null : fromTable(units, last.radius)
    return err({ kind: 'curve-factor-outside-table', table: table.source, radius, speed, smallest })
  }
  return ok({
    what: 'curve factor',
    value: factor,
    unit: 'factor',
    source: {
      kind: 'table cell',
      table: table.source,
      parts: [
        { kind: 'radius', radius: row.radius, unit: tableUnit(units) },
        speedPart(table.speeds[column]!, units, false),
      ],
      confirmedBy: null,
    },
    confirmation: table.confirmation,
    ...(table.remark === undefined ? {} : { remark: table.remark }),
  })
}
