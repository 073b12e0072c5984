import type { NeedRefusal } from '../../core/need/refusal.ts'
import type { UnitSystem } from '../../core/site/site.ts'
import type { Kinds } from '../kinds.ts'

/** What a site would have to be, and what it is, where its need cannot be computed. */
export type NeedProblem = Kinds<
  'site with a need' | 'site without a need',
  { readonly refusal: NeedRefusal; readonly units: UnitSystem }
>
