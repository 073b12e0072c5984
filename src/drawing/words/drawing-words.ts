import type { Print } from '../../words/print.ts'
import { detail } from './en/detail.ts'
import { elevation } from './en/elevation.ts'
import { figures } from './en/figures.ts'
import { run } from './en/run.ts'
import { site } from './en/site.ts'
import { stakePlan } from './en/stake-plan.ts'
import { strip } from './en/strip.ts'
import { detail as detailEs } from './es/detail.ts'
import { elevation as elevationEs } from './es/elevation.ts'
import { figures as figuresEs } from './es/figures.ts'
import { run as runEs } from './es/run.ts'
import { site as siteEs } from './es/site.ts'
import { stakePlan as stakePlanEs } from './es/stake-plan.ts'
import { strip as stripEs } from './es/strip.ts'

const en = { detail, elevation, figures, run, site, stakePlan, strip }

/** The drawings' own words: what stands on them in no saying of the model. */
export type DrawingWords = typeof en

const es: DrawingWords = {
  detail: detailEs,
  elevation: elevationEs,
  figures: figuresEs,
  run: runEs,
  site: siteEs,
  stakePlan: stakePlanEs,
  strip: stripEs,
}

/** Those of the language of `print`. */
export const drawingWords = (print: Print): DrawingWords => print.pick({ en, es })
