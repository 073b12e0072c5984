import { spawn } from 'node:child_process'
import { Readable } from 'node:stream'
import { main } from '../../src/cli/main.ts'

export const program = new URL('../../bin/lapwise.mjs', import.meta.url).pathname

export interface Ended {
  readonly code: number | null
  readonly out: string
  readonly said: string
}

let last: Promise<unknown> = Promise.resolve()

/**
 * How `lapwise` with these words ends in `folder`, run in this process. One call waits for the one before, since a process
 * has one working folder. `isTTY`: whether a person looks at its messages. Where the process itself is what is tested (its exit, a pipe, a kill), `startLapwise` starts one.
 */
export const lapwise = (folder: string, words: readonly string[], input = '', isTTY = false): Promise<Ended> =>
  lapwiseBy(main, folder, words, input, isTTY)

/** The same by the command line of another program than this one. */
export function lapwiseBy(
  by: typeof main,
  folder: string,
  words: readonly string[],
  input = '',
  isTTY = false,
): Promise<Ended> {
  const ended = last.then(() => call(by, folder, words, input, isTTY))
  last = ended.catch(() => {})
  return ended
}

async function call(
  by: typeof main,
  folder: string,
  words: readonly string[],
  input: string,
  isTTY: boolean,
): Promise<Ended> {
  let [out, said] = ['', '']
  const before = process.cwd()
  process.chdir(folder)
  try {
    const io = {
      stdin: Readable.from([Buffer.from(input)]),
      stdout: { write: (text: string) => (out += text) },
      stderr: { write: (text: string) => (said += text), isTTY },
    }
    const code = await by(words, io, () => Promise.reject(new Error('the server is started as a process')))
    return { code, out, said }
  } finally {
    process.chdir(before)
  }
}

/** The same as a process of its own. */
export function startLapwise(folder: string, words: readonly string[], input = ''): Promise<Ended> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [program, ...words], { cwd: folder })
    let [out, said] = ['', '']
    child.stdout.on('data', (chunk) => {
      out += chunk
    })
    child.stderr.on('data', (chunk) => {
      said += chunk
    })
    child.on('close', (code) => resolve({ code, out, said }))
    child.stdin.end(input)
  })
}
