import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { languages } from '../core/language.ts'
import { paperNames } from '../core/units/paper-names.ts'
import { recordPath, runPath, runsPath, stripPath } from '../protocol/addresses.ts'
import { keptRun } from '../protocol/runs.ts'
import { sha256 } from '../store/sha256.ts'
import { storableText } from '../store/storable-text.ts'
import type { Store } from '../store/store.ts'
import { english } from '../words/english.ts'
import { spanish } from '../words/spanish.ts'
import { listRuns } from './list-runs.ts'
import { errorOf, type Refusal, refusals } from './refusal.ts'
import { sideEntries, soundRun, storedReadings, storedRun } from './stored-runs.ts'

const params = z.object({ run: storableText })
const page = z.enum(paperNames)

/**
 * Runs as they stand, and their documents. What is recorded comes in as entries. What draws and sets documents takes as
 * long to load as half of the server; it is loaded when one is asked for.
 */
export const runRoutes: FastifyPluginAsyncZod<{ readonly store: Store; readonly now: () => Date }> = async (
  app,
  { store, now },
) => {
  // Sent as the text that is kept: to read it and write it again takes longer than all else.
  app.get(runsPath, { schema: { response: { 200: z.string(), ...refusals } } }, async (_request, reply) => {
    const runs = await listRuns(store)
    if (!runs.ok) return reply.code(runs.error.status).send(errorOf(runs.error))
    return reply.type('application/json').send(`{"runs":[${runs.value}]}`)
  })

  app.get(
    runPath(':run'),
    {
      schema: {
        params,
        response: {
          200: keptRun,
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const stored = await storedRun(store, request.params.run)
      if (!stored.ok) return reply.code(stored.error.status).send(errorOf(stored.error))
      const { id, project, history } = stored.value
      const read = await storedReadings(store, stored.value)
      if (!read.ok) return reply.code(read.error.status).send(errorOf(read.error))
      return {
        ...{ id, project, run: history.inForce.body, readings: read.value.bodies, findings: read.value.findings },
        cursor: read.value.cursor,
        ...{ version: history.inForce.id, forks: history.forks.map((fork) => fork.id) },
      }
    },
  )

  app.get(
    recordPath(':run'),
    {
      schema: {
        params,
        querystring: z.object({
          page: page.default('letter'),
          author: z.string().max(200).default(''),
          language: z.enum(languages).default('en'),
        }),
        response: { 200: z.instanceof(Buffer), ...refusals },
      },
    },
    async (request, reply) => {
      const judged = await soundRun(store, request.params.run)
      if (!judged.ok) return reply.code(judged.error.status).send(errorOf(judged.error))
      const entries = await sideEntries(store, request.params.run)
      if (!entries.ok) return reply.code(entries.error.status).send(errorOf(entries.error))
      const { language, ...asked } = request.query
      const printing = {
        ...asked,
        lie: 'portrait' as const,
        printedAt: now().toISOString(),
        sha256,
        entries: entries.value,
        photos: null,
        print: (language === 'es' ? spanish : english)(judged.value.run.units),
      }
      const { writeRecord } = await import('../operations/write-record.ts')
      const { pdf } = await writeRecord(judged.value, printing)
      return reply.type('application/pdf').send(Buffer.from(pdf))
    },
  )

  app.get(
    stripPath(':run'),
    {
      schema: {
        params,
        querystring: z.object({
          page: z.enum(['web', ...page.options]).default('web'),
          sheet: z.coerce.number().int().min(1).max(10_000).default(1),
        }),
        response: { 200: z.string(), ...refusals },
      },
    },
    async (request, reply) => {
      const judged = await soundRun(store, request.params.run)
      if (!judged.ok) return reply.code(judged.error.status).send(errorOf(judged.error))
      const { writeStrip } = await import('../operations/write-strip.ts')
      const sheets = writeStrip(judged.value, request.query.page, english(judged.value.run.units))
      const svg = sheets[request.query.sheet - 1]
      const none: Refusal = { status: 404, message: { kind: 'sheets of strip', sheets: sheets.length }, problems: [] }
      if (svg === undefined) return reply.code(404).send(errorOf(none))
      return reply.type('image/svg+xml').send(svg)
    },
  )
}
