import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { entriesPath } from '../protocol/addresses.ts'
import { entryAnswers, entryBatch, entryPage, mostEntries } from '../protocol/entries.ts'
import type { Store } from '../store/store.ts'
import { errorOf, refusals } from './refusal.ts'
import { entriesAfter } from './stored-entries.ts'
import { takeInEntries } from './take-in-entries.ts'

/** What devices hand in and read on, over all runs. */
export const entryRoutes: FastifyPluginAsyncZod<{ readonly store: Store }> = async (app, { store }) => {
  app.post(
    entriesPath,
    {
      schema: {
        body: entryBatch,
        response: { 200: entryAnswers, ...refusals },
      },
    },
    async (request, reply) => {
      const taken = await takeInEntries(store, request.body.entries)
      return taken.ok ? { answers: taken.value } : reply.code(taken.error.status).send(errorOf(taken.error))
    },
  )

  app.get(
    entriesPath,
    {
      schema: {
        querystring: z.object({
          after: z.coerce.number().int().min(0).default(0),
          limit: z.coerce.number().int().min(1).max(mostEntries).default(mostEntries),
        }),
        response: {
          200: entryPage,
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const { after, limit } = request.query
      const read = await entriesAfter(store, after, limit)
      return read.ok ? { after, ...read.value } : reply.code(read.error.status).send(errorOf(read.error))
    },
  )
}
