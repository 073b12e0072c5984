import { describe, expect, it } from 'vitest'
import { metresFromGround } from '../../core/units/ground-unit.ts'
import { firstOutside, type MapLayer } from '../map/map-layer.ts'
import { loadReferenceSystem } from '../map/reference-system.ts'
import { writeGeoJson } from './write-geojson.ts'

const found = await loadReferenceSystem(2260)
if (!found.ok) throw new Error(found.error.kind)
const system = found.value
const usFeet = (length: number) => metresFromGround(length, 'US survey foot')

// cs2cs EPSG:4269 EPSG:2260 puts 41 N, 74 W at 630128.2058, 789591.5210
const here = { easting: usFeet(630128.2058), northing: usFeet(789591.521) }
const layers: readonly MapLayer[] = [
  {
    name: 'posts',
    title: 'Posts',
    geometry: 'point',
    fields: [{ name: 'kind', type: 'text' }],
    features: [{ id: 'post-1', points: [here], values: ['wood'] }],
  },
  {
    name: 'run',
    title: 'Run',
    geometry: 'line',
    fields: [],
    features: [{ id: 'run', points: [here, { ...here, northing: here.northing + 10 }], values: [] }],
  },
]

describe('GeoJSON', () => {
  it('is longitude before latitude on WGS 84, and states no reference system', () => {
    const written = JSON.parse(writeGeoJson(layers, system)) as { features: { geometry: { coordinates: number[] } }[] }
    expect(Object.keys(written)).toEqual(['type', 'features'])
    expect(written.features[0]).toEqual({
      type: 'Feature',
      id: 'post-1',
      geometry: { type: 'Point', coordinates: [-74, 41] },
      properties: { layer: 'posts', kind: 'wood', projected_from: 'EPSG:2260' },
    })
    expect(written.features[1]).toMatchObject({ geometry: { type: 'LineString' } })
  })

  it('is not written for places outside the system, as when easting and northing are swapped', () => {
    expect(firstOutside(layers, system)).toBeNull()
    const swapped = { id: 'post-2', points: [{ easting: here.northing * 2, northing: 0 }], values: ['wood'] }
    expect(firstOutside([{ ...layers[0]!, features: [swapped] }], system)).toBe(swapped)
  })
})
