import { createReadStream } from 'node:fs'
import { PassThrough } from 'node:stream'
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { photoEndings } from '../formats/entry/photo-endings.ts'
import { photosNamed } from '../operations/record-photos.ts'
import { packetOfRunPath, packetPath } from '../protocol/addresses.ts'
import { type PacketLine, packetWish } from '../protocol/packets.ts'
import { storableText } from '../store/storable-text.ts'
import type { Store } from '../store/store.ts'
import type { PacketOrder } from './make-packet.ts'
import type { PacketFolder } from './packet-folder.ts'
import type { PacketProcess } from './packet-process.ts'
import type { PhotoFolder } from './photo-folder.ts'
import { badInput, errorOf, type Refusal, refusals } from './refusal.ts'
import { sideEntries, soundRun } from './stored-runs.ts'

interface Parts {
  readonly store: Store
  readonly photos: PhotoFolder
  readonly packets: PacketFolder
  readonly makers: PacketProcess
  readonly now: () => Date
  /** Of the program. */
  readonly version: string
}

/** Everything of a run in one file, made in another process. */
export const packetRoutes: FastifyPluginAsyncZod<Parts> = async (
  app,
  { store, photos, packets, makers, now, version },
) => {
  /** Answers in lines of JSON: one for each file as it is begun, at last where the packet is or why there is none. */
  app.post(
    packetOfRunPath(':run'),
    {
      schema: {
        params: z.object({ run: storableText }),
        body: packetWish,
        response: { 200: z.unknown(), ...refusals },
      },
    },
    async (request, reply) => {
      const judged = await soundRun(store, request.params.run)
      if (!judged.ok) return reply.code(judged.error.status).send(errorOf(judged.error))
      const entries = await sideEntries(store, request.params.run)
      if (!entries.ok) return reply.code(entries.error.status).send(errorOf(entries.error))
      const lines = new PassThrough()
      const tell = (line: PacketLine): void => {
        lines.write(`${JSON.stringify(line)}\n`)
      }
      const make = async (): Promise<void> => {
        const order = {
          ...{ judged: judged.value, entries: entries.value, wish: request.body, version },
          photos: request.body.photos
            ? await photosOf(photosNamed(judged.value.log, judged.value.freeFindings, entries.value.photos), photos)
            : null,
          printedAt: now().toISOString(),
        }
        const made = await makers.make(order, (making) => tell({ making }))
        if ('problems' in made) return tell(errorOf(badInput({ kind: 'no packet made' }, made.problems)))
        tell({ packet: await packets.keep(made.zip) })
      }
      make().then(
        () => lines.end(),
        (cause: unknown) => {
          request.log.error(cause)
          lines.destroy(cause as Error)
        },
      )
      return reply.type('application/x-ndjson').send(lines)
    },
  )

  app.get(
    packetPath(':packet'),
    { schema: { params: z.object({ packet: z.uuid() }), response: { 200: z.unknown(), ...refusals } } },
    async (request, reply) => {
      const found = await packets.find(request.params.packet)
      const none: Refusal = { status: 404, message: { kind: 'packet no longer kept' }, problems: [] }
      if (found === null) return reply.code(404).send(errorOf(none))
      return reply
        .type('application/zip')
        .header('content-length', found.bytes)
        .header('content-disposition', 'attachment; filename="packet.zip"')
        .send(createReadStream(found.path))
    },
  )
}

/** Of the photos `names` those that have arrived. */
async function photosOf(names: readonly string[], photos: PhotoFolder): Promise<NonNullable<PacketOrder['photos']>> {
  const found = []
  for (const photo of names) {
    // A reading from a file may name a photo by any text, a path too.
    const kept = /^[0-9a-f]{64}$/.test(photo) ? await photos.find(photo) : null
    if (kept === null) continue
    found.push({ photo, file: `${photo}.${photoEndings[kept.type]}`, path: kept.path })
  }
  return found
}
