import { join } from 'node:path'
import fastifyStatic from '@fastify/static'
import type { FastifyPluginAsync } from 'fastify'
import { contentPolicy } from '../protocol/content-policy.ts'

/** A page can keep itself out of the frames of others by a header alone. */
const policy = [...contentPolicy, "frame-ancestors 'none'"].join('; ')

/** What the page needs beside its assets, under names that stay: asked for anew each time. */
const stableFiles = ['sw.js', 'manifest.webmanifest', 'icon-192.png', 'icon-512.png']

/** The page and its scripts; whoever opens the address of a view gets the page, which then shows that view. */
export const pageRoutes: FastifyPluginAsync<{ readonly folder: string }> = async (app, { folder }) => {
  await app.register(fastifyStatic, {
    root: join(folder, 'assets'),
    prefix: '/assets/',
    // Their names hold a hash of what is in them.
    immutable: true,
    maxAge: '365d',
    dotfiles: 'ignore',
    // They were packed when the page was built.
    preCompressed: true,
    setHeaders: (reply) => reply.setHeader('vary', 'accept-encoding'),
    index: false,
  })
  const send = (path: string, file: string): void => {
    app.get(path, (_request, reply) =>
      reply
        .header('content-security-policy', policy)
        .header('cache-control', 'no-cache')
        .sendFile(file, folder, { cacheControl: false }),
    )
  }
  for (const path of [
    '/',
    '/index.html',
    '/need',
    '/check',
    '/lay-out',
    '/bring-over',
    '/glossary',
    '/gallery',
    '/shelf',
    '/shelf/*',
    '/drills',
    '/drills/*',
    '/runs/:run',
    '/runs/:run/*',
  ])
    send(path, 'index.html')
  for (const path of ['/rescue', '/rescue.html']) send(path, 'rescue.html')
  for (const file of stableFiles) send(`/${file}`, file)
}
