import fastify from 'fastify'
import { describe, expect, it } from 'vitest'
import { doorsOf, guardDoors } from './own-names.ts'

interface Asked {
  readonly host?: string
  readonly origin?: string
  readonly method?: 'GET' | 'POST'
  readonly from?: string
}

async function statusOf(
  { host = 'localhost:4310', origin, method = 'GET', from = '127.0.0.1' }: Asked,
  doors = doorsOf('127.0.0.1', null, () => []),
): Promise<number> {
  const app = fastify()
  guardDoors(app, doors)
  app.all('/', () => 'here')
  const headers = { host, ...(origin === undefined ? {} : { origin }) }
  const { statusCode } = await app.inject({ url: '/', method, headers, remoteAddress: from })
  return statusCode
}

describe('a server on this machine alone', () => {
  it.each(['localhost:4310', '127.0.0.1:4310', '[::1]:4310', 'LOCALHOST'])('answers to %s', async (host) => {
    expect(await statusOf({ host })).toBe(200)
  })

  it.each(['depot.local:4310', 'rebound.example', '127.0.0.1.example:4310'])('does not to %j', async (host) => {
    expect(await statusOf({ host })).toBe(421)
  })

  it.each(['https://other.example', 'http://localhost:9999', 'null'])(
    'takes nothing from a page of %s',
    async (origin) => {
      expect(await statusOf({ origin, method: 'POST' })).toBe(403)
      expect(await statusOf({ origin })).toBe(403)
    },
  )

  it('takes what its own page sends', async () => {
    expect(await statusOf({ origin: 'http://localhost:4310', method: 'POST' })).toBe(200)
  })
})

describe('a server on all addresses', () => {
  let names = ['depot.local', '192.168.1.7']
  const doors = doorsOf('0.0.0.0', null, () => names)

  it('shows itself to other machines, and takes nothing from them unencrypted', async () => {
    const other = { host: 'depot.local:4310', from: '192.168.1.20' }
    expect(await statusOf(other, doors)).toBe(200)
    expect(await statusOf({ ...other, method: 'POST' }, doors)).toBe(403)
    expect(await statusOf({ ...other, method: 'POST', from: '::ffff:127.0.0.1' }, doors)).toBe(200)
  })

  it('answers to an address that came while it ran', async () => {
    const asked = { host: '10.0.0.5:4310', from: '10.0.0.9' }
    expect(await statusOf(asked, doors)).toBe(421)
    names = [...names, '10.0.0.5']
    expect(await statusOf(asked, doors)).toBe(200)
  })
})

describe('a server behind a proxy', () => {
  const doors = doorsOf('10.0.0.5', 'https://lapwise.example.org', () => [])
  const proxy = { from: '10.0.0.2', method: 'POST' } as const

  it('takes what comes from where the proxy shows it, whichever host the proxy names', async () => {
    const origin = 'https://lapwise.example.org'
    expect(await statusOf({ ...proxy, host: 'lapwise.example.org', origin }, doors)).toBe(200)
    expect(await statusOf({ ...proxy, host: '10.0.0.5:4310', origin }, doors)).toBe(200)
  })

  it('takes nothing else', async () => {
    expect(await statusOf({ ...proxy, host: '10.0.0.5:4310' }, doors)).toBe(403)
    expect(await statusOf({ ...proxy, host: 'lapwise.example.org', origin: 'https://other.example' }, doors)).toBe(403)
  })
})
