import type { RequirementSaying } from '../core/requirements/requirement-saying.ts'
import type { Print } from './print.ts'

type OfTopic = Extract<RequirementSaying, { readonly of: string }>
type About<K extends OfTopic['kind']> = Extract<OfTopic, { readonly kind: K }>

/** One printer for each topic of a kind of saying; text alone where nothing has to be printed in it. */
export type ByTopic<K extends OfTopic['kind']> = {
  readonly [T in About<K>['of']]: string | ((saying: Extract<About<K>, { readonly of: T }>, print: Print) => string)
}

/** The printer of a kind from those of its topics. */
export const byTopic =
  <K extends OfTopic['kind']>(texts: ByTopic<K>) =>
  (saying: About<K>, print: Print): string => {
    const text = texts[saying.of as About<K>['of']] as string | ((saying: About<K>, print: Print) => string)
    return typeof text === 'string' ? text : text(saying, print)
  }
