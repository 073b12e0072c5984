import type { UnitSystem } from '../../site/site.ts'
import type { Cited, SpeedRow, SpeedTable, TableSource, TableValue } from './table.ts'

export const tableUnit = (units: UnitSystem): 'ft' | 'm' => (units === 'us' ? 'ft' : 'm')
export const speedText = (speed: number, units: UnitSystem): string => `${speed} ${units === 'us' ? 'mi/h' : 'km/h'}`

/** `table` with the citation of every cell made out once, since millions of sites may ask for the same one. */
export function cite<T extends SpeedTable>(
  table: T,
  units: UnitSystem,
  what: TableValue['what'],
  columns: readonly string[],
): Cited<T> {
  const cells = table.rows.map((row) => columns.map((name, column) => cellOf(table, units, what, row, column, name)))
  return { ...table, cells }
}

function cellOf(
  table: TableSource,
  units: UnitSystem,
  what: TableValue['what'],
  row: SpeedRow,
  column: number,
  name: string,
): TableValue {
  const at = `${table.source}, ${speedText(row.speed, units)}${name === '' ? '' : `, ${name}`}`
  const published = row.published?.columns.includes(column) ? row.published : undefined
  return {
    what,
    value: row.values[column]!,
    unit: what === 'flare limit' ? 'a:1' : tableUnit(units),
    source: published === undefined ? at : `${at}; confirmed by ${published.source}`,
    confirmation: published === undefined ? table.confirmation : 'published',
    ...(table.remark === undefined ? {} : { remark: table.remark }),
  }
}
