import proj4 from 'proj4'
import * as z from 'zod/mini'
import type { Point } from '../../core/geometry/point.ts'
import { err, ok, type Result } from '../../core/result.ts'
import { type GroundUnit, groundFromMetres, groundUnits } from '../../core/units/ground-unit.ts'

/** A projected coordinate reference system. */
export interface ReferenceSystem {
  /** EPSG code. */
  readonly code: number
  readonly name: string
  readonly unit: GroundUnit
  readonly wkt: string
  readonly proj4: string
  /** Where it may be used, degrees of longitude and latitude. */
  readonly area: { readonly west: number; readonly south: number; readonly east: number; readonly north: number }
}

export type ReferenceProblem =
  | { readonly kind: 'unknown-code'; readonly code: number }
  | { readonly kind: 'not-projected'; readonly name: string }
  | { readonly kind: 'unit-not-supported'; readonly name: string; readonly unit: string | null }
  /** Its datum needs shift grids, without which coordinates come out wrong by tens of metres. */
  | { readonly kind: 'datum-needs-grids'; readonly name: string }

/** One entry of the package epsg-index, as far as it is used. */
const entryShape = z.object({
  code: z.string(),
  kind: z.string(),
  name: z.string(),
  wkt: z.nullable(z.string()),
  proj4: z.nullable(z.string()),
  bbox: z.tuple([z.number(), z.number(), z.number(), z.number()]),
  unit: z.nullable(z.string()),
})

/** The reference system of an EPSG code; only where packages are installed, not in a page. */
export async function loadReferenceSystem(code: number): Promise<Result<ReferenceSystem, ReferenceProblem>> {
  if (!Number.isSafeInteger(code)) return err({ kind: 'unknown-code', code })
  try {
    const entry = (await import(`epsg-index/s/${code}.json`, { with: { type: 'json' } })) as { default: unknown }
    return readReferenceSystem(entry.default)
  } catch (cause) {
    if ((cause as { code?: unknown }).code === 'ERR_MODULE_NOT_FOUND') return err({ kind: 'unknown-code', code })
    throw cause
  }
}

/** The reference system of an entry of epsg-index; its `unit` says which foot it is in. */
function readReferenceSystem(raw: unknown): Result<ReferenceSystem, ReferenceProblem> {
  const entry = entryShape.parse(raw)
  const { name, unit, wkt, bbox } = entry
  if (entry.kind !== 'CRS-PROJCRS' || wkt === null || entry.proj4 === null) return err({ kind: 'not-projected', name })
  if (/NAD27|North_American_Datum_1927|\+nadgrids/.test(`${name} ${wkt} ${entry.proj4}`))
    return err({ kind: 'datum-needs-grids', name })
  const known = groundUnits.find((one) => one === unit)
  if (known === undefined) return err({ kind: 'unit-not-supported', name, unit })
  const [north, west, south, east] = bbox
  return ok({
    code: Number(entry.code),
    name,
    unit: known,
    wkt,
    proj4: entry.proj4,
    area: { west, south, east, north },
  })
}

/** Longitude and latitude in degrees. NAD83 is taken as WGS 84: they differ by 1 to 2 m in North America. */
export type Geographic = readonly [longitude: number, latitude: number]

/** `point` (m) as longitude and latitude. */
export function toGeographic(system: ReferenceSystem, { easting, northing }: Point): Geographic {
  const inUnit = [groundFromMetres(easting, system.unit), groundFromMetres(northing, system.unit)]
  const [longitude, latitude] = proj4(system.proj4, 'WGS84', inUnit)
  return [longitude!, latitude!]
}

/** Whether `place` lies where the system may be used; a swapped or mislabelled pair of coordinates seldom does. */
export function isInArea({ area }: ReferenceSystem, [longitude, latitude]: Geographic): boolean {
  const { west, east, south, north } = area
  const across = west <= east ? longitude >= west && longitude <= east : longitude >= west || longitude <= east
  return across && latitude >= south && latitude <= north
}
