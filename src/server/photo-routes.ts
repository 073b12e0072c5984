import { createReadStream } from 'node:fs'
import { FileStore } from '@tus/file-store'
import { ERRORS, Server } from '@tus/server'
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { sha256Text } from '../formats/entry/entry-kinds.ts'
import { photoEndings } from '../formats/entry/photo-endings.ts'
import { wholePicture } from '../formats/picture/read-picture.ts'
import { photoPath, storedPhotosPath, uploadsPath } from '../protocol/addresses.ts'
import { photosAsked, photosStored } from '../protocol/photos.ts'
import type { Answer } from '../words/answers.ts'
import type { PhotoFolder, PhotoProblem } from './photo-folder.ts'
import { errorOf, refusals, told } from './refusal.ts'

/** Largest photo, bytes: the page shrinks what it takes to far below; an original of a phone fits. */
const largestPhoto = 25 * 1024 * 1024

/** How long an upload may be left before it has to begin anew: a week without a connection. */
const uploadAge = 7 * 24 * 60 * 60 * 1000

/** Photos by their hash, and the resumable uploads (tus 1.0) that bring them. */
export const photoRoutes: FastifyPluginAsyncZod<{ readonly photos: PhotoFolder }> = async (app, { photos }) => {
  const uploads = uploadServer(photos)
  await uploads.cleanUpExpiredUploads()
  // The bytes of an upload go to its server as they come.
  app.addContentTypeParser('application/offset+octet-stream', (_request, _payload, done) => done(null))
  app.route({
    method: ['OPTIONS', 'POST', 'HEAD', 'PATCH', 'DELETE'],
    url: uploadsPath,
    handler: (request, reply) => {
      reply.hijack()
      return uploads.handle(request.raw, reply.raw)
    },
  })
  app.route({
    method: ['OPTIONS', 'HEAD', 'PATCH', 'DELETE'],
    url: `${uploadsPath}/:upload`,
    handler: (request, reply) => {
      reply.hijack()
      return uploads.handle(request.raw, reply.raw)
    },
  })

  app.post(
    storedPhotosPath,
    { schema: { body: photosAsked, response: { 200: photosStored, ...refusals } } },
    async (request) => {
      const { photos: asked } = request.body
      const found = await Promise.all(asked.map((sha256) => photos.find(sha256)))
      return { stored: asked.filter((_, i) => found[i] !== null) }
    },
  )

  app.get(
    photoPath(':sha256'),
    { schema: { params: z.object({ sha256: sha256Text }), response: { 200: z.unknown(), ...refusals } } },
    async (request, reply) => {
      const { sha256 } = request.params
      const photo = await photos.find(sha256)
      if (photo === null) return reply.code(404).send(errorOf({ message: { kind: 'no photo', sha256 }, problems: [] }))
      return reply
        .type(photo.type)
        .header('content-length', photo.bytes)
        .header('content-disposition', `attachment; filename="${sha256}.${photoEndings[photo.type]}"`)
        .send(createReadStream(photo.path))
    },
  )
}

function uploadServer(photos: PhotoFolder): Server {
  const datastore = new FileStore({ directory: photos.uploads, expirationPeriodInMilliseconds: uploadAge })
  return new Server({
    path: uploadsPath,
    datastore,
    maxSize: largestPhoto,
    relativeLocation: true,
    allowedOrigins: [],
    onResponseError: (request, error) =>
      isFailedWrite(error) ? { status_code: 507, body: bodyFor(request, { kind: 'photo not written' }) } : undefined,
    async onUploadCreate(request, { metadata }) {
      if (!sha256Text.safeParse(metadata?.sha256).success)
        throw { status_code: 400, body: bodyFor(request, { kind: 'no hash with upload' }) }
      return {}
    },
    async onUploadFinish(request, { id, metadata, storage }) {
      const taken = await photos.take(storage!.path, metadata!.sha256!)
      if (!taken.ok) {
        await datastore.remove(id)
        throw { status_code: 422, body: bodyFor(request, answerTo(taken.error)) }
      }
      await datastore.configstore.delete(id)
      return {}
    },
  })
}

/** The store of uploads says nothing of why it could not write a piece; what it meets before comes as the system says it. */
const isFailedWrite = (error: object): boolean =>
  error === ERRORS.FILE_WRITE_ERROR || ('code' in error && ['ENOSPC', 'EDQUOT', 'EIO'].includes(String(error.code)))

/** In words; and as data for a page that takes JSON. */
function bodyFor(request: { readonly headers: Headers }, answer: Answer): string {
  const takesData = request.headers.get('accept') === 'application/json'
  return takesData ? JSON.stringify(errorOf({ message: answer, problems: [] })) : told(answer).message
}

function answerTo(problem: PhotoProblem): Answer {
  switch (problem.kind) {
    case 'another hash':
      return problem
    case 'no photo':
      return { kind: 'not a photo', expected: wholePicture, found: problem.why }
  }
}
