import type { RulePicture } from '../../core/hardware/hardware-sheet.ts'
import { err, ok, type Result } from '../../core/result.ts'
import { pictureLimits } from '../../formats/sheet/rule-pictures.ts'

export type PictureRefusal = 'no picture' | 'too large'

/** Long edges that are tried, in pixels, from one that shows a bolt to one that fits whatever it shows; our judgement. */
const edges = [1200, 900, 640, 400] as const

/**
 * The picture in `file`, drawn anew as small as a sheet takes it: what else stands in the file, as the place where a photo was
 * taken, stays behind. A drawing with transparency stays a PNG where it fits; anything else becomes a JPEG.
 */
export async function pictureOfFile(file: Blob): Promise<Result<Omit<RulePicture, 'alt'>, PictureRefusal>> {
  let picture: ImageBitmap
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' })
  } catch {
    return err('no picture')
  }
  const types = file.type === 'image/png' ? (['image/png', 'image/jpeg'] as const) : (['image/jpeg'] as const)
  try {
    for (const type of types)
      for (const edge of edges) {
        const blob = await drawn(picture, edge, type)
        if (blob !== null && blob.size <= pictureLimits.each * 0.75) return ok({ type, base64: await base64Of(blob) })
      }
  } finally {
    picture.close()
  }
  return err('too large')
}

async function drawn(picture: ImageBitmap, edge: number, type: RulePicture['type']): Promise<Blob | null> {
  const scale = Math.min(1, edge / Math.max(picture.width, picture.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(picture.width * scale))
  canvas.height = Math.max(1, Math.round(picture.height * scale))
  const context = canvas.getContext('2d')!
  // Where a JPEG knows no transparency, paper is white.
  if (type === 'image/jpeg') {
    context.fillStyle = '#fff'
    context.fillRect(0, 0, canvas.width, canvas.height)
  }
  context.drawImage(picture, 0, 0, canvas.width, canvas.height)
  return new Promise((resolve) => canvas.toBlob(resolve, type, 0.8))
}

async function base64Of(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer())
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
}
