import type { OwnWords } from '../own-words.ts'
import { cautions } from './cautions.ts'
import { detail } from './drawings/detail.ts'
import { elevation } from './drawings/elevation.ts'
import { figures } from './drawings/figures.ts'
import { run } from './drawings/run.ts'
import { site } from './drawings/site.ts'
import { stakePlan } from './drawings/stake-plan.ts'
import { strip } from './drawings/strip.ts'

export const ownWords: OwnWords = { cautions, detail, elevation, figures, run, site, stakePlan, strip }
