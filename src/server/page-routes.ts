import { join } from 'node:path'
import fastifyStatic from '@fastify/static'
import type { FastifyPluginAsync } from 'fastify'

const contentPolicy = [
  "default-src 'self'",
  "img-src 'self' blob: data:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ')

/** The page and its scripts; whoever opens the address of a view gets the page, which then shows that view. */
export const pageRoutes: FastifyPluginAsync<{ readonly folder: string }> = async (app, { folder }) => {
  await app.register(fastifyStatic, {
    root: join(folder, 'assets'),
    prefix: '/assets/',
    // Their names hold a hash of what is in them.
    immutable: true,
    maxAge: '365d',
    dotfiles: 'ignore',
    index: false,
  })
  for (const path of ['/', '/runs/:run', '/runs/:run/*'])
    app.get(path, (_request, reply) =>
      reply
        .header('content-security-policy', contentPolicy)
        .header('cache-control', 'no-cache')
        .sendFile('index.html', folder, { cacheControl: false }),
    )
}
