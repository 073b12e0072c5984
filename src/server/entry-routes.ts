import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import type { Store } from '../store/store.ts'
import { errorOf, problemShape, refusals } from './refusal.ts'
import { entriesAfter } from './stored-entries.ts'
import { takeInEntries } from './take-in-entries.ts'

/** Most entries in one batch or one answer. */
const mostEntries = 1000

const answer = z.discriminatedUnion('outcome', [
  z.object({ id: z.string(), outcome: z.enum(['stored', 'already']), seq: z.int() }),
  z.object({
    id: z.string(),
    outcome: z.literal('rejected'),
    reason: z.string(),
    problems: z.array(problemShape).readonly(),
  }),
])

const entry = z.object({
  ...{ seq: z.int(), id: z.string(), project: z.string(), run: z.string(), kind: z.string(), schemaVersion: z.int() },
  ...{ author: z.string(), device: z.string(), capturedAt: z.string(), storedAt: z.string() },
  ...{ supersedes: z.string().nullable(), body: z.unknown() },
})

/** What devices hand in and read on, over all runs. */
export const entryRoutes: FastifyPluginAsyncZod<{ readonly store: Store }> = async (app, { store }) => {
  app.post(
    '/api/entries',
    {
      schema: {
        body: z.object({ entries: z.array(z.unknown()).min(1).max(mostEntries) }),
        response: { 200: z.object({ answers: z.array(answer).readonly() }), ...refusals },
      },
    },
    async (request, reply) => {
      const taken = await takeInEntries(store, request.body.entries)
      return taken.ok ? { answers: taken.value } : reply.code(taken.error.status).send(errorOf(taken.error))
    },
  )

  app.get(
    '/api/entries',
    {
      schema: {
        querystring: z.object({
          after: z.coerce.number().int().min(0).default(0),
          limit: z.coerce.number().int().min(1).max(mostEntries).default(mostEntries),
        }),
        response: {
          200: z.object({
            after: z.int(),
            entries: z.array(entry).readonly(),
            more: z.boolean(),
            /** Where to read on. */
            cursor: z.int(),
            /** Id of the entry there. */
            cursorId: z.string().nullable(),
            /** Id of the entry at `after`: not the one that a device knows there, when its cursor is of another store. */
            at: z.string().nullable(),
          }),
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
