import type { HorizontalAlignment } from '../../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../../core/alignment/station-equations.ts'
import { feet, type Metres, metres, usSurveyFeet } from '../../core/units/quantity.ts'
import type { RoadNote } from '../../words/problems/road.ts'

/** Of what is written. */
export const landXmlNamespace = 'http://www.landxml.org/schema/LandXML-1.2'

/** Of what is read: what an alignment in plan needs is the same in all of them. */
export const readNamespaces: readonly string[] = [
  landXmlNamespace,
  'http://www.landxml.org/schema/LandXML-1.1',
  'http://www.landxml.org/schema/LandXML-2.0',
  'http://www.inframodel.fi/inframodel',
]

/** The linear unit of a LandXML file, as it names it. The two feet differ by 2 ppm: 4 ft in a coordinate of 2,000,000 ft. */
export type LinearUnit = 'meter' | 'foot' | 'USSurveyFoot'

export const metresFrom: Readonly<Record<LinearUnit, (value: number) => Metres>> = {
  meter: metres,
  foot: feet,
  USSurveyFoot: usSurveyFeet,
}

/** What this project reads from and writes to a LandXML 1.2 file. Lengths in m, whatever the file's unit. */
export interface LandXml {
  readonly unit: LinearUnit
  readonly alignments: readonly LandXmlAlignment[]
}

export interface LandXmlAlignment {
  readonly name: string
  readonly horizontal: HorizontalAlignment
  readonly equations: readonly StationEquation[]
}

/** What a file that can be read says against itself, or has and is not used. */
export interface RoadFileNote {
  readonly alignment: string
  /** Line and column of the element. */
  readonly place: string
  readonly said: RoadNote
}
