import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import type { HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { languages } from '../core/language.ts'
import { paperNames } from '../core/units/paper-names.ts'
import { sheetSchema } from '../formats/sheet/sheet-file.ts'
import { sheetListPath } from '../protocol/addresses.ts'
import { english } from '../words/english.ts'
import { spanish } from '../words/spanish.ts'
import { refusals } from './refusal.ts'

/** Documents of hardware sheets, which a page hands in: the server keeps none of them. */
export const sheetRoutes: FastifyPluginAsyncZod<{ readonly now: () => Date }> = async (app, { now }) => {
  const wish = z.object({
    sheet: sheetSchema(),
    /** Of the run that an end unit is at. */
    system: z.nullable(sheetSchema()),
    language: z.enum(languages),
    page: z.enum(paperNames),
    author: z.string().max(200),
  })
  app.post(
    sheetListPath,
    { schema: { body: wish, response: { 200: z.instanceof(Buffer), ...refusals } } },
    async (request, reply) => {
      const { sheet, system, language, page, author } = request.body
      const { unconfirmedList } = await import('../operations/write-sheet-list.ts')
      const pdf = await unconfirmedList(sheet, {
        ...{ page, author, printedAt: now().toISOString() },
        system: isSystem(system) ? system : null,
        print: language === 'es' ? spanish(null) : english(null),
      })
      return reply.type('application/pdf').send(Buffer.from(pdf))
    },
  )
}

const isSystem = (sheet: HardwareSheet | null): sheet is LongitudinalSheet => sheet?.kind === 'longitudinal'
