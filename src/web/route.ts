import { useEffect, useState } from 'preact/hooks'
import { hasServer } from './has-server.ts'

export const panes = [
  'walk',
  'findings',
  'not-proven',
  'readings',
  'day',
  'sign-off',
  'record',
  'layout',
  'scene',
] as const
export type Pane = (typeof panes)[number]

/** What is shown of a sheet: what it states, the form that changes it, another beside it, its texts in another language. */
const shelfParts = ['statements', 'edit', 'compare', 'texts'] as const
export type ShelfPart = (typeof shelfParts)[number]

/** Parts of practice that are about no single drill. */
const drillsParts = ['drills', 'lesson', 'class'] as const
export type DrillsPart = (typeof drillsParts)[number]

/** What is shown of a practice run: nothing that is signed, sent or handed on. */
export const practicePanes: readonly Pane[] = ['walk', 'findings', 'not-proven', 'readings', 'scene']

export type Route =
  | { readonly view: 'runs' }
  | {
      readonly view: 'run'
      readonly run: string
      readonly pane: Pane
      /** Id of the requirement that is open. */
      readonly open: string | null
      /** What is read for it, when that is not the requirement itself: an offset or position that it is computed from. */
      readonly reading: string | null
      /** Id of the place at which something was seen that is to be noted. */
      readonly seenAt: string | null
      /** Whether it is a run to practise on, which is kept in the store of practice. */
      readonly isPractice: boolean
    }
  /** Practice: the drills of this device, or another part of it. */
  | { readonly view: 'drills'; readonly part: DrillsPart }
  /** The end of a drill, and what was hidden in it. */
  | { readonly view: 'debrief'; readonly run: string }
  /** From what stands in front of somebody to a run. */
  | { readonly view: 'check' }
  /** A run that is laid out from nothing. */
  | { readonly view: 'lay-out' }
  /** What is asked of a run, to be changed. */
  | {
      readonly view: 'edit'
      readonly run: string
      /** Id of the post or panel from which all is laid out anew; whether that post could not go there. */
      readonly from: string | null
      readonly isBlocked: boolean
    }
  /** The site being worked on, and its need. */
  | { readonly view: 'need' }
  /** What was recorded at another address, or in another store of this device, comes over. */
  | { readonly view: 'bring-over' }
  /** The hardware sheets at hand, or one of them. */
  | {
      readonly view: 'shelf'
      readonly sheet: string | null
      readonly part: ShelfPart
      /** Id and edition of what the sheet is compared with. */
      readonly beside: string | null
    }
  /** The words of the trade. */
  | {
      readonly view: 'glossary'
      /** Id of the one that is sought. */
      readonly word: string | null
    }
  /** Every part of the page in every state; no link leads there. */
  | { readonly view: 'gallery' }
  | { readonly view: 'nothing' }

/** What the address in force shows. */
export function routeHere(): Route {
  const { path, search } = addressHere()
  return parseRoute(path, search)
}

/**
 * Path and query of the view that is shown; the query begins with `?` or is empty. Without a server both stand in the
 * fragment: a host that only hands out files has nothing at any other path, and is not told who looks at what.
 */
export function addressHere(): { readonly path: string; readonly search: string } {
  if (hasServer) return { path: location.pathname, search: location.search }
  const { pathname, search } = new URL(location.hash.startsWith('#/') ? location.hash.slice(1) : '/', location.origin)
  return { path: pathname, search }
}

/** What an address shows; `search` begins with `?` or is empty. */
export function parseRoute(path: string, search: string): Route {
  const words = path.split('/').filter((word) => word !== '')
  if (words.length === 0) return { view: 'runs' }
  const single = (['need', 'check', 'lay-out', 'bring-over', 'gallery'] as const).find(
    (one) => words.length === 1 && words[0] === one,
  )
  if (single !== undefined) return { view: single }
  if (words[0] === 'drills') return practiceRoute(words.slice(1), search)
  const [place, run, pane = 'walk', ...rest] = words.map((word) => decodeURIComponent(word))
  const asked = new URLSearchParams(search)
  if (words.length === 1 && place === 'glossary') return { view: 'glossary', word: asked.get('word') }
  const part = shelfParts.find((one) => one === (words[2] ?? 'statements'))
  if (words[0] === 'shelf' && words.length <= 3 && part !== undefined)
    return {
      ...{ view: 'shelf', part, beside: asked.get('beside') },
      sheet: words[1] === undefined ? null : decodeURIComponent(words[1]),
    }
  if (place === 'runs' && run !== undefined && pane === 'edit')
    return { view: 'edit', run, from: asked.get('from'), isBlocked: asked.has('blocked') }
  const known = panes.find((one) => one === pane)
  if (place !== 'runs' || run === undefined || known === undefined) return { view: 'nothing' }
  const open = known === 'walk' && rest.length > 0 ? rest.join('/') : null
  const asks = { reading: asked.get('reading'), seenAt: asked.get('seen') }
  return { view: 'run', run, pane: known, open, ...asks, isPractice: false }
}

/** Addresses of practice runs are those of runs, behind the one of practice. */
function practiceRoute(words: readonly string[], search: string): Route {
  const part = drillsParts.find((one) => one === (words[0] ?? 'drills'))
  if (words.length <= 1 && part !== undefined) return { view: 'drills', part }
  if (words.length === 3 && words[0] === 'runs' && words[2] === 'debrief')
    return { view: 'debrief', run: decodeURIComponent(words[1]!) }
  const route = parseRoute(words.join('/'), search)
  if (route.view === 'run' && practicePanes.includes(route.pane)) return { ...route, isPractice: true }
  return { view: 'nothing' }
}

