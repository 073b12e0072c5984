import { setImmediate } from 'node:timers/promises'
import { Mutex, type PGlite } from '@electric-sql/pglite'
import type { PostgresPool, PostgresPoolClient, PostgresQueryResult } from 'kysely'
import { EngineStopped } from './engine.ts'

/** A pool that may come to its end by itself. */
interface EndingPool extends PostgresPool {
  /** Why the engine cannot go on; waits for as long as it can. */
  readonly stopped: Promise<string>
}

/** The engine's one connection in the shape of a pool: whoever asks for it waits until it is given back. */
export function singleConnectionPool(engine: PGlite): EndingPool {
  const turn = new Mutex()
  let isStopped = false
  let tellStopped: (reason: string) => void
  const stopped = new Promise<string>((resolve) => {
    tellStopped = resolve
  })

  async function query<R>(text: string, parameters: readonly unknown[]): Promise<PostgresQueryResult<R>> {
    try {
      const { rows, affectedRows } = await engine.query<R>(text, [...parameters])
      return { command: commandOf(text), rowCount: affectedRows ?? rows.length, rows }
    } catch (error) {
      if (error instanceof EngineStopped) {
        isStopped = true
        tellStopped(error.message)
      }
      throw error
    }
  }

  return {
    stopped,
    async connect() {
      // The engine works without ever waiting for the event loop; one that appends and appends would stop all else.
      await setImmediate()
      const release = await turn.acquire()
      // Kysely's other form of query, with a cursor, is used only where a cursor package is configured: here it is not.
      return { query: query as PostgresPoolClient['query'], release: () => release() }
    },
    async end() {
      await turn.runExclusive(async () => {
        if (!isStopped) await engine.close()
      })
    },
  }
}

/** The engine does not report the command, so it is read from the statement's first word. */
function commandOf(text: string): PostgresQueryResult<unknown>['command'] {
  const [word = ''] = text.trimStart().split(/\s/, 1)
  return word.toUpperCase() as PostgresQueryResult<unknown>['command']
}
