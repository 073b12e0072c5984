import type { Confirmation } from '../../hardware/hardware-sheet.ts'

/** Where a table stands, and how far its values are confirmed; single confirmed cells are named in the rows. */
export interface TableSource {
  readonly source: string
  readonly confirmation: Confirmation
  readonly remark?: TableRemark
}

/** What a reader has to know before relying on a table. */
export type TableRemark =
  | { readonly kind: 'flatter is always allowed' }
  | { readonly kind: 'first printing differs' }
  | { readonly kind: 'clear zones of both editions' }
  /** `limitIsPrinted`: another text prints the radius from which no factor is needed. */
  | { readonly kind: 'last column least certain'; readonly limitIsPrinted: boolean }

/**
 * Volumes from `from` vehicles a day to `to`, null for the highest; `inclusive` says whether `from` itself belongs. Highest
 * first.
 */
export interface AdtClass {
  readonly from: number
  readonly to: number | null
  readonly inclusive: boolean
}

/** Values by speed, in the table's own unit (ft or m; mi/h or km/h). Speeds rise. */
export interface SpeedRow {
  readonly speed: number
  readonly values: readonly number[]
  /** Columns that were confirmed against a published use of the table, with that source. */
  readonly published?: { readonly columns: readonly number[]; readonly source: string }
}

export interface SpeedTable extends TableSource {
  readonly rows: readonly SpeedRow[]
}

/** Columns by volume. */
export interface RunoutTable extends SpeedTable {
  readonly classes: readonly AdtClass[]
}

/** One column. */
export type ShyLineTable = SpeedTable

/** Columns: inside the shy line (every barrier), beyond it rigid, beyond it semi-rigid. */
export type FlareTable = SpeedTable

/** Low and high end of the range; a star where the book lets the designer limit it to `limit`. */
type ClearZoneCell = readonly [low: number, high: number, star?: '*']

/** Columns: foreslope 6:1 and flatter, 5:1 to 4:1; backslope 3:1, 5:1 to 4:1, 6:1 and flatter. Rows by volume, lowest first. */
export interface ClearZoneBlock {
  /** Highest speed of the block. */
  readonly speed: number
  readonly rows: readonly (readonly ClearZoneCell[])[]
  /** Cells that were confirmed, by row and column, with the page that prints them. */
  readonly published?: { readonly cells: readonly (readonly [row: number, column: number])[]; readonly source: string }
}

export interface ClearZoneTable extends TableSource {
  readonly limit: number
  readonly blocks: readonly ClearZoneBlock[]
}

/** Factor by radius (falling) and speed; null where the table has a dash. Larger radii than the first need none. */
export interface CurveFactorTable extends TableSource {
  readonly speeds: readonly number[]
  readonly rows: readonly { readonly radius: number; readonly factors: readonly (number | null)[] }[]
}

/** A table with the citation of every cell, by row and column. */
export type Cited<T extends SpeedTable> = T & { readonly cells: readonly (readonly TableValue[])[] }

/** The tables of one edition in one unit system. They are never converted into one another. */
export interface DesignTables {
  readonly runout: Cited<RunoutTable>
  readonly shyLine: Cited<ShyLineTable>
  readonly flare: Cited<FlareTable>
  readonly clearZone: ClearZoneTable
  readonly curveFactor: CurveFactorTable
}

/** One value taken from a table, with all that is needed to find it there. */
export interface TableValue {
  readonly what: 'runout length' | 'shy-line offset' | 'flare limit' | 'clear zone' | 'curve factor'
  readonly value: number
  readonly unit: 'ft' | 'm' | 'a:1' | 'factor'
  readonly source: CellSaying
  readonly confirmation: Confirmation
  readonly remark?: TableRemark
}

/** A cell of a table: its row and column, in the order in which the table is read. */
export interface CellSaying {
  readonly kind: 'table cell'
  /** The table's title. */
  readonly table: string
  readonly parts: readonly CellPart[]
  /** What else prints the value; null where nothing that was read does. */
  readonly confirmedBy: string | null
}

/** A row or column. Slopes as the run of 1 vertical. */
export type CellPart =
  | { readonly kind: 'speed'; readonly speed: number; readonly unit: 'mi/h' | 'km/h'; readonly upTo: boolean }
  | { readonly kind: 'volume'; readonly from: number; readonly to: number | null }
  /** `flattest` null where the column goes on to level ground. */
  | {
      readonly kind: 'slope'
      readonly slope: 'foreslope' | 'backslope'
      readonly steepest: number
      readonly flattest: number | null
    }
  | { readonly kind: 'radius'; readonly radius: number; readonly unit: 'ft' | 'm' }
  /** `barrier` null for every barrier. */
  | { readonly kind: 'flare'; readonly side: 'inside' | 'beyond'; readonly barrier: 'rigid' | 'semi-rigid' | null }
