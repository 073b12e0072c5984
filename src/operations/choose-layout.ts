import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { runPanelRole } from '../core/layout/build-layout.ts'
import { countedLayout } from '../core/layout/counted-layout.ts'
import type { CountedPieces, Layout, LayoutRequest, PostClearance, RunEnd } from '../core/layout/layout.ts'
import { postClearance } from '../core/layout/post-clearance.ts'
import type { LayoutProblem } from '../core/layout/solve-layout.ts'
import { err, ok, type Result } from '../core/result.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { longestRun } from '../formats/range/range-faults.ts'
import type { RunFile, RunFileEnd } from '../formats/run/run-file.ts'
import type { LayoutMeans } from './means-of-today.ts'

type Problems = readonly InputProblem[]

/**
 * The layout that the run is pinned to; else what was counted, the one that its file decided on, or the best one when it
 * decides on none.
 * @param means  null where only pinned runs are expected: the page fetches the others only when there is one
 */
export function chooseLayout(
  file: string,
  run: RunFile,
  means: LayoutMeans | null,
): Result<{ readonly request: LayoutRequest; readonly layout: Layout }, Problems> {
  if (means === null && run.version === undefined) {
    const expected = { kind: 'this value', value: '"lapwise-run/2"' } as const
    return err([{ file, place: 'format', expected, found: written('lapwise-run/1') }])
  }
  const request = layoutRequest(file, run, means)
  if (!request.ok) return request
  if (run.version !== undefined) return ok({ request: request.value, layout: run.version.layout })
  const { decision, counted } = run
  const { solve } = means!
  if (counted !== undefined) {
    const ends = countedEnds(request.value, counted)
    return ok({ request: ends, layout: lawfulAsCounted(ends, counted, solve) ?? countedLayout(ends, counted) })
  }
  const solved = solve(decision === null ? request.value : decidedRequest(request.value, decision))
  if (!solved.ok) return err([layoutInputProblem(file, solved.error)])
  for (const layout of solved.value.runs) {
    if (decision === null) return ok({ request: request.value, layout })
    if (layout.panels.length > decision.panels.length) break
    if (matches(layout, decision)) return ok({ request: request.value, layout: withoutHung(layout, request.value) })
  }
  const reasons = solved.value.refused()
  if (decision === null)
    return err([{ file, place: '', expected: { kind: 'lawful run' }, found: { kind: 'no lawful run', reasons } }])
  const { panels, postOneAtInches: fromInches } = decision
  const found = { kind: 'decided layout', panels, fromInches, reasons } as const
  return err([{ file, place: 'decision', expected: { kind: 'lawful layout' }, found }])
}

/** A counted run begins at its datum where the file does not say otherwise, and ends where its panels do. */
function countedEnds(request: LayoutRequest, { panels }: CountedPieces): LayoutRequest {
  const from = request.first.atInches ?? 0
  const to = panels.reduce((sum, inches) => sum + inches, from)
  return { ...request, first: { ...request.first, atInches: from }, second: { ...request.second, atInches: to } }
}

/** The lawful layout that has exactly the pieces that were counted; null where none has. */
function lawfulAsCounted(
  request: LayoutRequest,
  { panels, posts }: CountedPieces,
  solve: LayoutMeans['solve'],
): Layout | null {
  const { first } = request
  if (first.kind !== 'unit') return null
  const postOneAtInches = first.atInches! + first.sheet.posts[0]!.along
  const decision = { postOneAtInches, panels }
  const solved = solve(decidedRequest({ ...request, need: null }, decision))
  if (!solved.ok) return null
  for (const layout of solved.value.runs) {
    if (layout.panels.length > panels.length) break
    if (matches(layout, decision) && hasPosts(layout, posts)) return withoutHung(layout, request)
  }
  return null
}

const hasPosts = ({ posts }: Layout, counted: CountedPieces['posts']): boolean =>
  typeof counted === 'number'
    ? posts.length === counted
    : posts.length === counted.length && posts.every(({ alongInches }, i) => alongInches === counted[i])

type Decision = NonNullable<RunFile['decision']>

/** The request with post 1 and the panels up to the second end unit held to what was decided. */
function decidedRequest(request: LayoutRequest, { postOneAtInches, panels }: Decision): LayoutRequest {
  const { second } = request
  const atSecond =
    second.kind === 'unit' ? second.sheet.panels.own.length + Math.min(1, second.sheet.panels.adapters.length) : 0
  const { postsDriven = 0, leftOutAtInches } = request.standing ?? {}
  const hung = panels.slice(0, Math.max(0, panels.length - atSecond))
  return {
    ...request,
    standing: { postOneAtInches, panels: hung, postsDriven, leftOutAtInches },
  }
}

