/**
 * The JPEG with an Exif segment of its own in the place of any that it has: to be turned by a quarter, taken on
 * 2026-05-04 at 10:30:15 -06:00, at 43° 7' 24.42" N, 89° 32' 35.556" W.
 * @source Exif 2.32 (CIPA DC-008-2019), 4.6: tags 0x0112, 0x8769 (0x9003, 0x9011) and 0x8825 (1 to 4)
 */
export function withExif(jpeg: Uint8Array): Uint8Array<ArrayBuffer> {
  const rest: number[] = []
  for (let at = 2; at < jpeg.length; ) {
    const isSegment = jpeg[at] === 0xff && jpeg[at + 1] !== 0xda
    const end = isSegment ? at + 2 + jpeg[at + 2]! * 256 + jpeg[at + 3]! : jpeg.length
    if (jpeg[at + 1] !== 0xe1) rest.push(...jpeg.subarray(at, end))
    at = end
  }
  const tiff = exifOf()
  const length = tiff.length + 8
  const name = [...'Exif\0\0'].map((letter) => letter.charCodeAt(0))
  return Uint8Array.from([0xff, 0xd8, 0xff, 0xe1, length >> 8, length & 255, ...name, ...tiff, ...rest])
}

const short = (n: number): number[] => [n & 255, n >> 8]
const long = (n: number): number[] => [...short(n & 0xffff), ...short(n >>> 16)]
const ascii = (text: string): number[] => [...`${text}\0`].map((letter) => letter.charCodeAt(0))

type Entry = readonly [tag: number, type: number, count: number, value: readonly number[]]

/** A directory at `at`, its values behind it where they are longer than four bytes. */
function directory(at: number, entries: readonly Entry[]): number[] {
  const head: number[] = short(entries.length)
  const values: number[] = []
  const behind = at + 2 + 12 * entries.length + 4
  for (const [tag, type, count, value] of entries) {
    head.push(...short(tag), ...short(type), ...long(count))
    if (value.length <= 4) head.push(...value, ...Array.from({ length: 4 - value.length }, () => 0))
    else {
      head.push(...long(behind + values.length))
      values.push(...value)
    }
  }
  return [...head, ...long(0), ...values]
}

function exifOf(): number[] {
  const degrees = (whole: number, minutes: number, thousandths: number): number[] =>
    [whole, 1, minutes, 1, thousandths, 1000].flatMap(long)
  const [first, camera] = [8, 8 + 2 + 3 * 12 + 4]
  const cameraFolder = directory(camera, [
    [0x9003, 2, 20, ascii('2026:05:04 10:30:15')],
    [0x9011, 2, 7, ascii('-06:00')],
  ])
  const place = camera + cameraFolder.length
  const placeFolder = directory(place, [
    [1, 2, 2, ascii('N')],
    [2, 5, 3, degrees(43, 7, 24_420)],
    [3, 2, 2, ascii('W')],
    [4, 5, 3, degrees(89, 32, 35_556)],
  ])
  const folder = directory(first, [
    [0x0112, 3, 1, short(6)],
    [0x8769, 4, 1, long(camera)],
    [0x8825, 4, 1, long(place)],
  ])
  return [0x49, 0x49, 0x2a, 0, ...long(first), ...folder, ...cameraFolder, ...placeFolder]
}
