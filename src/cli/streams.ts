import { AsyncLocalStorage } from 'node:async_hooks'

/** Where one call of the command line reads and writes. */
export interface Streams {
  readonly stdin: AsyncIterable<Buffer>
  readonly stdout: { write(text: string): unknown }
  readonly stderr: { write(text: string): unknown; readonly isTTY?: boolean | undefined }
}

interface Call extends Streams {
  /** Whether only results and problems are wanted. */
  readonly isQuiet: boolean
}

// Kept with the call and not handed through: no command says anything else to it than print and say do.
const kept = new AsyncLocalStorage<Call>()

/** The streams of the call that is running. */
export const streams = (): Call => kept.getStore()!

export const withStreams = <T>(
  { stdin, stdout, stderr }: Streams,
  isQuiet: boolean,
  call: () => Promise<T>,
): Promise<T> => kept.run({ stdin, stdout, stderr, isQuiet }, call)
