// The page without a network: its files are kept here as a whole, one version beside the one before. A new version waits
// until the page tells it to take over.

import { hasServer } from '../has-server.ts'

/** What of a service worker is used here; the page's own types know nothing of it. */
interface Worker {
  readonly location: Location
  readonly clients: { claim(): Promise<void> }
  /** Every file of the built page; without a revision when its name says which version it is. */
  readonly __WB_MANIFEST: readonly { readonly url: string; readonly revision: string | null }[]
  skipWaiting(): Promise<void>
  addEventListener(
    type: 'install' | 'activate' | 'message' | 'fetch',
    listener: (event: {
      readonly data: unknown
      readonly request: Request
      waitUntil(done: Promise<unknown>): void
      respondWith(response: Promise<Response>): void
    }) => void,
  ): void
}

const worker = self as unknown as Worker

/** Path of the folder that the page lies in, with a slash at its end. */
const root = new URL('./', worker.location.href).pathname

const files = (self as unknown as Worker).__WB_MANIFEST.map(({ url, revision }) => ({
  path: `${root}${url}`,
  /** What it is kept under: the same file under the same name in every version. */
  key: `${root}${url}${revision === null ? '' : `?version=${revision}`}`,
}))
const keyOf = new Map(files.map(({ path, key }) => [path, key]))

/** Pages that the server writes itself. */
const serverPages = ['/let-in']

/** The page of last resort is one of its own; every other address that a server knows is a view of the one page. */
function pageAt(path: string): 'rescue' | 'index' | null {
  if (path === `${root}rescue` || path === `${root}rescue.html`) return 'rescue'
  return hasServer || path === root || path === `${root}index.html` ? 'index' : null
}

/** Of which files the version before consists. */
const listKey = `${root}files-of-the-version-in-use`

/** Copies of the page in several folders of one host have each a cache of its own. */
const openCache = (): Promise<Cache> => caches.open(`lapwise/page${root === '/' ? '' : root}`)

worker.addEventListener('install', (event) => event.waitUntil(fetchMissing()))
worker.addEventListener('activate', (event) => event.waitUntil(tidy().then(() => worker.clients.claim())))
worker.addEventListener('message', (event) => {
  if (event.data === 'take over') event.waitUntil(worker.skipWaiting())
  // A page that was being opened while this worker became the active one was neither given nor claimed.
  if (event.data === 'serve me') event.waitUntil(worker.clients.claim())
})
worker.addEventListener('fetch', (event) => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  // The way in is the server's own page: a device that is not let in yet has no use for what is kept.
  if (serverPages.includes(pathname)) return
  if (request.method !== 'GET' || origin !== worker.location.origin || pathname.startsWith('/api/')) return
  const page = request.mode === 'navigate' ? pageAt(pathname) : null
  if (page !== null) event.respondWith(keptOrFetched(`${root}${page}.html`, request))
  else if (keyOf.has(pathname) || pathname.startsWith(`${root}assets/`))
    event.respondWith(keptOrFetched(pathname, request))
})

/** All of a version or nothing: an installation that fails is tried anew by the browser. */
async function fetchMissing(): Promise<void> {
  const cache = await openCache()
  await Promise.all(
    files.map(async ({ path, key }) => {
      if ((await cache.match(key)) !== undefined) return
      const response = await fetch(path, { cache: 'no-cache' })
      if (!response.ok) throw new Error(`${path} was answered with ${response.status}`)
      // Hosts lead some pages to a shorter address; a browser shows none that came so.
      await cache.put(key, response.redirected ? new Response(response.body, response) : response)
    }),
  )
}

/** The version before stays: a tab that still shows it may need a part that it did not fetch yet. */
async function tidy(): Promise<void> {
  const cache = await openCache()
  const before = (await (await cache.match(listKey))?.json()) as readonly string[] | undefined
  const needed = new Set([listKey, ...(before ?? []), ...keyOf.values()])
  for (const request of await cache.keys()) {
    const { pathname, search } = new URL(request.url)
    if (!needed.has(pathname + search)) await cache.delete(request)
  }
  await cache.put(listKey, new Response(JSON.stringify([...keyOf.values()])))
}

async function keptOrFetched(path: string, request: Request): Promise<Response> {
  return (await (await openCache()).match(keyOf.get(path) ?? path)) ?? fetch(request)
}
