import type { Highs } from 'highs'
import type { LongitudinalSheet } from '../../src/core/hardware/hardware-sheet.ts'
import type { LayoutRequest, LayoutScore, Obstruction, RunEnd } from '../../src/core/layout/layout.ts'
import {
  clearOfDivided,
  dividedPosts,
  dividedSpaces,
  dividedWithin,
  doubledAfter,
  doubledBefore,
  insideDivided,
  partsFrom,
} from './reduced-rules.ts'
import {
  type Closing,
  closingsOf,
  full,
  goTogether,
  half,
  isOddAdapter,
  mostMoved,
  nestedAfter,
  nestedBefore,
  type ObstructedRow,
  obstructedRows,
  remainder,
  specialPostsFit,
  splicePhase,
  standsClear,
  stockCount,
  usablePanels,
} from './run-rules.ts'
import {
  clearOfStanding,
  drivenInSecond,
  drivenUntil,
  type HungPanel,
  hungBeyond,
  oddHung,
  standingFirst,
  unlawfulHung,
} from './standing-rules.ts'

/** The choice of ends, panels and answers to obstructions as an integer program; places are inches from one origin. */
export interface LayoutProgram {
  readonly system: LongitudinalSheet
  readonly stock: LayoutRequest['stock']
  readonly starts: readonly Start[]
  readonly finishes: readonly Finish[]
  readonly together: (start: Start, finish: Finish) => boolean
  /** Whether a splice of the run may lie at a place, but for the rows' answers. */
  readonly spliceAllowed: (at: number) => boolean
  readonly rows: readonly ObstructedRow[]
  /** Most posts that the answers may move together. */
  readonly mostMoved: number
  /** The last post of the first end. */
  readonly lastPost: number
}

interface Start {
  readonly closing: Closing
  /** Where the panels still to be hung begin. */
  readonly jointAt: number
  /** Panels of the run that hang already. */
  readonly hung: readonly HungPanel[]
  readonly adapterHangs: boolean
}

interface Finish {
  readonly closing: Closing
  readonly jointAt: number
  readonly lastPostAt: number
  /** From origin to origin. */
  readonly railInches: number
}

