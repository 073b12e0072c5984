import type { Highs } from 'highs'
import type { LayoutRequest, LayoutScore } from '../../src/core/layout/layout.ts'
import { bestScore, type LayoutProgram } from './layout-program.ts'
import {
  clearOfDivided,
  type DividedSpace,
  dividedPosts,
  dividedSpaces,
  dividedWithin,
  doubledAfter,
  doubledBefore,
  insideDivided,
  partsFrom,
} from './reduced-rules.ts'
import {
  type Answer,
  type Closing,
  closingsOf,
  full,
  goTogether,
  half,
  isOddAdapter,
  mostMoved,
  nestedAfter,
  nestedBefore,
  obstructedRows,
  remainder,
  specialPostsFit,
  splicePhase,
  standsClear,
} from './run-rules.ts'

/** Posts and ends settled; how many posts that changes, and what is left to ask of the panels. */
interface Settled {
  readonly start: Closing
  readonly finish: Closing
  readonly railInches: number
  readonly changedPosts: number
  readonly noSpliceAt: readonly number[]
  readonly divided: readonly DividedSpace[]
}

/** Panel scores already found, by what they depend on. */
export type PanelScores = Map<string, LayoutScore | null>

/**
 * Exhaustive enough: a post is clear on the very edge, so what is lawful at all is lawful where a post, or a post moved
 * its utmost, meets an edge, where a post or a joint meets an edge of a reduced part, or at an end of the slide; with edges,
 * needs and that utmost in whole inches and posts 37.5 in or 75 in apart, these lie on half inches; at quarter spacing,
 * 18.75 in apart, on quarter inches.
 */
const slideStep = ({ reduced }: LayoutRequest): number =>
  reduced.some(({ spacing }) => spacing === 'quarter') ? 0.25 : 0.5

/**
 * The best score of a run with both ends free: every length, every slide on the half-inch grid and every answer to
 * what is obstructed there, one by one; only the panels are left to the integer program.
 */
export function bestSlidingScore(highs: Highs, request: LayoutRequest, known: PanelScores): LayoutScore | null {
  const settled = [...settledRuns(request).values()].sort(
    (a, b) =>
      a.changedPosts - b.changedPosts ||
      oddAdapters(request, a) - oddAdapters(request, b) ||
      a.railInches - b.railInches,
  )
  let best: LayoutScore | null = null
  for (const one of settled) {
    const least = { changedPosts: one.changedPosts, oddPanels: oddAdapters(request, one), railInches: one.railInches }
    if (best !== null && isBefore(best, { ...least, pieces: 0 })) continue
    const panels = panelScore(highs, request, one, known)
    if (panels === null) continue
    const score = { ...panels, changedPosts: one.changedPosts }
    if (best === null || isBefore(score, best)) best = score
  }
  return best
}

function isBefore(a: LayoutScore, b: LayoutScore): boolean {
  for (const part of ['changedPosts', 'oddPanels', 'railInches', 'pieces'] as const)
    if (a[part] !== b[part]) return a[part] < b[part]
  return false
}

const oddAdapters = ({ system }: LayoutRequest, { start, finish }: Settled): number =>
  [start, finish].filter(({ adapter }) => isOddAdapter(system, adapter)).length

function settledRuns(request: LayoutRequest): ReadonlyMap<string, Settled> {
  const { system } = request
  const need = request.need!
  const least = new Map<string, Settled>()
  for (const start of closingsOf(request.first, system)) {
    for (const finish of closingsOf(request.second, system)) {
      const joints = start.joint + finish.joint
      const covering = start.countsFrom! + finish.countsFrom! + need.toInches - need.fromInches
      const shortest = joints + Math.max(0, Math.ceil((covering - joints) / half)) * half
      for (let railInches = shortest; railInches <= shortest + request.mayExtendInches; railInches += half) {
        const between = railInches - finish.lastPost - start.lastPost
        if (between <= 0 || remainder(between, full) !== 0) continue
        const last = need.fromInches - start.countsFrom!
        for (let at = need.toInches + finish.countsFrom! - railInches; at <= last; at += slideStep(request)) {
          const divided = dividedAt(request, start, finish, at, railInches)
          if (divided === null) continue
          for (const answers of postAnswers(request, start, finish, at, railInches, divided)) {
            const noSpliceAt = answers.flatMap((answer) => answer.noSpliceAt.map((post) => post - at))
            const forbidden = noSpliceAt.filter(
              (post) => remainder(post - start.lastPost, full) === splicePhase(system),
            )
            const changedPosts = answers.reduce((sum, { changed }) => sum + changed, 0)
            const spaces = divided.map(({ from, to, into }) => ({ from: from - at, to: to - at, into }))
            const key = [
              [start.adapter, finish.adapter, railInches],
              forbidden,
              spaces.map(({ from, into }) => [from, into]),
            ].join(';')
            if (changedPosts >= (least.get(key)?.changedPosts ?? Number.POSITIVE_INFINITY)) continue
            least.set(key, { start, finish, railInches, changedPosts, noSpliceAt: forbidden, divided: spaces })
          }
        }
      }
    }
  }
  return least
}

