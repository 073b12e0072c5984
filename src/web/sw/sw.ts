// The page without a network: its files are kept here as a whole, one version beside the one before. A new version waits
// until the page tells it to take over.

export type {}

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

const files = (self as unknown as Worker).__WB_MANIFEST.map(({ url, revision }) => ({
  path: `/${url}`,
  /** What it is kept under: the same file under the same name in every version. */
  key: `/${url}${revision === null ? '' : `?version=${revision}`}`,
}))
const keyOf = new Map(files.map(({ path, key }) => [path, key]))

/** Pages that the server writes itself. */
const serverPages = ['/let-in']

/** The page of last resort is one of its own; every other address is a view of the one page. */
const pageAt = (path: string): string => (path === '/rescue' ? 'rescue' : 'index')

/** Of which files the version before consists. */
const listKey = '/files-of-the-version-in-use'

const openCache = (): Promise<Cache> => caches.open('lapwise/page')

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
  if (request.mode === 'navigate') event.respondWith(keptOrFetched(`/${pageAt(pathname)}.html`, request))
  else if (keyOf.has(pathname) || pathname.startsWith('/assets/')) event.respondWith(keptOrFetched(pathname, request))
})

/** All of a version or nothing: an installation that fails is tried anew by the browser. */
async function fetchMissing(): Promise<void> {
  const cache = await openCache()
  await Promise.all(
    files.map(async ({ path, key }) => {
      if ((await cache.match(key)) !== undefined) return
      const response = await fetch(path, { cache: 'no-cache' })
      if (!response.ok) throw new Error(`${path} was answered with ${response.status}`)
      await cache.put(key, response)
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
