import type { SaidPicture } from '../../core/hardware/rule-picture.ts'
import { readPicture } from '../../formats/picture/read-picture.ts'
import type { Print } from '../../words/print.ts'
import { printableText } from './printable-text.ts'
import { pictureTrouble } from './typeset.ts'

/** What a picture of a sheet's own may take on paper, points. */
const most = { width: 170, height: 130 }

/** Most pixels that are drawn in memory, as a small file can claim many; our judgement, and twice what a page makes. */
const mostPixels = 3_000_000

/**
 * A picture of a sheet's own as a template takes drawings; null where its pixels cannot be read: a document is not lost for one
 * picture, and what it shows stands there in words.
 */
export async function ownPictureData({ type, base64, alt }: SaidPicture, print: Print) {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
  const read = readPicture(bytes)
  if (!read.ok || read.value.width * read.value.height > mostPixels || (await pictureTrouble(bytes)) !== null)
    return null
  const { width, height } = read.value
  const scale = Math.min(most.width / width, most.height / height)
  return {
    width: width * scale,
    height: height * scale,
    picture: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><image width="${width}" height="${height}" href="data:${type};base64,${base64}"/></svg>`,
    alt: printableText(print.say(alt)),
  }
}
