/**
 * When a JPEG was taken, as its camera wrote it: ISO 8601 with the camera's offset from UTC where it wrote one too, in
 * the camera's local time where it did not; null when it wrote nothing.
 * @source Exif 2.32 (CIPA DC-008-2019): APP1 in 4.7.2; DateTimeOriginal 0x9003 and OffsetTimeOriginal 0x9011 in 4.6.5
 */
export function exifTime(bytes: ArrayBuffer): string | null {
  const view = new DataView(bytes)
  const at = exifStart(view)
  if (at === null || at + 8 > view.byteLength) return null
  const order = view.getUint16(at)
  if (order !== 0x4949 && order !== 0x4d4d) return null
  const tiff = { view, at, isLittle: order === 0x4949 }
  const camera = entryOf(tiff, view.getUint32(at + 4, tiff.isLittle), 0x8769)
  if (camera === null) return null
  const folder = view.getUint32(camera + 8, tiff.isLittle)
  const time = textOf(tiff, entryOf(tiff, folder, 0x9003))
  const found = /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)/.exec(time ?? '')
  if (found === null) return null
  const offset = /^[+-]\d\d:\d\d/.exec(textOf(tiff, entryOf(tiff, folder, 0x9011)) ?? '')?.[0] ?? ''
  return `${found[1]}-${found[2]}-${found[3]}T${found[4]}${offset}`
}

interface Tiff {
  readonly view: DataView
  /** Where the TIFF header stands, from which every offset counts. */
  readonly at: number
  readonly isLittle: boolean
}

/** Where the TIFF header of the Exif segment stands among the segments of a JPEG. */
function exifStart(view: DataView): number | null {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null
  for (let at = 2; at + 10 < view.byteLength; ) {
    const marker = view.getUint16(at)
    if ((marker & 0xff00) !== 0xff00 || marker === 0xffda) return null
    if (marker === 0xffe1 && view.getUint32(at + 4) === 0x45786966) return at + 10
    at += 2 + view.getUint16(at + 2)
  }
  return null
}

/** Where the entry with `tag` stands in a directory of tags; 12 bytes each: tag, type, count, value or its offset. */
function entryOf({ view, at, isLittle }: Tiff, folder: number, tag: number): number | null {
  const start = at + folder
  if (start + 2 > view.byteLength) return null
  const count = view.getUint16(start, isLittle)
  for (let i = 0; i < count; i++) {
    const entry = start + 2 + 12 * i
    if (entry + 12 > view.byteLength) return null
    if (view.getUint16(entry, isLittle) === tag) return entry
  }
  return null
}

function textOf({ view, at, isLittle }: Tiff, entry: number | null): string | null {
  if (entry === null || view.getUint16(entry + 2, isLittle) !== 2) return null
  const length = view.getUint32(entry + 4, isLittle)
  const from = length <= 4 ? entry + 8 : at + view.getUint32(entry + 8, isLittle)
  if (length > 64 || from + length > view.byteLength) return null
  return String.fromCharCode(...new Uint8Array(view.buffer, view.byteOffset + from, length)).replace(/\0.*$/s, '')
}
