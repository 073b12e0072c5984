import type { Metres } from '../../core/units/quantity.ts'
import type { Kinds } from '../kinds.ts'
import type { RoadBreak } from './run.ts'

/** What a road file (LandXML) has to say; names of elements and attributes as they stand in it. */
export type RoadProblem =
  | Kinds<'well-formed XML' | 'XML element'>
  | { readonly kind: 'root in namespace'; readonly namespaces: readonly string[] }
  | Kinds<'encoding of road' | 'characters of encoding'>
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
  | Kinds<'known point' | 'centre within reach'>
  | { readonly kind: 'chord and radius'; readonly chord: Metres; readonly radius: Metres }
  | Exclude<RoadNote, RoadBreak>
  | Kinds<'clothoid' | 'spiral with length' | 'PI on tangent' | 'turn' | 'points that differ' | 'same point twice'>
  | { readonly kind: 'PI off tangent'; readonly radians: number }
  | { readonly kind: 'radius or INF'; readonly name: string }
  | Kinds<'increasing stations' | 'later staInternal' | 'staBack that follows'>
  | { readonly kind: 'alignment named'; readonly file: string }
  | Kinds<'alignment of elements' | 'alignment with coordinates'>

/** What is told of a road file besides; names as they stand in it, numbers in its own unit. */
export type RoadNote =
  | RoadBreak
  /** An attribute that is not what points and lengths give. */
  | {
      readonly kind: 'stated otherwise'
      readonly element: string
      readonly name: string
      readonly stated: number
      readonly found: number
    }
  /** The end that an element states is not the one to which its numbers lead. */
  | { readonly kind: 'end elsewhere'; readonly element: string; readonly metres: Metres }
  | { readonly kind: 'not used of road'; readonly names: readonly string[] }
  | Kinds<'start station not stated'>
