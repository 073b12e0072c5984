import { connect, createServer, type Server } from 'node:net'

/** Whether a process has the hold or asks for it. */
export type Standing = 'holding' | 'asking'

/** What a listener says about itself; the process number is missing when it took the call and said nothing in time. */
export interface Listener {
  readonly standing: Standing
  readonly pid: number | null
}

/**
 * A server at `address` that tells every caller its standing and process number; or the code of the error by which
 * the system says that this address is taken, or that the file system holds no sockets. It keeps no process running.
 */
export function listenAs(address: string, standing: () => Standing): Promise<Server | string> {
  return new Promise((resolve, reject) => {
    const server = createServer((caller) => {
      caller.on('error', () => caller.destroy())
      caller.end(`${standing()} ${process.pid}`)
    })
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== undefined && refusals.has(error.code)) resolve(error.code)
      else reject(error)
    })
    server.listen(address, () => resolve(server.unref()))
  })
}

/** The rest is what FAT, shares of a virtual machine and some mounts in WSL answer. */
const refusals = new Set(['EADDRINUSE', 'ENOTSUP', 'EOPNOTSUPP', 'EPERM', 'ENOSYS', 'EINVAL'])

/** How long a listener gets to answer, ms: our judgement. */
const patience = 500

/**
 * Whoever listens at `address`; null when nobody does. One that takes the call and does not answer in time holds: it is
 * busy. One that hangs up without an answer was just going away, and is worth asking again.
 */
export function askListener(address: string): Promise<Listener | null> {
  return new Promise((resolve) => {
    let said = ''
    const call = connect(address)
    const finish = (listener: Listener | null): void => {
      resolve(listener)
      call.destroy()
    }
    call.setTimeout(patience, () => finish({ standing: 'holding', pid: null }))
    call.on('data', (bytes) => {
      said += bytes.toString('latin1')
    })
    call.on('end', () => finish(parseAnswer(said)))
    call.on('error', (error: NodeJS.ErrnoException) => finish(listenerBehind(error)))
  })
}

function parseAnswer(said: string): Listener {
  const [, standing, pid] = /^(holding|asking) (\d+)$/.exec(said) ?? []
  return { standing: standing === 'holding' ? 'holding' : 'asking', pid: pid === undefined ? null : Number(pid) }
}

function listenerBehind(error: NodeJS.ErrnoException): Listener | null {
  if (error.code === 'ECONNREFUSED' || error.code === 'ENOENT') return null
  const hungUp = error.code === 'ECONNRESET' || error.code === 'EPIPE'
  return { standing: hungUp ? 'asking' : 'holding', pid: null }
}
