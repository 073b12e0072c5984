import type { Kinds } from '../kinds.ts'

/** What a road file (LandXML) has to say; names of elements and attributes as they stand in it. */
export type RoadProblem =
  | Kinds<'well-formed XML' | 'XML element'>
  | { readonly kind: 'root in namespace'; readonly namespace: string }
  | { readonly kind: 'root element'; readonly name: string; readonly namespace: string }
  | Kinds<'units of road' | 'one or more alignments' | 'one or more elements' | 'alignment element'>
  | { readonly kind: 'linear unit'; readonly units: readonly string[] }
  | { readonly kind: 'one geometry'; readonly alignment: string }
  | { readonly kind: 'attribute of'; readonly name: string; readonly element: string }
  | { readonly kind: 'number of attribute'; readonly name: string; readonly element: string }
  | { readonly kind: 'child of'; readonly name: string; readonly element: string }
  | { readonly kind: 'attribute at most'; readonly name: string; readonly most: number }
  | Kinds<'entries at most' | 'coordinates at most' | 'radius at most', { readonly most: number }>
  | Kinds<'written coordinates' | 'northing and easting', { readonly name: string }>
  | { readonly kind: 'reference to point'; readonly name: string }
  | Kinds<'clothoid' | 'spiral with length' | 'PI on tangent' | 'turn' | 'points that differ' | 'same point twice'>
  | { readonly kind: 'PI off tangent'; readonly radians: number }
  | { readonly kind: 'radius or INF'; readonly name: string }
  | Kinds<'increasing stations' | 'later staInternal' | 'staBack that follows'>
  | { readonly kind: 'alignment named'; readonly file: string }
  | Kinds<'alignment of elements' | 'alignment with coordinates'>
