import { type ChildProcess, fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { PacketStep } from '../protocol/packets.ts'
import type { PacketNews, PacketOrder } from './make-packet.ts'

const program = fileURLToPath(new URL('../../bin/lapwise-packets.mjs', import.meta.url))

/** How long one packet may take, and how long the process waits for another: our judgement. */
const longest = 600_000
const idle = 60_000

export interface PacketProcess {
  /** The packet as ZIP, or why there is none. One is made after the other. */
  readonly make: (
    order: PacketOrder,
    making: (step: PacketStep) => void,
  ) => Promise<Exclude<PacketNews, { making: unknown }>>
  readonly close: () => void
}

/** Makes packets in a process of its own, so that the server answers others while documents are set. */
export function packetProcess(): PacketProcess {
  let child: ChildProcess | null = null
  let before: Promise<unknown> = Promise.resolve()
  let rest: NodeJS.Timeout | undefined
  const end = (): void => {
    clearTimeout(rest)
    child?.kill('SIGKILL')
    child = null
  }
  const make: PacketProcess['make'] = (order, making) => {
    clearTimeout(rest)
    child ??= fork(program, { stdio: ['ignore', 'ignore', 'inherit', 'ipc'], serialization: 'advanced' })
    const asked = child
    return new Promise((resolve, reject) => {
      const settle = (): void => {
        clearTimeout(late)
        asked.removeAllListeners()
      }
      const fail = (why: string): void => {
        settle()
        end()
        reject(new Error(`no packet was made: ${why}`))
      }
      const late = setTimeout(() => fail('it took too long'), longest)
      asked.on('message', (news: PacketNews) => {
        if ('making' in news) return making(news.making)
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
    make(order, making) {
      const made = before.then(() => make(order, making))
      before = made.catch(() => {})
      return made
    },
    close: end,
  }
}
