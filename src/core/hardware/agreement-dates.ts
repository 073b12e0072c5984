import type { AgreementCategory, Confirmation } from './hardware-sheet.ts'

export interface AgreementDate {
  readonly category: AgreementCategory
  /** Contracts let after this day need MASH 2016 hardware; ISO date. */
  readonly lastLetting: string
  readonly confirmation: Confirmation
}

export const agreementSource = {
  title: 'AASHTO/FHWA joint implementation agreement for MASH 2016, by letting date',
  edition: 'memorandum of 7 January 2016 with the later list of memoranda',
}

/**
 * New permanent installations and full replacements on the National Highway System.
 * @source FHWA memorandum of 7 January 2016, its dates for all four classes as quoted in PennDOT, MASH Planning and
 * Implementation (Transportation Engineering and Safety Conference, 2016)
 */
const agreementDates: readonly AgreementDate[] = [
  { category: 'W-beam barrier', lastLetting: '2017-12-31', confirmation: 'published' },
  { category: 'W-beam terminal', lastLetting: '2018-06-30', confirmation: 'published' },
  { category: 'transition', lastLetting: '2019-12-31', confirmation: 'published' },
  { category: 'other longitudinal barrier', lastLetting: '2019-12-31', confirmation: 'published' },
]

export const agreementDateOf = (wanted: AgreementCategory): AgreementDate =>
  agreementDates.find(({ category }) => category === wanted)!
