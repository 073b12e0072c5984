import type { PGlite } from '@electric-sql/pglite'
import { NodeFS } from '@electric-sql/pglite/nodefs'

/** Brings what was written to an open file onto the disk; throws the system's error when it cannot. */
export type SyncFile = (descriptor: number) => void

type StartOptions = Parameters<NodeFS['init']>[1]

/** How the engine's files reach the disk. */
export interface Disk {
  readonly syncFile: SyncFile
  /** Throws where nothing may be written any more; asked before each write. */
  readonly mayWrite: () => void
}

/** The part of the engine's file layer for Node that is reached into here; its own types leave it out. */
interface NodeFileLayer {
  readonly stream_ops: {
    fsync?: (stream: { readonly nfd: number }) => number
    write(...given: readonly unknown[]): number
  }
  /** Runs `step`; a system error becomes the error number that the engine understands. */
  tryFSOperation<T>(step: () => T): T
}

/**
 * A folder on disk whose files reach the disk when the engine says fsync. As shipped the engine's file layer has no
 * fsync, so a commit is acknowledged while its data is still in the operating system's memory.
 */
export class DurableNodeFs extends NodeFS {
  readonly #disk: Disk

  constructor(folder: string, disk: Disk) {
    super(folder)
    this.#disk = disk
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
            const { syncFile, mayWrite } = this.#disk
            layer.stream_ops.fsync = ({ nfd }) => {
              layer.tryFSOperation(() => syncFile(nfd))
              return 0
            }
            const write = layer.stream_ops.write
            layer.stream_ops.write = (...given) => {
              layer.tryFSOperation(mayWrite)
              return write(...given)
            }
          },
        ],
      },
    }
  }
}
