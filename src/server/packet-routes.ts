import { createReadStream } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { PassThrough } from 'node:stream'
import { setImmediate as nextTurn } from 'node:timers/promises'
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { pointOrders } from '../formats/csv/write-points.ts'
import { photoEndings } from '../formats/entry/photo-endings.ts'
import { writeZip } from '../formats/zip/write-zip.ts'
import type { JudgedRun } from '../operations/judge-readings.ts'
import { type NamedPhoto, photosNamed } from '../operations/record-photos.ts'
import { packetOfRunPath, packetPath } from '../protocol/addresses.ts'
import { type PacketLine, packetWish } from '../protocol/packets.ts'
import { sha256 } from '../store/sha256.ts'
import { storableText } from '../store/storable-text.ts'
import type { Store } from '../store/store.ts'
import { english } from '../words/english.ts'
import type { PacketFolder } from './packet-folder.ts'
import type { PhotoFolder } from './photo-folder.ts'
import { badInput, errorOf, type Refusal, refusals } from './refusal.ts'
import { sideEntries, soundRun } from './stored-runs.ts'

interface Parts {
  readonly store: Store
  readonly photos: PhotoFolder
  readonly packets: PacketFolder
  readonly now: () => Date
  /** Of the program. */
  readonly version: string
}

/** Everything of a run in one file. What makes it is loaded when one is asked for. */
export const packetRoutes: FastifyPluginAsyncZod<Parts> = async (app, { store, photos, packets, now, version }) => {
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
      const { photos: wantsPhotos, rounding, ...printing } = request.body
      const lines = new PassThrough()
      const tell = async (line: PacketLine): Promise<void> => {
        lines.write(`${JSON.stringify(line)}\n`)
        // The typesetter holds this process; the line has to leave it before.
        await nextTurn()
      }
      const make = async (): Promise<void> => {
        const { writePacket } = await import('../operations/write-packet.ts')
        const packet = await writePacket(judged.value, {
          ...printing,
          printedAt: now().toISOString(),
          version,
          sha256,
          sources: { run: 'run.json', readings: 'readings.json' },
          pay: { boundaries: { first: { kind: 'splice' }, second: { kind: 'splice' } }, rounding },
          lie: 'portrait',
          stakes: { order: pointOrders[0], header: true },
          ticket: null,
          place: null,
          photos: wantsPhotos
            ? await photosOf(photosNamed(judged.value.log, judged.value.freeFindings, entries.value.photos), photos)
            : null,
          absentPhotos: 'left out',
          entries: entries.value,
          print: english(judged.value.run.units),
          progress: (making) => tell({ making }),
        })
        if (!packet.ok) return tell(errorOf(badInput({ kind: 'no packet made' }, packet.error)))
        await tell({ packet: await packets.keep(writeZip(folderName(judged.value), packet.value)) })
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
async function photosOf(names: readonly string[], photos: PhotoFolder): Promise<readonly NamedPhoto[]> {
  const found: NamedPhoto[] = []
  for (const photo of names) {
    // A reading from a file may name a photo by any text, a path too.
    const kept = /^[0-9a-f]{64}$/.test(photo) ? await photos.find(photo) : null
    if (kept === null) continue
    found.push({ photo, file: `${photo}.${photoEndings[kept.type]}`, bytes: await readFile(kept.path) })
  }
  return found
}

const folderName = ({ run }: JudgedRun): string => `${run.name.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}-packet`
