import fastify, { type FastifyInstance } from 'fastify'
import { type Doors, guardDoors } from '../own-names.ts'
import { told } from '../refusal.ts'
import { derOf, type KeyPair } from './authority.ts'
import { pickLanguage, plainStyle } from './plain-page.ts'
import { checkScript, type TrustFacts, trustPage } from './trust-page.ts'
import { trustProfile } from './trust-profile.ts'

/**
 * The plain address: it serves how to come to trust the encrypted one, and nothing else. What it hands out is public,
 * and whoever trusts it compares the fingerprint with the console.
 */
export function createTrustServer(authority: KeyPair, facts: TrustFacts, doors: Doors): FastifyInstance {
  const app = fastify({ forceCloseConnections: 'idle', logger: { level: 'error', stream: process.stderr } })
  const certificate = derOf(authority)
  const policy = `default-src 'self'; connect-src https:; base-uri 'none'; frame-ancestors 'none'`
  guardDoors(app, doors)
  app.addHook('onSend', async (_request, reply) => {
    reply.header('x-content-type-options', 'nosniff').header('cache-control', 'no-store')
  })
  app.get('/trust', (request, reply) =>
    reply
      .header('content-type', 'text/html; charset=utf-8')
      .header('content-security-policy', policy)
      .send(
        trustPage(pickLanguage(request.headers['accept-language'] ?? ''), request.headers['user-agent'] ?? '', facts),
      ),
  )
  app.get('/plain.css', (_request, reply) => reply.header('content-type', 'text/css').send(plainStyle))
  app.get('/trust/check.js', (_request, reply) => reply.header('content-type', 'text/javascript').send(checkScript))
  app.get('/trust/authority.crt', (_request, reply) =>
    reply
      .header('content-type', 'application/x-x509-ca-cert')
      .header('content-disposition', 'attachment; filename="lapwise-authority.crt"')
      .send(certificate),
  )
  app.get('/trust/authority.mobileconfig', (_request, reply) =>
    reply.header('content-type', 'application/x-apple-aspen-config').send(trustProfile(certificate, facts.stable)),
  )
  // Everything else leads there: who typed the plain address meant Lapwise.
  app.setNotFoundHandler((request, reply) =>
    request.method === 'GET'
      ? reply.redirect('/trust')
      : reply.code(404).send({ error: told({ kind: 'only trust here' }) }),
  )
  return app
}
