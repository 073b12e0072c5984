import { Inflate } from 'fflate'
import { err, ok, type Result } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import type { InputProblem } from '../input-problem.ts'
import { crc32 } from './crc32.ts'

/** Bytes that are read where they lie, so that a file need not be in memory. */
export interface BytesSource {
  readonly size: number
  read(from: number, to: number): Promise<Uint8Array>
}

/** A part of a ZIP file, as the list at its end has it. */
export interface ZipPart {
  readonly name: string
  readonly method: number
  readonly crc: number
  readonly packed: number
  readonly bytes: number
  /** Where its own header begins. */
  readonly offset: number
}

type Answer<T> = Promise<Result<T, readonly InputProblem[]>>

/** Most parts, and bytes of the list of them, that are looked at: some thousand photos. Our judgement. */
const [mostParts, largestList] = [10_000, 4 * 1024 * 1024]

/** Bytes of the end record, of a part in the list and of a part's own header, without what varies. @source APPNOTE 6.3.10, 4.3 */
const [endBytes, listedBytes, headerBytes] = [22, 46, 30]

/**
 * The parts of a ZIP file, by the list at its end: what lies between is not looked at until it is asked for. Refused are
 * files of several disks or over 4 GB, two parts of one name, parts that overlap, encrypted ones and such as are packed
 * otherwise than by deflate.
 * @param file  name shown in the problems
 */
export async function listZip(file: string, source: BytesSource): Answer<readonly ZipPart[]> {
  const whole = err([{ file, place: '', expected: { kind: 'whole zip' }, found: null }] as const)
  const tailFrom = Math.max(0, source.size - endBytes - 0xffff)
  const tail = viewOf(await source.read(tailFrom, source.size))
  const end = endIn(tail)
  if (end === null) return whole
  const [count, size, offset] = [
    tail.getUint16(end + 10, true),
    tail.getUint32(end + 12, true),
    tail.getUint32(end + 16, true),
  ]
  const isOfOne = tail.getUint32(end + 4, true) === 0 && tail.getUint16(end + 8, true) === count
  if (!isOfOne || count > mostParts || size > largestList || offset + size > tailFrom + end) return whole
  const parts = partsIn(viewOf(await source.read(offset, offset + size)), count)
  if (parts === null) return whole
  const problems: InputProblem[] = []
  const names = new Set<string>()
  for (const { name, method, bytes, packed } of parts) {
    const isReadable = (method === stored && bytes === packed) || method === deflated
    if (!isReadable) problems.push({ file, place: name, expected: { kind: 'readable zip part' }, found: null })
    if (names.has(name)) problems.push({ file, place: name, expected: { kind: 'zip part once' }, found: theirs(name) })
    names.add(name)
  }
  const byOffset = [...parts].sort((a, b) => a.offset - b.offset)
  for (const [i, part] of byOffset.entries()) {
    const least = part.offset + headerBytes + encoded(part.name) + part.packed
    if (least > (byOffset[i + 1]?.offset ?? offset))
      problems.push({ file, place: part.name, expected: { kind: 'zip part apart' }, found: null })
  }
  return problems.length > 0 ? err(problems) : ok(parts)
}

/** The bytes of a part, at most `most`, once they are as the list says: of that length and checksum. */
export async function readZipPart(file: string, source: BytesSource, part: ZipPart, most: number): Answer<Uint8Array> {
  const refused = (expected: InputProblem['expected']) => err([{ file, place: part.name, expected, found: null }])
  if (part.bytes > most || part.packed > most) return refused({ kind: 'zip part at most', bytes: most })
  const head = viewOf(await source.read(part.offset, part.offset + headerBytes))
  const damaged = refused({ kind: 'undamaged zip part' })
  if (head.byteLength < headerBytes || head.getUint32(0, true) !== 0x04034b50) return damaged
  const from = part.offset + headerBytes + head.getUint16(26, true) + head.getUint16(28, true)
  const packed = await source.read(from, from + part.packed)
  if (packed.length !== part.packed) return damaged
  const bytes = part.method === stored ? packed : inflate(packed, part.bytes)
  return bytes === null || bytes.length !== part.bytes || crc32(bytes) !== part.crc ? damaged : ok(bytes)
}

const [stored, deflated] = [0, 8]

/** Where the end record begins: the last one whose comment reaches to the end of the file. */
function endIn(tail: DataView): number | null {
  for (let at = tail.byteLength - endBytes; at >= 0; at -= 1)
    if (tail.getUint32(at, true) === 0x06054b50 && at + endBytes + tail.getUint16(at + 20, true) === tail.byteLength)
      return at
  return null
}

/** Null where the list is not one. */
function partsIn(list: DataView, count: number): readonly ZipPart[] | null {
  const parts: ZipPart[] = []
  let at = 0
  for (let i = 0; i < count; i += 1) {
    if (at + listedBytes > list.byteLength || list.getUint32(at, true) !== 0x02014b50) return null
    const [nameBytes, extra, comment] = [28, 30, 32].map((field) => list.getUint16(at + field, true)) as [
      number,
      number,
      number,
    ]
    const next = at + listedBytes + nameBytes + extra + comment
    if (next > list.byteLength) return null
    const name = new TextDecoder().decode(new Uint8Array(list.buffer, list.byteOffset + at + listedBytes, nameBytes))
    const [crc, packed, bytes, offset] = [16, 20, 24, 42].map((field) => list.getUint32(at + field, true)) as [
      number,
      number,
      number,
      number,
    ]
    const isEncrypted = (list.getUint16(at + 8, true) & 1) === 1
    const method = isEncrypted ? -1 : list.getUint16(at + 10, true)
    parts.push({ name, method, crc, packed, bytes, offset })
    at = next
  }
  return parts
}

/** Null when it is no packed content, or more than `bytes` come of it: then it is let go of at once. */
function inflate(packed: Uint8Array, bytes: number): Uint8Array | null {
  const whole = new Uint8Array(bytes)
  let at = 0
  const inflating = new Inflate((piece) => {
    // Throws where there is more than was said.
    whole.set(piece, at)
    at += piece.length
  })
  try {
    // In steps of a kilobyte, of which a megabyte comes at most, before it is seen to be too much.
    for (let from = 0; from < packed.length; from += step)
      inflating.push(packed.subarray(from, from + step), from + step >= packed.length)
  } catch {
    return null
  }
  return at === bytes ? whole : null
}

const step = 1024

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
const encoded = (name: string): number => new TextEncoder().encode(name).length
