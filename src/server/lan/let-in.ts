import type { FastifyPluginAsync, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { errorAnswer } from '../../protocol/error-answer.ts'
import { told } from '../refusal.ts'
import type { DeviceList } from './device-list.ts'
import type { EntryCode } from './entry-code.ts'
import { letInPage, letInScript } from './let-in-page.ts'

export interface LetInParts {
  readonly devices: DeviceList
  readonly code: EntryCode
  readonly now: () => Date
  /** Told when a device came in, so that the console shows the next code. */
  readonly cameIn: (device: string) => void
}

/** Sent over HTTPS only, read by no script, sent to no other site, and bound to this very host. */
const cookieName = '__Host-lapwise-device'
const cookieDays = 400

/** Where a device gives the code: the one question of the API that needs no leave. */
export const letInPath = '/api/let-in'

/** Every device is let in once, by a code that the console shows; without, nothing of the data is given or taken. */
export const letInRoutes: FastifyPluginAsync<LetInParts> = async (app, { devices, code, now, cameIn }) => {
  app.get('/let-in', (request, reply) =>
    reply
      .header('content-type', 'text/html; charset=utf-8')
      .header('cache-control', 'no-store')
      .header('content-security-policy', "default-src 'self'; base-uri 'none'; frame-ancestors 'none'")
      .send(letInPage(request.headers['accept-language'] ?? '')),
  )
  app.get('/let-in.js', (_request, reply) =>
    reply
      .header('content-type', 'text/javascript; charset=utf-8')
      .header('cache-control', 'no-store')
      .send(letInScript),
  )
  const body = z.strictObject({ code: z.string().max(40), device: z.string().trim().min(1).max(80) })
  const answers = { 200: z.object({ device: z.string() }), 400: errorAnswer, 403: errorAnswer, 429: errorAnswer }
  app.post(letInPath, { schema: { body, response: answers } }, async (request, reply) => {
    const sent = body.parse(request.body)
    switch (code.use(sent.code, now().getTime())) {
      case 'too many tries':
        return reply.code(429).send({ error: told({ kind: 'too many codes' }) })
      case 'wrong':
        return reply.code(403).send({ error: told({ kind: 'wrong code' }) })
      case 'right': {
        const token = await devices.add(sent.device, now())
        cameIn(sent.device)
        return reply
          .header(
            'set-cookie',
            `${cookieName}=${token}; Path=/; Secure; HttpOnly; SameSite=Strict; Max-Age=${cookieDays * 86_400}`,
          )
          .send({ device: sent.device })
      }
    }
  })
}

/** Whether the request comes from a device that was let in. */
export async function isLetIn(request: FastifyRequest, devices: DeviceList): Promise<boolean> {
  const cookies = (request.headers.cookie ?? '').split(/;\s*/)
  const token = cookies.find((one) => one.startsWith(`${cookieName}=`))?.slice(cookieName.length + 1)
  return token !== undefined && token !== '' && (await devices.of(token)) !== null
}