/** The program of a request with one end fixed, or both; null when an end alone already makes it impossible. */
export function fixedEndProgram(asked: LayoutRequest): LayoutProgram | null {
  const first = standingFirst(asked)
  if (first === null) return null
  const request = { ...asked, first }
  const { system, need } = request
  const [fixed, other] = endsFromFixed(request)
  const place = (at: number): number => (fixed === request.first ? 1 : -1) * (at - fixed.atInches!)
  const stretch = ({ fromInches, toInches }: { readonly fromInches: number; readonly toInches: number }) => {
    const [a, b] = [place(fromInches), place(toInches)]
    return { fromInches: Math.min(a, b), toInches: Math.max(a, b) }
  }
  const inTheWay: readonly Obstruction[] = request.obstructions.map((one) => ({ ...stretch(one), name: one.name }))
  const needed = need === null ? null : stretch(need)
  const parts = partsFrom({ reduced: request.reduced.map((part) => ({ ...part, ...stretch(part) })) }, 0)

  const closings = closingsOf(fixed, system)
  const divided = dividedSpaces(system, parts, closings[0]!.lastPost)
  const standing = drivenUntil(request, closings[0]!, divided)
  const obstructions = clearOfStanding(inTheWay, standing)
  const starts = closings
    .filter(({ isUnit, posts }) => !isUnit || posts.every((at) => standsClear(at, obstructions)))
    .filter(({ countsFrom }) => needed === null || countsFrom === null || countsFrom <= needed.fromInches)
    .filter((closing) => doubledAfter(parts, closing, closing.joint))
    .flatMap((closing): Start[] => {
      const hung = hungBeyond(request, closing)
      if (hung === null) return []
      const adapterHangs = (request.standing?.panels.length ?? 0) >= closing.panels.length
      return [{ closing, hung, adapterHangs, jointAt: hung[hung.length - 1]?.to ?? closing.joint }]
    })
  if (starts.length === 0) return null
  const { lastPost } = starts[0]!.closing
  if (!dividedPosts(divided).every((at) => standsClear(at, obstructions))) return null

  const railOf = (start: Start, closing: Closing): { readonly least: number; readonly most: number } => {
    if (other.atInches !== null) return { least: place(other.atInches), most: place(other.atInches) }
    const joints = start.jointAt + closing.joint
    const covering = needed!.toInches + closing.countsFrom!
    const least = joints + Math.max(0, Math.ceil((covering - joints) / half)) * half
    return { least, most: least + request.mayExtendInches }
  }
  const finishes = closingsOf(other, system).flatMap((closing) => {
    const bounds = starts.map((start) => railOf(start, closing))
    return lattice(closing.joint, Math.max(...bounds.map(({ most }) => most))).flatMap((railInches): Finish[] => {
      const finish = {
        closing,
        railInches,
        jointAt: railInches - closing.joint,
        lastPostAt: railInches - closing.lastPost,
      }
      const covers =
        needed === null || closing.countsFrom === null || railInches - closing.countsFrom >= needed.toInches
      const meets = finish.lastPostAt > lastPost && remainder(finish.lastPostAt - lastPost, full) === 0
      const driven = drivenInSecond(request, closings[0]!, finish.lastPostAt, divided)
      const toDrive = closing.posts.toReversed().slice(Math.max(0, driven))
      const clear = !closing.isUnit || toDrive.every((at) => standsClear(railInches - at, inTheWay))
      const roomForParts =
        dividedWithin(divided, lastPost, finish.lastPostAt) && doubledBefore(parts, closing, finish.jointAt)
      return covers && meets && clear && roomForParts && bounds.some((one) => within(railInches, one)) ? [finish] : []
    })
  })
  if (finishes.length === 0) return null

  return {
    system,
    stock: request.stock,
    starts,
    finishes,
    together: (start, finish) => within(finish.railInches, railOf(start, finish.closing)),
    spliceAllowed: (at) => remainder(at - lastPost, full) === splicePhase(system) || insideDivided(divided, at),
    rows: obstructedRows(
      { system, obstructions, curb: request.curb },
      lastPost,
      Math.max(...finishes.map(({ lastPostAt }) => lastPostAt)),
    ).map(({ posts, answers }) => ({
      posts,
      answers: answers
        .filter((answer) => clearOfDivided(answer, posts, divided))
        .filter(({ special }) => special.every((at) => at > standing)),
    })),
    mostMoved: mostMoved(system),
    lastPost,
  }
}

function endsFromFixed({ first, second }: LayoutRequest): readonly [RunEnd, RunEnd] {
  if (first.atInches !== null) return [first, second]
  if (second.atInches !== null) return [second, first]
  throw new RangeError('one end must be fixed')
}

const within = (rail: number, { least, most }: { readonly least: number; readonly most: number }): boolean =>
  rail >= least && rail <= most

/** Rail lengths that put a joint on the lattice of half post spaces counted from the fixed origin. */
function lattice(joint: number, most: number): number[] {
  const lengths: number[] = []
  for (let rail = joint; rail <= most; rail += half) lengths.push(rail)
  return lengths
}

type Term = readonly [factor: number, variable: string]
interface Constraint {
  readonly terms: readonly Term[]
  readonly sense: '=' | '<='
  readonly right: number
}

/** The best score of the program, its four parts minimized one after the other; null when nothing is lawful. */
export function bestScore(highs: Highs, program: LayoutProgram): LayoutScore | null {
  const { constraints, objectives } = write(program)
  const held: Constraint[] = [...constraints]
  const best = { changedPosts: 0, oddPanels: 0, railInches: 0, pieces: 0 }
  for (const part of ['changedPosts', 'oddPanels', 'railInches', 'pieces'] as const) {
    const terms = objectives[part]
    if (terms.length === 0) continue
    const solution = highs.solve(lpText(terms, held), { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0 })
    if (solution.Status === 'Infeasible') return null
    if (solution.Status !== 'Optimal') throw new Error(`integer program: ${solution.Status}`)
    best[part] = Math.round(solution.ObjectiveValue * 16) / 16
    held.push({ terms, sense: '=', right: best[part] })
  }
  return best
}

