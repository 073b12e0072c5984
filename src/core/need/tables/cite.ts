import type { UnitSystem } from '../../site/site.ts'
import type { CellPart, Cited, SpeedRow, SpeedTable, TableSource, TableValue } from './table.ts'

export const tableUnit = (units: UnitSystem): 'ft' | 'm' => (units === 'us' ? 'ft' : 'm')
export const speedPart = (speed: number, units: UnitSystem, upTo: boolean): CellPart => ({
  kind: 'speed',
  ...{ speed, unit: units === 'us' ? 'mi/h' : 'km/h', upTo },
})

/** `table` with the citation of every cell made out once, since millions of sites may ask for the same one. */
export function cite<T extends SpeedTable>(
  table: T,
  units: UnitSystem,
  what: TableValue['what'],
  columns: readonly (CellPart | null)[],
): Cited<T> {
  const cells = table.rows.map((row) => columns.map((part, column) => cellOf(table, units, what, row, column, part)))
  return { ...table, cells }
}

function cellOf(
  table: TableSource,
  units: UnitSystem,
  what: TableValue['what'],
  row: SpeedRow,
  column: number,
  part: CellPart | null,
): TableValue {
  const speed = speedPart(row.speed, units, false)
  const published = row.published?.columns.includes(column) ? row.published : undefined
  return {
    what,
    value: row.values[column]!,
    unit: what === 'flare limit' ? 'a:1' : tableUnit(units),
    source: {
      kind: 'table cell',
      table: table.source,
      parts: part === null ? [speed] : [speed, part],
      confirmedBy: published?.source ?? null,
    },
    confirmation: published === undefined ? table.confirmation : 'published',
    ...(table.remark === undefined ? {} : { remark: table.remark }),
  }
}
