import { fileURLToPath } from 'node:url'
import type { PictureFault } from '../words/problems/file.ts'
import { sideProcess } from './side-process.ts'

const program = fileURLToPath(new URL('../../bin/lapwise-pictures.mjs', import.meta.url))

/** How long one picture may take, the start of the process included, and how long the process waits for another: our judgement. */
const longest = 30_000
const idle = 60_000

export interface PictureCheck {
  /** Why the file at `path` is no picture that can be read; null when it is one. One is looked at after the other. */
  readonly faultIn: (path: string) => Promise<PictureFault | null>
  readonly close: () => void
}

/**
 * Reads pictures to their last pixel in a process of its own: what it takes in time and memory is taken from nobody
 * else, and is given back when it ends.
 */
export function pictureCheck(): PictureCheck {
  const { ask, close } = sideProcess<string, PictureFault | null>({ program, errors: 'ignore', longest, idle })
  return { faultIn: (path) => ask(path, () => true).catch(() => ({ kind: 'picture too costly' })), close }
}
