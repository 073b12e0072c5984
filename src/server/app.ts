import compress from '@fastify/compress'
import fastify, { type FastifyInstance } from 'fastify'
import {
  hasZodFastifySchemaValidationErrors,
  serializerCompiler,
  validatorCompiler,
  type ZodFastifySchemaValidationError,
  type ZodTypeProvider,
} from 'fastify-type-provider-zod'
import { z } from 'zod'
import { shapeProblems } from '../formats/shape-problems.ts'
import { errorAnswer } from '../protocol/error-answer.ts'
import type { Store } from '../store/store.ts'
import { entryRoutes } from './entry-routes.ts'
import { NoJson, readJsonSafely } from './json-body.ts'
import type { KeyPair } from './lan/authority.ts'
import { isLetIn, type LetInParts, letInPath, letInRoutes } from './lan/let-in.ts'
import { plainStyle } from './lan/plain-page.ts'
import { type Doors, guardDoors } from './own-names.ts'
import type { PacketFolder } from './packet-folder.ts'
import type { PacketProcess } from './packet-process.ts'
import { packetRoutes } from './packet-routes.ts'
import { pageRoutes } from './page-routes.ts'
import type { PhotoFolder } from './photo-folder.ts'
import { photoRoutes } from './photo-routes.ts'
import { errorOf, told } from './refusal.ts'
import { runRoutes } from './run-routes.ts'
import { sheetRoutes } from './sheet-routes.ts'

export interface AppParts {
  readonly store: Store
  readonly photos: PhotoFolder
  readonly packets: PacketFolder
  readonly makers: PacketProcess
  /** Folder of the built page. */
  readonly pageFolder: string
  readonly now: () => Date
  /** Of the program. */
  readonly version: string
  readonly doors: Doors
  /** What a server on a local network needs: its certificate, and who is let in; null on this machine alone. */
  readonly lan: { readonly tls: KeyPair; readonly letIn: LetInParts } | null
}

/** Largest request, bytes: a batch of a thousand readings and a long run file are well below. */
const bodyLimit = 4 * 1024 * 1024

export async function createApp({
  store,
  photos,
  packets,
  makers,
  pageFolder,
  now,
  version,
  doors,
  lan,
}: AppParts): Promise<FastifyInstance> {
  const tls = lan === null ? {} : { https: { cert: lan.tls.certificate, key: lan.tls.key } }
  const app: FastifyInstance = fastify({
    bodyLimit,
    forceCloseConnections: 'idle',
    logger: { level: 'error', stream: process.stderr },
    ...tls,
  }).withTypeProvider<ZodTypeProvider>()
  app.setValidatorCompiler(validatorCompiler)
  app.setSerializerCompiler(serializerCompiler)

  guardDoors(app, doors)
  if (lan !== null) await letDevicesIn(app, lan.letIn)
  readJsonSafely(app)
  // What is sent is made small; what comes in is not unpacked: `bodyLimit` would not hold for it.
  await app.register(compress, { globalDecompression: false })
  app.addHook('onSend', async (request, reply) => {
    reply.header('x-content-type-options', 'nosniff').header('referrer-policy', 'no-referrer')
    if (request.routeOptions.url?.startsWith('/api/')) reply.header('cache-control', 'no-store')
  })
  app.setNotFoundHandler((request, reply) =>
    reply.code(404).send({ error: told({ kind: 'nothing at', request: `${request.method} ${request.url}` }) }),
  )
  app.setErrorHandler((error, request, reply) => {
    if (hasZodFastifySchemaValidationErrors(error)) {
      const handedIn = request[(error.validationContext ?? 'body') as 'body' | 'params' | 'query']
      const problems = shapeProblems('request', handedIn, error.validation.map(issueOf))
      return reply.code(400).send(errorOf({ message: { kind: 'request not as it has to be' }, problems }))
    }
    if (error instanceof NoJson)
      return reply.code(400).send(errorOf({ message: { kind: 'no JSON document' }, problems: [error.problem] }))
    const { statusCode = 500, message } = error as { statusCode?: number; message: string }
    if (statusCode < 500) return reply.code(statusCode).send({ error: { message } })
    request.log.error(error)
    return reply.code(500).send({ error: told({ kind: 'own fault' }) })
  })

  const state = z.object({ state: z.enum(['alive', 'ready']) })
  app.get('/healthz', { schema: { response: { 200: state } } }, async () => ({ state: 'alive' as const }))
  app.get('/readyz', { schema: { response: { 200: state, 503: errorAnswer } } }, async (_request, reply) => {
    const written = await store.checkWrite()
    if (written.ok) return { state: 'ready' as const }
    return reply.code(503).send({ error: told({ kind: 'store silent', reason: written.error.reason }) })
  })
  await app.register(runRoutes, { store, now })
  await app.register(sheetRoutes, { now })
  await app.register(entryRoutes, { store })
  await app.register(photoRoutes, { photos })
  await app.register(packetRoutes, { store, photos, packets, makers, now, version })
  await app.register(pageRoutes, { folder: pageFolder })
  return app
}

/**
 * Data goes only to devices that were let in; `/lan-check` tells any page of the local network that the line is trusted.
 * The route that was found decides, not the address as it was written: `/%61pi/runs` leads to the runs too.
 */
async function letDevicesIn(app: FastifyInstance, letIn: LetInParts): Promise<void> {
  app.addHook('onRequest', async (request, reply) => {
    const route = request.routeOptions.url ?? ''
    if (!route.startsWith('/api/') || route === letInPath || (await isLetIn(request, letIn.devices))) return
    return reply.code(401).send({ error: told({ kind: 'device not let in' }) })
  })
  app.get('/lan-check', (_request, reply) => reply.header('access-control-allow-origin', '*').send({ trusted: true }))
  app.get('/plain.css', (_request, reply) => reply.header('content-type', 'text/css').send(plainStyle))
  await app.register(letInRoutes, letIn)
}

/** The issue of the schema, as it was before the framework took it apart. */
const issueOf = ({ keyword, instancePath, params, message }: ZodFastifySchemaValidationError): z.core.$ZodIssue =>
  ({
    ...params,
    code: keyword,
    message,
    path: instancePath
      .split('/')
      .slice(1)
      .map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
  }) as z.core.$ZodIssue