function write(program: LayoutProgram) {
  const { starts, finishes, rows } = program
  const startName = (i: number): string => `s${i}`
  const finishName = (i: number): string => `f${i}`
  const answerName = (row: number, i: number): string => `a${row}_${i}`
  const arcs = panelArcs(program)
  const sum = (names: readonly string[], factor = 1): Term[] => names.map((name) => [factor, name])
  const startsAt = (at: number) => starts.flatMap(({ jointAt }, i) => (jointAt === at ? [startName(i)] : []))
  const bareStartsAt = (at: number) =>
    starts.flatMap(({ jointAt, hung }, i) => (jointAt === at && hung.length === 0 ? [startName(i)] : []))
  const finishesAt = (at: number) => finishes.flatMap(({ jointAt }, i) => (jointAt === at ? [finishName(i)] : []))
  const arriving = grouped(arcs, ({ to }) => to)
  const leaving = grouped(arcs, ({ from }) => from)
  const namesAt = (map: typeof arriving, at: number) => (map.get(at) ?? []).map(({ name }) => name)

  const constraints: Constraint[] = [
    { terms: sum(starts.map((_, i) => startName(i))), sense: '=', right: 1 },
    { terms: sum(finishes.map((_, i) => finishName(i))), sense: '=', right: 1 },
  ]
  const add = (terms: readonly Term[], sense: Constraint['sense'], right: number): void => {
    if (terms.length > 0) constraints.push({ terms, sense, right })
  }
  for (const [i, start] of starts.entries())
    for (const [j, finish] of finishes.entries())
      if (!program.together(start, finish)) add(sum([startName(i), finishName(j)]), '<=', 1)

  const places = new Set([...starts, ...finishes].map(({ jointAt }) => jointAt))
  for (const { from, to } of arcs) places.add(from).add(to)
  for (const at of places) {
    const [into, out] = [namesAt(arriving, at), namesAt(leaving, at)]
    add([...sum(into), ...sum(startsAt(at)), ...sum(out, -1), ...sum(finishesAt(at), -1)], '=', 0)
    if (program.spliceAllowed(at)) continue
    if (into.length > 0) add([...sum(into), ...sum(finishesAt(at), -1)], '<=', 0)
    if (out.length > 0) add([...sum(out), ...sum(startsAt(at), -1)], '<=', 0)
  }
  for (const { name, panel, from, to } of arcs)
    if (panel.endOnly) add([[1, name], ...sum([...bareStartsAt(from), ...finishesAt(to)], -1)], '<=', 0)
  for (const [i, start] of starts.entries())
    for (const [k, panel] of start.hung.entries()) {
      const fault = unlawfulHung(program.system, panel, k)
      const ends = panel.to === start.jointAt ? finishesAt(panel.to) : []
      if (fault === 'always') add([[1, startName(i)]], '<=', 0)
      if (fault === 'unless last' || !program.spliceAllowed(panel.to))
        add([[1, startName(i)], ...sum(ends, -1)], '<=', 0)
    }

  for (const inches of new Set([...arcs.map(({ panel }) => panel.inches), ...adaptersOf(program)])) {
    const count = stockCount(program.stock, inches)
    if (count === null) continue
    const used = [
      ...arcs.flatMap(({ panel, name }) => (panel.inches === inches ? [name] : [])),
      ...starts.flatMap(({ closing, adapterHangs }, i) =>
        closing.adapter === inches && !adapterHangs ? [startName(i)] : [],
      ),
      ...finishes.flatMap(({ closing }, i) => (closing.adapter === inches ? [finishName(i)] : [])),
    ]
    add(sum(used), '<=', count)
  }

  const answers = rows.flatMap((row, r) => row.answers.map((answer, i) => ({ r, answer, name: answerName(r, i) })))
  for (const [r, { posts }] of rows.entries()) {
    const reaching = finishes.flatMap(({ lastPostAt }, i) => (lastPostAt > posts[0]! ? [finishName(i)] : []))
    const names = answers.flatMap((one) => (one.r === r ? [one.name] : []))
    add([...sum(names), ...sum(reaching, -1)], '=', 0)
  }
  for (const { answer, name } of answers) {
    const fitting = finishes.flatMap(({ lastPostAt }, i) =>
      specialPostsFit(answer, program.lastPost, lastPostAt) ? [finishName(i)] : [],
    )
    const roomAtFinish = finishes.flatMap(({ closing, jointAt }, i) =>
      nestedBefore(answer, closing, jointAt) ? [finishName(i)] : [],
    )
    const roomAtStart = starts.flatMap(({ closing, jointAt }, i) =>
      nestedAfter(answer, closing, jointAt) ? [startName(i)] : [],
    )
    add([[1, name], ...sum(roomAtFinish, -1)], '<=', 0)
    add([[1, name], ...sum(roomAtStart, -1)], '<=', 0)
    add([[1, name], ...sum(fitting, -1)], '<=', 0)
    for (const at of answer.noSpliceAt) {
      add([...sum(namesAt(arriving, at)), [1, name]], '<=', 1)
      for (const [i, start] of starts.entries()) {
        if (!start.hung.some(({ to }) => to === at)) continue
        add([[1, startName(i)], [1, name], ...sum(at === start.jointAt ? finishesAt(at) : [], -1)], '<=', 1)
      }
    }
  }
  if (Number.isFinite(program.mostMoved))
    add(sum(answers.filter(({ answer }) => answer.moves).map(({ name }) => name)), '<=', program.mostMoved)
  for (const one of answers)
    for (const two of answers)
      if (one.r < two.r && !goTogether(one.answer, two.answer)) add(sum([one.name, two.name]), '<=', 1)

  const odd = ({ closing }: Start | Finish): boolean => isOddAdapter(program.system, closing.adapter)
  const pieces = ({ closing }: Start | Finish): number => closing.panels.length
  const objectives: Readonly<Record<keyof LayoutScore, readonly Term[]>> = {
    changedPosts: answers.map(({ answer, name }) => [answer.changed, name]),
    oddPanels: [
      ...sum(arcs.flatMap(({ panel, name }) => (panel.odd ? [name] : []))),
      ...starts.map((start, i): Term => [(odd(start) ? 1 : 0) + oddHung(program.system, start.hung), startName(i)]),
      ...sum(finishes.flatMap((finish, i) => (odd(finish) ? [finishName(i)] : []))),
    ],
    railInches: finishes.map(({ railInches }, i) => [railInches, finishName(i)]),
    pieces: [
      ...sum(arcs.map(({ name }) => name)),
      ...starts.map((start, i): Term => [pieces(start) + start.hung.length, startName(i)]),
      ...finishes.map((finish, i): Term => [pieces(finish), finishName(i)]),
    ],
  }
  return { constraints, objectives }
}

