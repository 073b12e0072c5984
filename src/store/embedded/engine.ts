import { PGlite } from '@electric-sql/pglite'
import { type Disk, DurableNodeFs } from './durable-node-fs.ts'

/** The engine cannot go on: so it is when it cannot write its log, as on a full disk. What it had committed is kept. */
export class EngineStopped extends Error {
  override readonly name = 'EngineStopped'
}

/** The engine running on the folder `database`, which is filled when it is empty; each commit waits for the disk. */
export async function startEngine(database: string, { syncFile, mayWrite }: Disk): Promise<PGlite> {
  let lastWords = ''
  let forbidden = ''
  const disk: Disk = {
    syncFile,
    mayWrite() {
      try {
        mayWrite()
      } catch (cause) {
        forbidden = wordsOf(cause)
        throw cause
      }
    },
  }
  const engine = await PGlite.create({
    fs: new DurableNodeFs(database, disk),
    startParams: durableStart,
    onStderr(line) {
      const [, words] = /\b(?:FATAL|PANIC): +(.*)/.exec(line) ?? []
      if (words !== undefined) lastWords = words
      return false
    },
  }).catch((cause: unknown) => {
    throw new EngineStopped(forbidden || lastWords || wordsOf(cause), { cause })
  })
  failOnceStopped(engine, () => forbidden || lastWords)
  return engine
}

/** The engine's file layer throws records with a WASI error number, 51 being "no space left on device". */
function wordsOf(cause: unknown): string {
  if (cause instanceof Error) return cause.message
  return `the database could not be started: ${JSON.stringify(cause)}`
}

/** The engine's own start less `-F` (which turns fsync off); `fsync` is the one way of syncing its file layer has. */
const durableStart = [
  ...PGlite.defaultStartParams.filter((word) => word !== '-F'),
  ...['-c', 'fsync=on', '-c', 'wal_sync_method=fsync'],
]

/** What the engine calls in its compiled part for each message; its own types leave it out. */
interface CompiledPart {
  _PostgresMainLoopOnce(): void
  stackRestore(to: number): void
  _PostgresSendReadyForQueryIfNecessary(): void
  _pgl_pq_flush(): void
}

/** Exit status by which the compiled part says that a statement failed and it is ready for the next one. */
const statementFailed = 100

/**
 * Makes every query on a stopped engine fail with `EngineStopped`. Left to itself the engine takes whatever its
 * compiled part throws for a failed statement, calls the dead part again, and never returns.
 */
function failOnceStopped(engine: PGlite, lastWords: () => string): void {
  const part = engine.Module as unknown as CompiledPart
  let stopped: EngineStopped | null = null

  const onlyWhileAlive =
    <T extends unknown[]>(step: (...given: T) => void) =>
    (...given: T): void => {
      if (stopped !== null) throw stopped
      step(...given)
    }
  const runOnce = part._PostgresMainLoopOnce
  part._PostgresMainLoopOnce = onlyWhileAlive(() => {
    try {
      runOnce()
    } catch (cause) {
      const status = (cause as { readonly status?: unknown }).status
      if (status !== statementFailed) stopped = new EngineStopped(lastWords() || String(cause), { cause })
      throw cause
    }
  })
  // The engine swallows what was just thrown; these are what it calls next, where it lets an error through.
  part.stackRestore = onlyWhileAlive(part.stackRestore)
  part._PostgresSendReadyForQueryIfNecessary = onlyWhileAlive(part._PostgresSendReadyForQueryIfNecessary)
  part._pgl_pq_flush = onlyWhileAlive(part._pgl_pq_flush)
}
