import { createHash } from 'node:crypto'
import { createReadStream, createWriteStream } from 'node:fs'
import { rename, rm } from 'node:fs/promises'
import { Transform } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { syncToDisk } from '../sync-to-disk.ts'

/** Copies a file whose name is its hash; false, and nothing is left at `to`, where its content has another. */
export async function copyByHash(from: string, to: string, sha256: string): Promise<boolean> {
  const hash = createHash('sha256')
  const looking = new Transform({
    transform(bytes, _encoding, done) {
      hash.update(bytes)
      done(null, bytes)
    },
  })
  const unfinished = `${to}.unfinished`
  try {
    await pipeline(createReadStream(from), looking, createWriteStream(unfinished))
  } catch (cause) {
    await rm(unfinished, { force: true })
    throw cause
  }
  if (hash.digest('hex') !== sha256) {
    await rm(unfinished)
    return false
  }
  await syncToDisk(unfinished)
  await rename(unfinished, to)
  return true
}
