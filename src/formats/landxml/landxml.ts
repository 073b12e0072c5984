import type { HorizontalAlignment } from '../../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../../core/alignment/station-equations.ts'
import { feet, type Metres, metres, type Radians, usSurveyFeet } from '../../core/units/quantity.ts'

export const landXmlNamespace = 'http://www.landxml.org/schema/LandXML-1.2'

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

/** Where two elements of a file do not join: its numbers were rounded, or something is missing. */
export interface Gap {
  readonly alignment: string
  /** Line and column of the element that should have joined the one before it. */
  readonly place: string
  readonly station: Metres
  /** From the end of the one to the start of the other, and the change of direction there. */
  readonly distance: Metres
  readonly kink: Radians
}
