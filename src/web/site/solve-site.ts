import type { FitCheck } from '../../core/fit/fit-check.ts'
import { findNeed, type Need } from '../../core/need/need.ts'
import type { Site } from '../../core/site/site.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { once } from '../../formats/once.ts'
import type { MadeOf } from '../../formats/run/made-of.ts'
import { siteFromValue } from '../../formats/site/read-site.ts'
import { type NeedReport, needProblem, reportNeed } from '../../operations/compute-need.ts'
import { layOutRun } from '../../operations/lay-out-run.ts'
import { runForNeed } from '../../operations/run-for-need.ts'
import type { Draft } from '../form/draft.ts'

/** All that follows from what is written of a site. */
export interface SolvedSite {
  /** Null while something written is wrong; `problems` then say what. */
  readonly site: Site | null
  /** Null also where it cannot be computed; `problems` then say why. */
  readonly need: Need | null
  /** Computed when first asked for, which takes as long as all the rest; null where there is no need. */
  readonly results: (() => SiteResults) | null
  readonly problems: readonly InputProblem[]
}

/** What follows from a need. */
export interface SiteResults {
  readonly report: NeedReport
  /** Each once, also where both ends are of one sheet. */
  readonly checks: readonly FitCheck[]
  /** Why the run that the need asks for cannot be laid out. */
  readonly layoutProblems: readonly InputProblem[]
}

/** The name of the file in problems, which a page does not show. */
const file = 'site'

export function solveSite(draft: Draft): SolvedSite {
  const read = siteFromValue(file, draft)
  if (!read.ok) return { site: null, need: null, results: null, problems: read.error }
  const site = read.value
  const need = findNeed(site)
  if (!need.ok) return { site, need: null, results: null, problems: [needProblem(file, need.error, site.units)] }
  return { site, need: need.value, results: once(() => resultsOf(draft, site, need.value)), problems: [] }
}

function resultsOf(draft: Draft, site: Site, need: Need): SiteResults {
  const report = reportNeed(site, need, draft as unknown as MadeOf['site'])
  const checks = [...new Map(report.checks.map((check) => [JSON.stringify(check), check])).values()]
  return { report, checks, layoutProblems: problemsOfLayout(site, need, report) }
}

function problemsOfLayout(site: Site, need: Need, { installed }: NeedReport): readonly InputProblem[] {
  const run = installed === null ? runForNeed(site, need) : null
  const laid = run === null ? null : layOutRun(file, run, 1)
  return laid === null || laid.ok ? [] : laid.error
}
