import type { SummarisedRun } from '../../operations/summarise-run.ts'
import type { ListWish } from './list-wish.ts'
import { plainText } from './plain-text.ts'

export interface RunGroup {
  readonly project: string
  readonly runs: readonly SummarisedRun[]
}

/** The list of runs as far as it is looked at. */
export interface RunList {
  readonly groups: readonly RunGroup[]
  /** Runs that are as wanted, shown or not. */
  readonly found: number
  readonly all: number
  /** All that there are, in their order. */
  readonly projects: readonly string[]
}

/** The first `most` of the runs that are wanted, and how many there are. */
export function listOf(runs: readonly SummarisedRun[], wish: ListWish, most: number): RunList {
  const groups = chooseRuns(runs, wish)
  return {
    groups: firstOf(groups, most),
    found: groups.reduce((sum, group) => sum + group.runs.length, 0),
    all: runs.length,
    projects: [...new Set(runs.map(({ project }) => project))].sort(),
  }
}

/** The runs that are wanted, by project, each project's in the order that is wanted. */
export function chooseRuns(runs: readonly SummarisedRun[], wish: ListWish): readonly RunGroup[] {
  const words = plainText(wish.search).split(/\s+/)
  const chosen = runs.filter(
    (run) =>
      (run.archived !== null) === wish.archived &&
      (wish.project === null || run.project === wish.project) &&
      (wish.acceptance === null || run.judged?.acceptance.kind === wish.acceptance) &&
      words.every((word) => factsOf(run).words.includes(word)),
  )
  const groups = new Map<string, SummarisedRun[]>()
  for (const run of chosen.sort(orders[wish.sort])) {
    const group = groups.get(run.project)
    if (group === undefined) groups.set(run.project, [run])
    else group.push(run)
  }
  return [...groups].map(([project, runs]) => ({ project, runs })).sort((a, b) => compare(a.project, b.project))
}

/** The first `most` runs of all groups together. */
export function firstOf(groups: readonly RunGroup[], most: number): readonly RunGroup[] {
  let left = most
  return groups.flatMap(({ project, runs }) => {
    const shown = runs.slice(0, left)
    left -= shown.length
    return shown.length === 0 ? [] : [{ project, runs: shown }]
  })
}

/** What a run is found and put in order by; once for each, since a list may have thousands. */
interface Facts {
  readonly words: string
  readonly route: string
  readonly station: number
  readonly visit: number
}

const known = new WeakMap<SummarisedRun, Facts>()

function factsOf(run: SummarisedRun): Facts {
  const facts = known.get(run) ?? {
    words: plainText([run.name, run.route, run.station, run.lastVisit?.by].join(' ')),
    // Route 9 stands before route 14.
    route: run.route === null ? '\uffff' : plainText(run.route).replace(/\d+/g, (digits) => digits.padStart(8, '0')),
    station: run.station === null ? Number.POSITIVE_INFINITY : Number.parseFloat(run.station.replace('+', '')),
    visit: run.lastVisit === null ? Number.NEGATIVE_INFINITY : Date.parse(run.lastVisit.at),
  }
  known.set(run, facts)
  return facts
}

const compare = (a: string | number, b: string | number): number => (a < b ? -1 : a > b ? 1 : 0)

type Order = (a: SummarisedRun, b: SummarisedRun) => number

const byRoute: Order = (a, b) => {
  const [one, other] = [factsOf(a), factsOf(b)]
  return compare(one.route, other.route) || compare(one.station, other.station) || compare(a.name, b.name)
}

const orders: Readonly<Record<ListWish['sort'], Order>> = {
  route: byRoute,
  visit: (a, b) => compare(factsOf(b).visit, factsOf(a).visit) || byRoute(a, b),
  // A run that cannot be judged may hide any number of them.
  findings: (a, b) => compare(findingsIn(b), findingsIn(a)) || byRoute(a, b),
}

const findingsIn = ({ judged }: SummarisedRun): number => judged?.findings ?? Number.POSITIVE_INFINITY
