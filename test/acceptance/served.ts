import { afterAll, beforeAll } from 'vitest'
import type { Databases } from '../store/databases.ts'
import { newServerPlace, type ServerPlace } from './server-place.ts'
import type { RunningServer } from './web/serve.ts'

/** A server with the demo run on a database of its own: started before the block's first test, gone after its last. */
export interface Served {
  readonly databases: Databases
  readonly folder: string
  readonly address: string
  /** Id of the demo run. */
  readonly demo: string
  /** The answer to a question, or to what is handed in. */
  // biome-ignore lint/suspicious/noExplicitAny: answers are looked at as they come
  ask(path: string, body?: unknown): Promise<{ status: number; body: any; headers: Headers }>
}

export function servedOn(start: () => Promise<Databases>): Served {
  let databases: Databases
  let place: ServerPlace
  let server: RunningServer
  let demo: string

  beforeAll(async () => {
    databases = await start()
    place = await newServerPlace(databases)
    server = await place.start()
    demo = (await ask('/api/runs')).body.runs[0].id
  })

  afterAll(async () => {
    await server.stop()
    await place.drop()
    await databases.stop()
  })

  const ask: Served['ask'] = async (path, body) => {
    const sent = { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
    const response = await fetch(server.address + path, body === undefined ? {} : sent)
    const text = await response.text()
    const isJson = response.headers.get('content-type')?.startsWith('application/json') ?? false
    return { status: response.status, body: isJson ? JSON.parse(text) : text, headers: response.headers }
  }

  return {
    get databases() {
      return databases
    },
    get folder() {
      return place.folder
    },
    get address() {
      return server.address
    },
    get demo() {
      return demo
    },
    ask,
  }
}
