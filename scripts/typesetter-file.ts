import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { zipSync } from 'fflate'
import { documentFonts } from '../src/web/documents/document-fonts.ts'

const require = createRequire(import.meta.url)

/**
 * What a page without a server sets documents with, as one ZIP file: the typesetter, and the faces that the server's own
 * typesetter carries, read out of it: the same letters to the byte, and none of the device's.
 * @throws RangeError when a face is not there: the typesetter is another than the page's
 */
export function typesetterFile(): Uint8Array {
  const compiler = readFileSync(require.resolve('@myriaddreamin/typst-ts-web-compiler/wasm'))
  const native = readFileSync(nativeTypesetter())
  const faces = new Map(facesIn(native).map((face) => [face.name, face.bytes]))
  const fonts = documentFonts.map((name) => {
    const bytes = faces.get(name)
    if (bytes === undefined) throw new RangeError(`the typesetter carries no ${name}`)
    return [`${name}.font`, bytes] as const
  })
  return zipSync({ 'compiler.wasm': compiler, ...Object.fromEntries(fonts) }, { level: 9, mtime: new Date(1980, 0, 1) })
}

/** The library for this machine, which the package of the typesetter loads. */
function nativeTypesetter(): string {
  require('@myriaddreamin/typst-ts-node-compiler')
  const loaded = Object.keys(require.cache).find((path) => path.endsWith('.node') && path.includes('typst-ts'))
  if (loaded === undefined) throw new RangeError('the typesetter has no library for this machine')
  return loaded
}

interface Face {
  /** As `DejaVu Sans Mono Bold`. */
  readonly name: string
  readonly bytes: Uint8Array
}

/** Every OpenType font that lies as it is in `bytes`. */
function facesIn(bytes: Buffer): readonly Face[] {
  const faces: Face[] = []
  for (const mark of [Buffer.from('OTTO'), Buffer.from([0, 1, 0, 0])])
    for (let at = bytes.indexOf(mark); at !== -1; at = bytes.indexOf(mark, at + 4)) {
      const face = faceAt(bytes, at)
      if (face !== null) faces.push(face)
    }
  return faces
}

/**
 * The font that begins at `at`; null where none does.
 * @source OpenType specification 1.9, table directory and `name`
 */
function faceAt(bytes: Buffer, at: number): Face | null {
  const count = bytes.readUInt16BE(at + 4)
  if (count < 6 || count > 40 || at + 12 + 16 * count > bytes.length) return null
  const tables = Array.from({ length: count }, (_, i) => {
    const row = at + 12 + 16 * i
    return {
      tag: bytes.toString('latin1', row, row + 4),
      at: at + bytes.readUInt32BE(row + 8),
      length: bytes.readUInt32BE(row + 12),
    }
  })
  const names = tables.find(({ tag }) => tag === 'name')
  const end = Math.max(...tables.map((table) => table.at + table.length))
  if (names === undefined || !tables.some(({ tag }) => tag === 'cmap') || end > bytes.length) return null
  const name = fullName(bytes.subarray(names.at, names.at + names.length))
  return name === null ? null : { name, bytes: bytes.subarray(at, end) }
}

/** Its full name for Windows (platform 3, name 4), in UTF-16. */
function fullName(table: Buffer): string | null {
  for (let i = 0; i < table.readUInt16BE(2); i++) {
    const record = 6 + 12 * i
    if (table.readUInt16BE(record) !== 3 || table.readUInt16BE(record + 6) !== 4) continue
    const from = table.readUInt16BE(4) + table.readUInt16BE(record + 10)
    return Buffer.from(table.subarray(from, from + table.readUInt16BE(record + 8)))
      .swap16()
      .toString('utf16le')
  }
  return null
}