const adaptersOf = ({ starts, finishes }: LayoutProgram): number[] =>
  [...starts, ...finishes].flatMap(({ closing }) => (closing.adapter === null ? [] : [closing.adapter]))

function grouped<T>(items: readonly T[], by: (item: T) => number): ReadonlyMap<number, readonly T[]> {
  const groups = new Map<number, T[]>()
  for (const item of items) groups.set(by(item), [...(groups.get(by(item)) ?? []), item])
  return groups
}

/** A panel of each length at each place where it could hang between the first joint and the last. */
function panelArcs(program: LayoutProgram) {
  const panels = usablePanels(program)
  const [startAt, finishAt] = [program.starts, program.finishes].map((ends) => new Set(ends.map((end) => end.jointAt)))
  const begin = Math.min(...startAt!)
  const end = Math.max(...finishAt!)
  const arcs: { name: string; panel: (typeof panels)[number]; from: number; to: number }[] = []
  for (let from = begin; from < end; from += half) {
    if (!program.spliceAllowed(from) && !startAt!.has(from)) continue
    for (const [k, panel] of panels.entries()) {
      const to = from + panel.inches
      if (to > end || (!program.spliceAllowed(to) && !finishAt!.has(to))) continue
      arcs.push({ name: `p${k}_${(from - begin) / half}`, panel, from, to })
    }
  }
  return arcs
}

/** The program in LP format, a few terms to a line; every variable is a yes or no. */
function lpText(objective: readonly Term[], constraints: readonly Constraint[]): string {
  const lines = ['Minimize', ` best: ${expression(objective)}`, 'Subject To']
  for (const [i, { terms, sense, right }] of constraints.entries())
    lines.push(` c${i}: ${expression(terms)} ${sense} ${right}`)
  const names = new Set(constraints.flatMap(({ terms }) => terms.map(([, name]) => name)))
  lines.push('Binary', ...[...names].map((name) => ` ${name}`), 'End')
  return lines.join('\n')
}

function expression(terms: readonly Term[]): string {
  const written = terms
    .filter(([factor]) => factor !== 0)
    .map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`)
  const lines: string[] = []
  for (let i = 0; i < written.length; i += 8) lines.push(written.slice(i, i + 8).join(' '))
  return lines.join('\n   ')
}
