import type { Beam, LongitudinalSheet, OmissionRule, PostMake, SheetPanel, SheetPost } from './hardware-sheet.ts'
import { beamByName, makeByName } from './older-sheets.ts'

/** The rail of a panel of an end unit. */
export const beamOf = ({ beam, name }: SheetPanel): Beam => beam ?? beamByName(name)

/** What a post of a sheet is made of, and what lets it break away. */
export const makeOf = ({ make, kind }: SheetPost | LongitudinalSheet['post']): PostMake => make ?? makeByName(kind)

/** The same of the special posts beside a gap. */
export const specialMakeOf = ({ specialPostMake, specialPostKind }: OmissionRule): PostMake =>
  specialPostMake ?? makeByName(specialPostKind ?? '')

/** Rail of a run is single W-beam of 12 gauge (0.105 in, class A of AASHTO M 180). */
export const railOfRun: Beam = { profile: 'W', gauge: 12, layers: 1 }
