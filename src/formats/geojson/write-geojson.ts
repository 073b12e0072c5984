import type { MapFeature, MapLayer } from '../map/map-layer.ts'
import { type ReferenceSystem, toGeographic } from '../map/reference-system.ts'

/**
 * The layers as one GeoJSON text (RFC 7946): WGS 84, longitude before latitude, no reference system stated. Seven
 * decimals of a degree are about a centimetre. Each feature names its layer and the system that its coordinates come
 * from.
 */
export function writeGeoJson(layers: readonly MapLayer[], system: ReferenceSystem): string {
  const features = layers.flatMap((layer) => layer.features.map((feature) => featureOf(layer, feature, system)))
  return `${JSON.stringify({ type: 'FeatureCollection', features }, null, 1)}\n`
}

function featureOf(layer: MapLayer, { id, points, values }: MapFeature, system: ReferenceSystem): object {
  const coordinates = points.map((point) => toGeographic(system, point).map(degrees))
  const geometry =
    layer.geometry === 'point' ? { type: 'Point', coordinates: coordinates[0] } : { type: 'LineString', coordinates }
  const named = Object.fromEntries(layer.fields.map(({ name }, i) => [name, values[i] ?? null]))
  return {
    type: 'Feature',
    id,
    geometry,
    properties: { layer: layer.name, ...named, projected_from: `EPSG:${system.code}` },
  }
}

const degrees = (value: number): number => Math.round(value * 1e7) / 1e7
