import type { SummarisedRun } from '../../operations/summarise-run.ts'

export const sorts = ['route', 'visit', 'findings'] as const
export const acceptances = ['acceptable', 'acceptable except', 'not acceptable', 'not yet known'] as const

/** What of the list somebody wants to see. */
export interface ListWish {
  /** Words that all have to be found in name, route, station or who was there last. */
  readonly search: string
  /** Null for every state. */
  readonly acceptance: (typeof acceptances)[number] | null
  /** Null for every project. */
  readonly project: string | null
  /** Those put away, instead of those in use. */
  readonly archived: boolean
  readonly sort: (typeof sorts)[number]
}

export interface RunGroup {
  readonly project: string
  readonly runs: readonly SummarisedRun[]
}

/** The runs that are wanted, by project, each project's in the order that is wanted. */
export function chooseRuns(runs: readonly SummarisedRun[], wish: ListWish): readonly RunGroup[] {
  const words = plain(wish.search).split(/\s+/)
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

/** The wish in an address; what is not said there, or not known, is as at the start. */
export function readWish(search: string): ListWish {
  const said = new URLSearchParams(search)
  return {
    search: said.get('search') ?? '',
    acceptance: acceptances.find((one) => one === said.get('acceptance')) ?? null,
    project: said.get('project'),
    archived: said.has('archived'),
    sort: sorts.find((one) => one === said.get('sort')) ?? 'route',
  }
}

/** The same as the end of an address: empty, or with its question mark. */
export function printWish({ search, acceptance, project, archived, sort }: ListWish): string {
  const said = new URLSearchParams({
    ...(search === '' ? {} : { search }),
    ...(acceptance === null ? {} : { acceptance }),
    ...(project === null ? {} : { project }),
    ...(archived ? { archived: '' } : {}),
    ...(sort === 'route' ? {} : { sort }),
  }).toString()
  return said === '' ? '' : `?${said}`
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
    words: plain([run.name, run.route, run.station, run.lastVisit?.by].join(' ')),
    // Route 9 stands before route 14.
    route: run.route === null ? '\uffff' : plain(run.route).replace(/\d+/g, (digits) => digits.padStart(8, '0')),
    station: run.station === null ? Number.POSITIVE_INFINITY : Number.parseFloat(run.station.replace('+', '')),
    visit: run.lastVisit === null ? Number.NEGATIVE_INFINITY : Date.parse(run.lastVisit.at),
  }
  known.set(run, facts)
  return facts
}

/** Without case and accents, as somebody types it in a hurry. */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim()

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
