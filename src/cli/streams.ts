import { AsyncLocalStorage } from 'node:async_hooks'

/** Where one call of the command line reads and writes. */
export interface Streams {
  readonly stdin: AsyncIterable<Buffer>
  readonly stdout: { write(text: string): unknown }
  readonly stderr: { write(text: string): unknown }
}

// Kept with the call and not handed through: no command says anything else to it than print and say do.
const kept = new AsyncLocalStorage<Streams>()

/** The streams of the call that is running. */
export const streams = (): Streams => kept.getStore()!

export const withStreams = <T>(io: Streams, call: () => Promise<T>): Promise<T> => kept.run(io, call)
