import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { languages } from '../core/language.ts'
import { paperNames } from '../core/units/paper-names.ts'
import { sheetSchema } from '../formats/sheet/sheet-file.ts'
import { isWhole, sheetDocuments } from '../operations/sheet-document.ts'
import { sheetDocumentPath } from '../protocol/addresses.ts'
import { english } from '../words/english.ts'
import { spanish } from '../words/spanish.ts'
import { refusals } from './refusal.ts'

/** Documents of hardware sheets, which a page hands in: the server keeps none of them. */
export const sheetRoutes: FastifyPluginAsyncZod<{ readonly now: () => Date }> = async (app, { now }) => {
  /** A sheet, with that of the run that an end unit is at. */
  const given = { sheet: sheetSchema(), system: z.nullable(sheetSchema()) }
  const wish = z
    .object({
      kind: z.enum(sheetDocuments),
      ...given,
      other: z.nullable(z.object(given)),
      isChanged: z.boolean(),
      language: z.enum(languages),
      units: z.nullable(z.enum(['us', 'metric'])),
      page: z.enum(paperNames),
      author: z.string().max(200),
    })
    .refine(isWhole)
  app.post(
    sheetDocumentPath,
    { schema: { body: wish, response: { 200: z.instanceof(Buffer), ...refusals } } },
    async (request, reply) => {
      const { language, units, page, author, ...document } = request.body
      const { writeSheetDocument } = await import('../operations/write-sheet-document.ts')
      const print = (language === 'es' ? spanish : english)(units)
      const pdf = await writeSheetDocument(document, { page, author, printedAt: now().toISOString(), print })
      return reply.type('application/pdf').send(Buffer.from(pdf))
    },
  )
}
