/** What the command line asks of the server as a program; it is loaded when it is asked for, and knows no command line. */
export interface ServerProgram {
  /** A line for each environment variable that it is told of what it needs by. */
  readonly settings: () => readonly string[]
  /** Resolves when that is done, or once the server runs, which keeps the process until it is told to end. */
  readonly serve: (wish: ServerWish, tell: ServerTeller) => Promise<0 | 1 | 2>
  /** Copies store and photos into a new folder; 2 where none was made, 1 where a photo is damaged. */
  readonly backUp: (to: string | null, tell: ServerTeller) => Promise<0 | 1 | 2>
  /** Puts such a copy into an empty store; 2 where nothing was put back, 1 where photos are missing. */
  readonly restore: (from: string, tell: ServerTeller) => Promise<0 | 1 | 2>
  /** Recomputes every hash of such a copy, or of the store; 2 where it cannot be read, 1 where anything is not as stored. */
  readonly verify: (from: string | null, head: string | null, tell: ServerTeller) => Promise<0 | 1 | 2>
}

export type ServerWish =
  | { readonly kind: 'start'; readonly isLan: boolean }
  /** Lists the devices that were let in. */
  | { readonly kind: 'devices' }
  /** Ends what lets the devices of a name in, also while a server runs. */
  | { readonly kind: 'shut out'; readonly device: string }

export interface ServerTeller {
  /** What was asked for: an address, a list. */
  readonly print: (text: string) => void
  /** What is wrong. */
  readonly say: (text: string) => void
  /** What takes a while, or is done. */
  readonly note: (text: string) => void
}
