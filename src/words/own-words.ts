import type { cautions } from './en/cautions.ts'
import type { detail } from './en/drawings/detail.ts'
import type { elevation } from './en/drawings/elevation.ts'
import type { figures } from './en/drawings/figures.ts'
import type { run } from './en/drawings/run.ts'
import type { site } from './en/drawings/site.ts'
import type { stakePlan } from './en/drawings/stake-plan.ts'
import type { strip } from './en/drawings/strip.ts'

/**
 * Words that the page shows and that stand in no saying. In English each part of them comes with what shows it, so that a
 * phone fetches no more than it shows; in another language all of them come with the language.
 */
export interface OwnWords {
  readonly cautions: typeof cautions
  readonly detail: typeof detail
  readonly elevation: typeof elevation
  readonly figures: typeof figures
  readonly run: typeof run
  readonly site: typeof site
  readonly stakePlan: typeof stakePlan
  readonly strip: typeof strip
}
