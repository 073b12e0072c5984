import { mkdir, open, rename, stat } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { err, ok, type Result } from '../core/result.ts'
import type { PictureFault } from '../words/problems/file.ts'
import { hashOfFile } from './hash-of-file.ts'
import { syncToDisk } from './sync-to-disk.ts'

/** A kind of picture as its first bytes show it: what a sender says of it does not count. */
export type PhotoType = 'image/jpeg' | 'image/png' | 'image/webp'

export interface KeptPhoto {
  readonly path: string
  readonly type: PhotoType
  readonly bytes: number
}

export type PhotoProblem =
  | { readonly kind: 'another hash'; readonly found: string }
  | { readonly kind: 'no photo'; readonly why: PictureFault }

/** Photos by their SHA-256, each a file that is never written again. */
export interface PhotoFolder {
  /** For uploads that are not complete. */
  readonly uploads: string
  find(sha256: string): Promise<KeptPhoto | null>
  /** Takes the complete file at `path` in as the photo `sha256`, once its content has that hash and is a picture. */
  take(path: string, sha256: string): Promise<Result<KeptPhoto, PhotoProblem>>
}

/** @param faultIn  why the file at a path is no picture that can be read; null when it is one */
export async function openPhotoFolder(
  folder: string,
  faultIn: (path: string) => Promise<PictureFault | null>,
): Promise<PhotoFolder> {
  const uploads = join(folder, 'uploads')
  await mkdir(uploads, { recursive: true })
  const pathOf = (sha256: string): string => join(folder, sha256)

  async function find(sha256: string): Promise<KeptPhoto | null> {
    const path = pathOf(sha256)
    const found = await stat(path).catch((cause: NodeJS.ErrnoException) => {
      if (cause.code === 'ENOENT') return null
      throw cause
    })
    if (found === null) return null
    const type = typeOf(await firstBytes(path))
    if (type === null) throw new Error(`${path} is no photo`)
    return { path, type, bytes: found.size }
  }

  return {
    uploads,
    find,
    async take(path, sha256) {
      const found = await hashOfFile(path)
      if (found !== sha256) return err({ kind: 'another hash', found })
      const type = typeOf(await firstBytes(path))
      const why = type === null ? ({ kind: 'no picture' } as const) : await faultIn(path)
      if (type === null || why !== null) return err({ kind: 'no photo', why: why! })
      await syncToDisk(path)
      await rename(path, pathOf(sha256))
      await syncToDisk(dirname(pathOf(sha256)))
      return ok({ path: pathOf(sha256), type, bytes: (await stat(pathOf(sha256))).size })
    },
  }
}

async function firstBytes(path: string): Promise<Buffer> {
  const file = await open(path)
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(12), 0, 12, 0)
    return buffer.subarray(0, bytesRead)
  } finally {
    await file.close()
  }
}

/** @source ITU-T T.81 (SOI and the marker after it); W3C PNG 5.2; RFC 9649 2.4 (RIFF, size, WEBP) */
function typeOf(first: Buffer): PhotoType | null {
  const hex = first.toString('hex')
  if (hex.startsWith('ffd8ff')) return 'image/jpeg'
  if (hex.startsWith('89504e470d0a1a0a')) return 'image/png'
  return /^52494646.{8}57454250/.test(hex) ? 'image/webp' : null
}