/** The spaces to be divided with the first origin at `at`; null where they or the doubled rail cannot be had there. */
function dividedAt(
  request: LayoutRequest,
  start: Closing,
  finish: Closing,
  at: number,
  rail: number,
): readonly DividedSpace[] | null {
  const { system, obstructions } = request
  const parts = partsFrom(request, 0)
  if (parts.length === 0) return []
  const [from, to] = [at + start.lastPost, at + rail - finish.lastPost]
  const divided = dividedSpaces(system, parts, from)
  const lawful =
    dividedWithin(divided, from, to) &&
    dividedPosts(divided).every((post) => standsClear(post, obstructions)) &&
    doubledAfter(parts, start, at + start.joint) &&
    doubledBefore(parts, finish, at + rail - finish.joint)
  return lawful ? divided : null
}

/** Every lawful set of answers to what is obstructed with the first origin at `at`; places are from the datum. */
function postAnswers(
  request: LayoutRequest,
  start: Closing,
  finish: Closing,
  at: number,
  rail: number,
  divided: readonly DividedSpace[],
): readonly (readonly Answer[])[] {
  const { obstructions, system } = request
  const units = [...start.posts.map((post) => at + post), ...finish.posts.map((post) => at + rail - post)]
  if (!units.every((post) => standsClear(post, obstructions))) return []
  const [from, to] = [at + start.lastPost, at + rail - finish.lastPost]
  let chosen: readonly (readonly Answer[])[] = [[]]
  for (const row of obstructedRows(request, from, to)) {
    const fitting = row.answers.filter(
      (answer) =>
        specialPostsFit(answer, from, to) &&
        clearOfDivided(answer, row.posts, divided) &&
        nestedAfter(answer, start, at + start.joint) &&
        nestedBefore(answer, finish, at + rail - finish.joint),
    )
    chosen = chosen.flatMap((before) =>
      fitting.filter((answer) => before.every((one) => goTogether(one, answer))).map((answer) => [...before, answer]),
    )
  }
  return chosen.filter((answers) => answers.filter(({ moves }) => moves).length <= mostMoved(system))
}

function panelScore(
  highs: Highs,
  { system, stock }: LayoutRequest,
  { start, finish, railInches, noSpliceAt, divided }: Settled,
  known: PanelScores,
): LayoutScore | null {
  const ends = [start, finish].map(({ joint, panels }) => [joint, panels])
  const key = JSON.stringify([system.id, stock, ends, railInches, noSpliceAt, divided])
  const before = known.get(key)
  if (before !== undefined) return before
  const program: LayoutProgram = {
    system,
    stock,
    starts: [{ closing: start, jointAt: start.joint, hung: [], adapterHangs: false }],
    finishes: [
      { closing: finish, jointAt: railInches - finish.joint, lastPostAt: railInches - finish.lastPost, railInches },
    ],
    together: () => true,
    spliceAllowed: (at) =>
      (remainder(at - start.lastPost, full) === splicePhase(system) || insideDivided(divided, at)) &&
      !noSpliceAt.includes(at),
    rows: [],
    mostMoved: Number.POSITIVE_INFINITY,
    lastPost: start.lastPost,
  }
  const score = bestScore(highs, program)
  known.set(key, score)
  return score
}