/** Where a view is, from whichever view a link leads there. */
const viewAt = (path: string): string => (hasServer ? path : `#${path}`)

export const runsPath = viewAt('/')
export const needPath = viewAt('/need')
export const checkPath = viewAt('/check')
export const layOutPath = viewAt('/lay-out')
export const shelfPath = viewAt('/shelf')
export const glossaryPath = viewAt('/glossary')
export const wordPath = (word: string): string => `${glossaryPath}?word=${word}`
export const bringOverPath = viewAt('/bring-over')
/** Of the page of last resort, which is loaded by itself: its links name a target. */
export const rescuePath = hasServer ? '/rescue' : 'rescue.html'
export const drillsPath = viewAt('/drills')
export const drillsPartPath = (part: DrillsPart): string => (part === 'drills' ? drillsPath : `${drillsPath}/${part}`)
/** Where a practice run is walked. */
export const practicePath = (run: string): string => `${drillsPath}/runs/${encodeURIComponent(run)}`
export const debriefPath = (run: string): string => `${practicePath(run)}/debrief`

/** Whether the page shows a practice run: then its links to runs lead to such ones. */
export const isPracticePage = (): boolean =>
  globalThis.location !== undefined && addressHere().path.startsWith('/drills/runs/')

/** Where the runs are listed that the page is about. */
export const listPath = (): string => (isPracticePage() ? drillsPath : runsPath)

/** Of one run, before what is shown of it. */
const runPath = (run: string): string =>
  isPracticePage() ? practicePath(run) : viewAt(`/runs/${encodeURIComponent(run)}`)

export const panePath = (run: string, pane: Pane): string => `${runPath(run)}${pane === 'walk' ? '' : `/${pane}`}`

export const sheetPath = (id: string, part: ShelfPart = 'statements'): string =>
  `${shelfPath}/${encodeURIComponent(id)}${part === 'statements' ? '' : `/${part}`}`

/** The sheet beside another, or beside an edition of either: `id version`. */
export const comparePath = (id: string, beside: string): string =>
  `${sheetPath(id, 'compare')}?beside=${encodeURIComponent(beside)}`

/** Where what is asked of a run is changed. */
export const editPath = (run: string): string => `${runPath(run)}/edit`

/** The same from a post or panel on, all that lies before it standing; or from a post that could not go there. */
export const anewPath = (run: string, from: string, isBlocked: boolean): string =>
  `${editPath(run)}?from=${encodeURIComponent(from)}${isBlocked ? '&blocked' : ''}`

/** Where something is noted that was seen at a place. */
export const seenPath = (run: string, place: string): string =>
  `${panePath(run, 'findings')}?seen=${encodeURIComponent(place)}`

export function requirementPath(run: string, requirement: string, reading: string | null = null): string {
  const place = requirement.split('/').map(encodeURIComponent).join('/')
  const query = reading === null ? '' : `?reading=${encodeURIComponent(reading)}`
  return `${runPath(run)}/walk/${place}${query}`
}

const changed = 'lapwise:route'

/** Where somebody was before a requirement was opened; the walk of the run when they came from outside. */
let cameFrom: string | null = null
export const wayBack = (run: string): string =>
  cameFrom?.startsWith(panePath(run, 'walk')) ? cameFrom : panePath(run, 'walk')

const viewHere = (): string => {
  const { path, search } = addressHere()
  return viewAt(path + search)
}

/** Whether somebody came to what is shown by going on, and not back or forth through what was shown before. */
let isOn = false
export const wentOn = (): boolean => isOn

/** Changes the address; a state that is not null says that somebody came here within the page. */
export function goTo(path: string): void {
  const left = routeHere()
  if (left.view === 'run' && left.open === null) cameFrom = viewHere()
  history.pushState({}, '', path)
  isOn = true
  window.dispatchEvent(new Event(changed))
}

/** What the address in force shows; links of the page change it without loading the page again. */
export function useRoute(): Route {
  const [route, setRoute] = useState(routeHere)
  const drawn = viewHere()
  useEffect(() => {
    const read = (): void => setRoute(routeHere())
    const back = (): void => {
      isOn = false
      read()
    }
    const follow = (event: MouseEvent): void => {
      const link = event.target instanceof Element ? event.target.closest('a') : null
      if (link === null || event.defaultPrevented || event.button !== 0) return
      if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return
      if (link.origin !== location.origin || link.target !== '' || link.hasAttribute('download')) return
      const isWithin = link.hash !== '' && link.pathname === location.pathname
      if (isWithin === hasServer) return
      event.preventDefault()
      if (hasServer) goTo(link.pathname + link.search)
      else if (link.hash.startsWith('#/')) goTo(link.hash)
      else goWithin(link.hash.slice(1))
    }
    window.addEventListener('popstate', back)
    window.addEventListener(changed, read)
    document.addEventListener('click', follow)
    // Between the first drawing and here nobody listened.
    if (viewHere() !== drawn) read()
    return () => {
      window.removeEventListener('popstate', back)
      window.removeEventListener(changed, read)
      document.removeEventListener('click', follow)
    }
  }, [])
  return route
}

/** To a part of the view that is shown, where the fragment says which view that is. */
function goWithin(id: string): void {
  const element = document.getElementById(id)
  element?.scrollIntoView()
  element?.focus()
}
