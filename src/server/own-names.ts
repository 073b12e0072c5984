import type { FastifyInstance, FastifyRequest } from 'fastify'
import type { Answer } from '../words/answers.ts'
import { told } from './refusal.ts'

/** Who may ask this server, by the names it answers to. */
export interface Doors {
  /** @param name  host name or address without a port, in small letters; of IP version 6 without brackets */
  isOwn(name: string): boolean
  /** Where a proxy shows this server, as `https://lapwise.example.org`; null without one. */
  readonly origin: string | null
}

/** Names by which this machine alone is reached. */
const ownMachine = ['localhost', '127.0.0.1', '::1']

/**
 * The doors of a server that listens on `host`.
 * @param others  names and addresses of this machine on its networks, as they are when asked: they may change
 */
export function doorsOf(host: string, origin: string | null, others: () => readonly string[]): Doors {
  const isEverywhere = host === '0.0.0.0' || host === '::'
  const proxy = origin === null ? [] : [bareName(new URL(origin).host)]
  const known = new Set([...ownMachine, ...(isEverywhere ? [] : [host]), ...proxy].map((name) => name.toLowerCase()))
  return { isOwn: (name) => known.has(name) || (isEverywhere && others().includes(name)), origin }
}

/**
 * Refuses what another site's page sends: one that came by a name of its own for this machine (its Host is none of
 * ours), and one whose Origin is not where it sends to. And nothing is written that came unencrypted over a network:
 * whoever listens could have changed it, and such a page cannot keep anything for itself.
 */
export function guardDoors(app: FastifyInstance, doors: Doors): void {
  app.addHook('onRequest', async (request, reply) => {
    const refusal = refusalOf(request, doors)
    if (refusal !== null) return reply.code(refusal.status).send({ error: told(refusal.message) })
  })
}

function refusalOf(request: FastifyRequest, { isOwn, origin }: Doors): { status: number; message: Answer } | null {
  const host = request.headers.host ?? ''
  if (!isOwn(bareName(host).toLowerCase())) return { status: 421, message: { kind: 'host of another', host } }
  const from = request.headers.origin
  // What any page of the network may ask: it says nothing but that the line is trusted.
  if (request.url === '/lan-check' && request.method === 'GET') return null
  if (from !== undefined && from !== origin && !isSameHost(from, host))
    return { status: 403, message: { kind: 'page of another', origin: from } }
  if (isReading(request.method) || isPrivateLine(request) || (origin !== null && isBehind(origin, host, from)))
    return null
  return {
    status: 403,
    message: { kind: 'unencrypted' },
  }
}

const isReading = (method: string): boolean => method === 'GET' || method === 'HEAD' || method === 'OPTIONS'

/** Encrypted, or from this machine itself. */
const isPrivateLine = ({ socket }: FastifyRequest): boolean =>
  'encrypted' in socket || /^(::1|(::ffff:)?127\.\d+\.\d+\.\d+)$/.test(socket.remoteAddress ?? '')

const isBehind = (origin: string, host: string, from: string | undefined): boolean =>
  from === origin || bareName(host) === bareName(new URL(origin).host)

const isSameHost = (from: string, host: string): boolean => URL.canParse(from) && new URL(from).host === host

/** `[::1]:4310` is `::1`, `depot.local:4310` is `depot.local`. */
const bareName = (host: string): string => host.replace(/:\d+$/, '').replaceAll(/[[\]]/g, '')
