import { connect, createServer } from 'node:tls'
import { describe, expect, it } from 'vitest'
import {
  fingerprintOf,
  isAuthorityOver,
  type KeyPair,
  makeAuthority,
  makeServerCertificate,
  needsRenewal,
} from './authority.ts'

const now = new Date()
const later = (days: number): Date => new Date(now.getTime() + days * 86_400_000)
const authority = await makeAuthority('depot', now)

/** What OpenSSL, which Node's TLS is, says of the certificate under that name: another implementation of RFC 5280 than ours. */
function saidOf(server: KeyPair, name: string): Promise<string> {
  return new Promise((resolve) => {
    const listening = createServer({ cert: server.certificate, key: server.key })
    listening.listen(0, '127.0.0.1', () => {
      const address = listening.address()
      const port = typeof address === 'object' && address !== null ? address.port : 0
      const servername = /^[\d.:]+$/.test(name) ? '' : name
      const client = connect({ host: '127.0.0.1', port, servername, ca: authority.certificate })
      const end = (said: string): void => {
        client.destroy()
        listening.close(() => resolve(said))
      }
      client.on('secureConnect', () => end('good'))
      client.on('error', (error: NodeJS.ErrnoException) => end(error.message))
    })
    listening.on('tlsClientError', () => {})
  })
}

describe('a certificate of the authority', () => {
  it.each(['depot.local', 'depot', 'localhost', '127.0.0.1'])('is good for %s', async (name) => {
    expect(await saidOf(await makeServerCertificate(authority, [name], now), name)).toBe('good')
  })

  it('is good for no name that is not in it', async () => {
    const server = await makeServerCertificate(authority, ['depot.local'], now)
    expect(await saidOf(server, 'other.local')).toContain('altnames')
  })

  it.each(['bank.example', 'depot.example', '8.8.8.8'])(
    'is never good for %s, which is not of a local network',
    async (name) => {
      const server = await makeServerCertificate(authority, [name], now)
      expect(await saidOf(server, name)).toBe('permitted subtree violation')
    },
  )
})

describe('a certificate is made anew', () => {
  const names = ['depot.local', '192.168.1.7', '::1']

  it('only 30 days before the end of its 90, or when a name came that is not in it', async () => {
    const server = await makeServerCertificate(authority, names, now)
    expect(await needsRenewal(server, authority, names, now)).toBe(false)
    expect(await needsRenewal(server, authority, names, later(59))).toBe(false)
    expect(await needsRenewal(server, authority, names, later(61))).toBe(true)
    expect(await needsRenewal(server, authority, [...names, '10.0.0.5'], now)).toBe(true)
  })

  it('when another authority signed it', async () => {
    const server = await makeServerCertificate(await makeAuthority('depot', now), names, now)
    expect(await needsRenewal(server, authority, names, now)).toBe(true)
  })
})

it('an authority is over 30 days before the end of its ten years', () => {
  expect(isAuthorityOver(authority, later(3600))).toBe(false)
  expect(isAuthorityOver(authority, later(3640))).toBe(true)
})

it('two authorities have different fingerprints, of 32 bytes', async () => {
  const other = await makeAuthority('depot', now)
  expect(await fingerprintOf(authority)).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/)
  expect(await fingerprintOf(other)).not.toBe(await fingerprintOf(authority))
})
