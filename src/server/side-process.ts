import { type ChildProcess, fork, type StdioOptions } from 'node:child_process'

/** A process beside the server that does one thing after the other, and ends when it has had nothing to do for a while. */
export interface SideProcess<Order, News> {
  /**
   * What it says last of an order; rejects with why where it ends or takes too long, and is ended then.
   * @param isLast  whether this is the last that it says, or only tells how far it is
   */
  readonly ask: (order: Order, isLast: (news: News) => boolean) => Promise<News>
  readonly close: () => void
}

export interface SideProgram {
  /** Path of the script. */
  readonly program: string
  /** What becomes of what it says on standard error. */
  readonly errors: 'ignore' | 'inherit'
  /** How long one order may take, the start of the process included, ms. */
  readonly longest: number
  /** How long the process waits for another, ms. */
  readonly idle: number
}

export function sideProcess<Order extends object | string, News>({
  program,
  errors,
  longest,
  idle,
}: SideProgram): SideProcess<Order, News> {
  let child: ChildProcess | null = null
  let before: Promise<unknown> = Promise.resolve()
  let rest: NodeJS.Timeout | undefined
  const stdio: StdioOptions = ['ignore', 'ignore', errors, 'ipc']
  const end = (): void => {
    clearTimeout(rest)
    child?.kill('SIGKILL')
    child = null
  }
  const ask = (order: Order, isLast: (news: News) => boolean): Promise<News> => {
    clearTimeout(rest)
    child ??= fork(program, { stdio, serialization: 'advanced' })
    const asked = child
    return new Promise((resolve, reject) => {
      const settle = (): void => {
        clearTimeout(late)
        asked.removeAllListeners()
      }
      const fail = (why: string): void => {
        settle()
        end()
        reject(new Error(why))
      }
      const late = setTimeout(() => fail('it took too long'), longest)
      asked.on('message', (news: News) => {
        if (!isLast(news)) return
        settle()
        rest = setTimeout(end, idle).unref()
        resolve(news)
      })
      asked.on('exit', (code, signal) => fail(`its process ended with ${code ?? signal}`))
      asked.on('error', ({ message }) => fail(message))
      asked.send(order)
    })
  }
  return {
    ask(order, isLast) {
      const done = before.then(() => ask(order, isLast))
      before = done.catch(() => {})
      return done
    },
    close: end,
  }
}
