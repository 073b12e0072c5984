import type { FitCheck } from '../../core/fit/fit.ts'
import { findNeed, type Need } from '../../core/need/need.ts'
import type { Site } from '../../core/site/site.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { readSite } from '../../formats/site/read-site.ts'
import { type NeedReport, needProblem, reportNeed } from '../../operations/compute-need.ts'
import { layOutRun } from '../../operations/lay-out-run.ts'
import { runForNeed } from '../../operations/run-for-need.ts'
import type { Draft } from './draft.ts'

/** All that follows from what is written of a site. */
export interface SolvedSite {
  /** Null while something written is wrong; `problems` then say what. */
  readonly site: Site | null
  /** Null also where a need cannot be computed; `problems` then say why. */
  readonly solution: Solution | null
  readonly problems: readonly InputProblem[]
}

export interface Solution {
  readonly need: Need
  readonly report: NeedReport
  /** Each once, also where both ends are of one sheet. */
  readonly checks: readonly FitCheck[]
  /** Why the run that the need asks for cannot be laid out. */
  readonly layoutProblems: readonly InputProblem[]
}

/** The name of the file in problems, which a page does not show. */
const file = 'site'

export function solveSite(draft: Draft): SolvedSite {
  const read = readSite(file, JSON.stringify(draft))
  if (!read.ok) return { site: null, solution: null, problems: read.error }
  const site = read.value
  const need = findNeed(site)
  if (!need.ok) return { site, solution: null, problems: [needProblem(file, need.error, site.units)] }
  const report = reportNeed(site, need.value)
  const layoutProblems = problemsOfLayout(site, need.value, report)
  const checks = [...new Map(report.checks.map((check) => [JSON.stringify(check), check])).values()]
  return { site, solution: { need: need.value, report, checks, layoutProblems }, problems: [] }
}

function problemsOfLayout(site: Site, need: Need, { installed }: NeedReport): readonly InputProblem[] {
  const run = installed === null ? runForNeed(site, need) : null
  const laid = run === null ? null : layOutRun(file, run, 1)
  return laid === null || laid.ok ? [] : laid.error
}
