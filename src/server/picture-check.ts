import { type ChildProcess, fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { PictureFault } from '../words/problems/file.ts'

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
  let child: ChildProcess | null = null
  let before: Promise<unknown> = Promise.resolve()
  let rest: NodeJS.Timeout | undefined
  const end = (): void => {
    clearTimeout(rest)
    child?.kill('SIGKILL')
    child = null
  }
  const look = (path: string): Promise<PictureFault | null> => {
    clearTimeout(rest)
    child ??= fork(program, { stdio: ['ignore', 'ignore', 'ignore', 'ipc'] })
    const asked = child
    return new Promise((resolve) => {
      const answer = (fault: PictureFault | null): void => {
        clearTimeout(late)
        asked.removeAllListeners()
        resolve(fault)
        rest = setTimeout(end, idle).unref()
      }
      const fail = (): void => {
        end()
        answer({ kind: 'picture too costly' })
      }
      const late = setTimeout(fail, longest)
      asked.on('message', (fault) => answer(fault as PictureFault | null))
      asked.on('exit', fail)
      asked.on('error', fail)
      asked.send(path)
    })
  }
  return {
    faultIn(path) {
      const looked = before.then(() => look(path))
      before = looked
      return looked
    },
    close: end,
  }
}
