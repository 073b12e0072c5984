import initSqlJs, { type Database } from 'sql.js'
import { type GroundUnit, groundFromMetres } from '../../core/units/ground-unit.ts'
import type { MapLayer } from '../map/map-layer.ts'
import type { Geographic, ReferenceSystem } from '../map/reference-system.ts'
import { geometryBlob } from './geometry-blob.ts'

export interface GeoPackageOptions {
  readonly system: ReferenceSystem
  /** Stated as the last change, ISO 8601 in UTC: `2026-05-12T10:05:00.000Z`. */
  readonly changedAt: string
  /** Where a page finds SQLite's compiled code; null where packages are installed. */
  readonly sqliteAt: string | null
}

/** The layers as a GeoPackage 1.3, each a table in the system's own unit. The same input gives the same bytes. */
export async function writeGeoPackage(layers: readonly MapLayer[], options: GeoPackageOptions): Promise<Uint8Array> {
  const { system, sqliteAt } = options
  const sqlite = await initSqlJs(sqliteAt === null ? undefined : { locateFile: () => sqliteAt })
  const database = new sqlite.Database()
  try {
    database.run(frame)
    const srs = database.prepare('INSERT INTO gpkg_spatial_ref_sys VALUES (?, ?, ?, ?, ?, ?)')
    for (const row of referenceRows(system)) srs.run([...row])
    srs.free()
    for (const layer of layers) writeLayer(database, layer, options)
    return database.export()
  } finally {
    database.close()
  }
}

/** Tables of OGC 12-128r18, annex C, and the two header numbers that say what the file is. */
const frame = `
PRAGMA application_id = 1196444487;
PRAGMA user_version = 10300;
CREATE TABLE gpkg_spatial_ref_sys (
  srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY, organization TEXT NOT NULL,
  organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL, description TEXT);
CREATE TABLE gpkg_contents (
  table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, identifier TEXT UNIQUE, description TEXT DEFAULT '',
  last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')),
  min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE, srs_id INTEGER,
  CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id));
CREATE TABLE gpkg_geometry_columns (
  table_name TEXT NOT NULL, column_name TEXT NOT NULL, geometry_type_name TEXT NOT NULL, srs_id INTEGER NOT NULL,
  z TINYINT NOT NULL, m TINYINT NOT NULL,
  CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name), CONSTRAINT uk_gc_table_name UNIQUE (table_name),
  CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
  CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id));
`

const wgs84 =
  'GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563,AUTHORITY["EPSG","7030"]],AUTHORITY["EPSG","6326"]],PRIMEM["Greenwich",0,AUTHORITY["EPSG","8901"]],UNIT["degree",0.0174532925199433,AUTHORITY["EPSG","9122"]],AUTHORITY["EPSG","4326"]]'

const referenceRows = (system: ReferenceSystem): readonly (readonly (string | number)[])[] => [
  ['Undefined cartesian', -1, 'NONE', -1, 'undefined', 'undefined cartesian coordinates'],
  ['Undefined geographic', 0, 'NONE', 0, 'undefined', 'undefined geographic coordinates'],
  ['WGS 84', 4326, 'EPSG', 4326, wgs84, 'longitude and latitude in degrees'],
  [system.name, system.code, 'EPSG', system.code, system.wkt, `coordinates in ${system.unit}`],
]

function writeLayer(database: Database, layer: MapLayer, { system, changedAt }: GeoPackageOptions): void {
  const places = layer.features.map(({ points }) =>
    points.map(({ easting, northing }): Geographic => [inUnit(easting, system.unit), inUnit(northing, system.unit)]),
  )
  const xs = places.flat().map(([x]) => x)
  const ys = places.flat().map(([, y]) => y)
  const box =
    xs.length === 0 ? [null, null, null, null] : [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
  const kind = layer.geometry === 'point' ? 'POINT' : 'LINESTRING'
  const columns = layer.fields.map(({ name, type }) => `, ${quoted(name)} ${type === 'text' ? 'TEXT' : 'DOUBLE'}`)
  const table = quoted(layer.name)
  database.run(
    `CREATE TABLE ${table} (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom ${kind}, id TEXT NOT NULL UNIQUE${columns.join('')})`,
  )
  database.run('INSERT INTO gpkg_contents VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)', [
    layer.name,
    'features',
    layer.name,
    layer.title,
    changedAt,
    ...box,
    system.code,
  ])
  database.run('INSERT INTO gpkg_geometry_columns VALUES (?, ?, ?, ?, ?, ?)', [
    layer.name,
    'geom',
    kind,
    system.code,
    0,
    0,
  ])
  const row = database.prepare(`INSERT INTO ${table} VALUES (NULL, ?, ?${', ?'.repeat(layer.fields.length)})`)
  layer.features.forEach(({ id, values }, i) => {
    row.run([geometryBlob(system.code, layer.geometry, places[i]!), id, ...values])
  })
  row.free()
}

/** To a tenth of a micrometre, so that 630128.2058 is not 630128.2058000001. */
const inUnit = (length: number, unit: GroundUnit): number => Math.round(groundFromMetres(length, unit) * 1e7) / 1e7

function quoted(name: string): string {
  if (!/^[a-z][a-z0-9_]*$/.test(name)) throw new RangeError(`not a name for a table or a column: ${name}`)
  return `"${name}"`
}
