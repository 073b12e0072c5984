import { fileURLToPath } from 'node:url'
import type { PacketStep } from '../protocol/packets.ts'
import type { PacketNews, PacketOrder } from './make-packet.ts'
import { sideProcess } from './side-process.ts'

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
  const { ask, close } = sideProcess<PacketOrder, PacketNews>({ program, errors: 'inherit', longest, idle })
  return {
    async make(order, making) {
      const news = await ask(order, (one) => {
        if ('making' in one) making(one.making)
        return !('making' in one)
      }).catch(({ message }: Error) => {
        throw new Error(`no packet was made: ${message}`)
      })
      return news as Exclude<PacketNews, { making: unknown }>
    },
    close,
  }
}
