import { type Draft, unitsOf } from '../form/draft.ts'
import { type SiteWords, siteEn } from '../messages/site-en.ts'
import { siteWords } from '../messages.ts'

/** The words of this part of the page, in the language in force. */
export const words = (): SiteWords => siteWords ?? siteEn

export type SiteSection = keyof SiteWords['sections']

/** Name of the unit of lengths in the draft. */
export const longOf = (draft: Draft): string => (unitsOf(draft) === 'us' ? words().units.ft : words().units.m)
