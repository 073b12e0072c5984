import type { PGlite } from '@electric-sql/pglite'
import { NodeFS } from '@electric-sql/pglite/nodefs'

/** Brings what was written to an open file onto the disk; throws the system's error when it cannot. */
export type SyncFile = (descriptor: number) => void

type StartOptions = Parameters<NodeFS['init']>[1]

/** The part of the engine's file layer for Node that is reached into here; its own types leave it out. */
interface NodeFileLayer {
  readonly stream_ops: { fsync?: (stream: { readonly nfd: number }) => number }
  /** Runs `step`; a system error becomes the error number that the engine understands. */
  tryFSOperation<T>(step: () => T): T
}

/**
 * A folder on disk whose files reach the disk when the engine says fsync. As shipped the engine's file layer has no
 * fsync, so a commit is acknowledged while its data is still in the operating system's memory.
 */
export class DurableNodeFs extends NodeFS {
  readonly #syncFile: SyncFile

  constructor(folder: string, syncFile: SyncFile) {
    super(folder)
    this.#syncFile = syncFile
  }

  override async init(engine: PGlite, options: StartOptions): Promise<{ emscriptenOpts: StartOptions }> {
    const { emscriptenOpts } = await super.init(engine, options)
    return {
      emscriptenOpts: {
        ...emscriptenOpts,
        preRun: [
          ...(emscriptenOpts.preRun ?? []),
          (module) => {
            const layer = module.FS.filesystems.NODEFS as unknown as NodeFileLayer
            layer.stream_ops.fsync = ({ nfd }) => {
              layer.tryFSOperation(() => this.#syncFile(nfd))
              return 0
            }
          },
        ],
      },
    }
  }
}
