import type { Reading } from '../core/measurement/reading.ts'
import { type AskedEarlier, readingsInForce } from '../core/record/readings-in-force.ts'
import { firstVersionOf } from '../core/record/version.ts'
import { readableIn } from '../core/requirements/readable-in.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { err, ok, type Result } from '../core/result.ts'
import type { FreeFinding } from '../core/verdicts/free-findings.ts'
import { judgeRun } from '../core/verdicts/judge-run.ts'
import type { Judgement } from '../core/verdicts/verdict.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { type Unusual, unusualInReadings, unusualInRun } from '../formats/range/unusual.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { VersionProblem } from '../words/problems/version.ts'
import { instrumentsOf } from './instruments-of.ts'
import type { LayoutMeans } from './means-of-today.ts'
import { type ReadingCheck, readingCheck } from './reading-problems.ts'
import type { RequiredRun } from './require-by.ts'
import { type RunHistory, type VersionAtHand, versionsOf } from './run-history.ts'
import { checksIn } from './version-checks.ts'

export interface JudgedRun extends RequiredRun {
  /** Everything that was read, in the order that counts. */
  readonly log: readonly Reading[]
  /** Those of the log that answer what the version in force asks. */
  readonly readings: readonly Reading[]
  /** The others, which an earlier version asked: kept and shown, never judged. */
  readonly askedEarlier: readonly AskedEarlier[]
  /** Versions of the run that are at hand, by id. */
  readonly versions: ReadonlyMap<string, VersionAtHand>
  /** The run as it was recorded before runs held their layout, while no version but that of the migration followed. */
  readonly firstAsked: RunFile | null
  /** What was seen that no requirement asks for, in the order that counts. */
  readonly freeFindings: readonly FreeFinding[]
  readonly judgement: Judgement
  /** Requirements judged by a limit that nobody confirmed against a document. */
  readonly unconfirmed: readonly Requirement[]
  /** What of the run file and the readings is seldom right. */
  readonly unusual: readonly Unusual[]
}

/**
 * The judged run; or what is wrong with the readings: one that answers nothing of this run, a choice that is not on
 * offer, an instrument that nobody described, a correction or recheck of something else.
 * @param at  the run with all its versions, where they are at hand, and what one that is not pinned is laid out by: each
 *            reading is then looked at by the version that its person saw
 */
export function judgeReadings(
  file: string,
  required: RequiredRun,
  readings: readonly Reading[],
  at: { readonly history: RunHistory; readonly means: LayoutMeans } | null = null,
  free: readonly FreeFinding[] = [],
): Result<JudgedRun, readonly InputProblem[]> {
  const check = at === null ? checkIn(required) : checkInVersions(at.history, at.means)
  const earlier = new Map<string, string>()
  const problems = readings.flatMap((reading, i): readonly InputProblem[] => {
    const found = check(file, `readings[${i}]`, reading, earlier)
    earlier.set(reading.id, reading.of)
    return found
  })
  if (problems.length > 0) return err(problems)
  return ok(
    at === null
      ? judgeKnown(required, readings, new Map(), null, free)
      : judgeKnown(required, readings, versionsOf(at.history), at.history.firstAsked, free),
  )
}

/** Where only the version in force is at hand: what an earlier one asked was checked when it was taken in. */
function checkIn(required: RequiredRun): ReadingCheck {
  const check = readingCheck(required)
  return (file, place, reading, earlier) => {
    const asked = askedBy(required.run, reading)
    if (asked === 'in force') return check(file, place, reading, earlier)
    return asked === 'earlier' ? [] : [versionProblem(file, place, reading, asked)]
  }
}

function checkInVersions({ first, files }: RunHistory, means: LayoutMeans): ReadingCheck {
  const checkOf = checksIn(first.id, files, means)
  return (file, place, reading, earlier) => {
    const check = checkOf(reading.version)
    if (check === null) return [versionProblem(file, place, reading, { kind: 'version of run' })]
    return check.ok ? check.value(file, place, reading, earlier) : check.error
  }
}

const versionProblem = (file: string, place: string, { version }: Reading, expected: VersionProblem): InputProblem => ({
  file,
  place: `${place}.version`,
  expected,
  found: written(version),
})

/** Which version of the run asked for the reading; or what was expected instead of the one that it names. */
function askedBy({ version }: RunFile, reading: Reading): 'in force' | 'earlier' | VersionProblem {
  if (version === undefined) return reading.version === undefined ? 'in force' : { kind: 'nothing unpinned' }
  const named = reading.version ?? firstVersionOf(version)
  if (named === version.id) return 'in force'
  return version.earlier.some(({ id }) => id === named) ? 'earlier' : { kind: 'version of run' }
}

/**
 * The same for readings that were checked when they were taken in.
 * @param asked   the run as it was recorded before runs held their layout, where only the migration's version followed
 * @param versions  versions of the run that are at hand, by id, also such as the one in force did not come from
 */
export function judgeKnown(
  required: RequiredRun,
  log: readonly Reading[],
  versions: ReadonlyMap<string, VersionAtHand> = new Map(),
  asked: RunFile | null = null,
  free: readonly FreeFinding[] = [],
): JudgedRun {
  const { run, model, requirements } = required
  const { judged: readings, askedEarlier } =
    run.version === undefined
      ? { judged: log, askedEarlier: [] }
      : readingsInForce(run.version, readableIn(required), log, versions)
  const rules = { rule: run.decisionRule, instruments: instrumentsOf(run) }
  const judgement = judgeRun(model, requirements, readings, rules, free)
  return {
    ...required,
    log,
    readings,
    askedEarlier,
    versions,
    firstAsked: run.version === undefined ? run : asked,
    freeFindings: free,
    judgement,
    unconfirmed: requirements.filter(({ confirmation }) => confirmation === 'from memory'),
    unusual: [...unusualInRun(run), ...unusualInReadings(readings, requirements)],
  }
}