/** Decided panels do not hang yet, but for those that the run file says stand. */
function withoutHung(layout: Layout, { system, standing }: LayoutRequest): Layout {
  const hung = standing?.panels.length ?? 0
  const panels = layout.panels.map((panel) =>
    panel.role === 'hung' && panel.number > hung ? { ...panel, role: runPanelRole(system, panel.inches) } : panel,
  )
  return { ...layout, panels }
}

const matches = (layout: Layout, decision: Decision): boolean =>
  layout.postOneAtInches === decision.postOneAtInches &&
  layout.panels.length === decision.panels.length &&
  layout.panels.every((panel, i) => panel.inches === decision.panels[i])

/** @param means  of a run that is not pinned; one that is brings all of its sheets, and never looks on the shelf */
export function layoutRequest(
  file: string,
  run: RunFile,
  means: Pick<LayoutMeans, 'shelf' | 'keepsClear'> | null,
): Result<LayoutRequest, Problems> {
  const own = run.sheets.map((sheet) => [sheet.id, sheet] as const)
  const shelf = new Map([...(run.version === undefined && means !== null ? means.shelf : []), ...own])
  const problems: InputProblem[] = []
  const system = shelf.get(run.system)
  if (system?.kind !== 'longitudinal')
    problems.push(unknownSheet(file, 'system', run.system, shelf, (sheet) => sheet.kind === 'longitudinal'))
  const ends = [run.first, run.second].map((end, i) => {
    const sheet = end.kind === 'unit' ? shelf.get(end.sheet) : undefined
    if (end.kind === 'unit' && (sheet === undefined || sheet.kind === 'longitudinal')) {
      problems.push(
        unknownSheet(
          file,
          `${i === 0 ? 'first' : 'second'}.sheet`,
          end.sheet,
          shelf,
          (one) => one.kind !== 'longitudinal',
        ),
      )
    }
    return runEnd(end, sheet)
  })
  if (problems.length > 0 || system?.kind !== 'longitudinal') return err(problems)
  const { need, stock, obstructions, curb, reduced, standing, mayExtendInches } = run
  return ok({
    system,
    first: ends[0]!,
    second: ends[1]!,
    need,
    stock,
    obstructions,
    postClearance: clearanceOf(run, means),
    curb,
    reduced,
    standing,
    mayExtendInches,
  })
}

/** What posts are laid out by; nothing where what stands was counted, or where a run of before states nothing. */
function clearanceOf(
  { clearanceInches, counted }: RunFile,
  means: Pick<LayoutMeans, 'keepsClear'> | null,
): PostClearance | undefined {
  if (counted !== undefined) return undefined
  return clearanceInches === undefined && !means?.keepsClear ? undefined : postClearance(clearanceInches ?? null)
}

function runEnd(end: RunFileEnd, sheet: HardwareSheet | undefined): RunEnd | null {
  if (end.kind !== 'unit') return end
  return sheet === undefined || sheet.kind === 'longitudinal' ? null : { kind: 'unit', sheet, atInches: end.atInches }
}

function unknownSheet(
  file: string,
  place: string,
  found: string,
  shelf: ReadonlyMap<string, HardwareSheet>,
  fits: (sheet: HardwareSheet) => boolean,
): InputProblem {
  const ids = [...shelf.values()].filter(fits).map(({ id }) => id)
  return { file, place, expected: { kind: 'sheet id', ids }, found: written(found) }
}

export function layoutInputProblem(file: string, problem: LayoutProblem): InputProblem {
  switch (problem.kind) {
    case 'need missing':
      return { file, place: 'need', expected: { kind: 'stretch to shield' }, found: { kind: 'nothing' } }
    case 'need reversed':
      return {
        file,
        place: 'need',
        expected: { kind: 'from before to' },
        found: { kind: 'stretch', fromInches: problem.fromInches, toInches: problem.toInches },
      }
    case 'bridge position missing':
      return { file, place: `${problem.end}.at`, expected: { kind: 'place of bridge' }, found: { kind: 'nothing' } }
    case 'too long':
      return {
        file,
        place: 'need',
        expected: longestRun,
        found: { kind: 'inches', inches: problem.inches },
      }
    case 'too many posts':
      return {
        file,
        place: 'reduced',
        expected: { kind: 'posts at most', posts: problem.most },
        found: { kind: 'posts', posts: problem.posts },
      }
    case 'unit does not join':
      return {
        file,
        place: 'system',
        expected: { kind: 'joined system', unit: problem.unit, systems: problem.joins },
        found: { kind: 'system named', system: problem.system },
      }
  }
}
