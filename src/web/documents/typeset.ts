import openCompiler, { type TypstCompiler, TypstCompilerBuilder } from '@myriaddreamin/typst-ts-web-compiler'
import { unzipSync } from 'fflate'
import { isPrintable } from '../../documents/pdf/printable-text.ts'
import type { Pictures } from '../../documents/pdf/typeset.ts'
import { documentFonts } from './document-fonts.ts'
import { keptTypesetter } from './kept-typesetter.ts'

/** Opened once: it is large. Where what it needs cannot be fetched, the next document tries again. */
let compiler: Promise<TypstCompiler> | null = null

/**
 * The same as the server's: `template` set with `data` as PDF, tagged, its fonts within. It knows no standards for
 * archives, so that the file is marked with none, and would leave out in silence what its fonts lack.
 * @throws Error when the template is wrong, or holds a character that the fonts do not have
 */
export async function typeset(template: string, data: unknown, pictures: Pictures): Promise<Uint8Array> {
  const strange = firstStrange([template, data])
  if (strange !== null) throw new Error(`the fonts lack ${strange}`)
  const { result, diagnostics } = compiled(await opened(), template, data, pictures)
  if (result === undefined) throw new Error(saidIn(diagnostics))
  return result
}

/** What keeps the typesetter from reading a picture; null when it reads it. */
export async function pictureTrouble(bytes: Uint8Array): Promise<string | null> {
  const name = '/photos/1'
  const { result, diagnostics } = compiled(await opened(), `#image("${name}")`, {}, new Map([[name, bytes]]))
  return result === undefined ? saidIn(diagnostics) : null
}

function opened(): Promise<TypstCompiler> {
  compiler ??= open()
  compiler.catch(() => {
    compiler = null
  })
  return compiler
}

function compiled(typesetter: TypstCompiler, template: string, data: unknown, pictures: Pictures): Compiled {
  typesetter.reset_shadow()
  typesetter.add_source(main, template)
  for (const [name, bytes] of pictures) typesetter.map_shadow(name, bytes)
  const made: Compiled = typesetter.compile(main, [['data', JSON.stringify(data)]], 'pdf', inFull)
  typesetter.reset()
  return made
}

const saidIn = (diagnostics: Compiled['diagnostics']): string =>
  diagnostics?.map(({ message }) => message).join('; ') ?? 'no reason given'

/** Where the template lies in what the typesetter sees. */
const main = '/main.typ'

/** How the typesetter is to say what is wrong. */
const inFull = 3

interface Compiled {
  readonly result?: Uint8Array
  readonly diagnostics?: readonly { readonly message: string }[]
}

async function open(): Promise<TypstCompiler> {
  const files = unzipSync(await keptTypesetter())
  await openCompiler({ module_or_path: files['compiler.wasm'] as BufferSource })
  const builder = new TypstCompilerBuilder()
  builder.set_dummy_access_model()
  for (const name of documentFonts) {
    const font = files[`${name}.font`]
    if (font === undefined) throw new Error(`the typesetter came without ${name}`)
    await builder.add_raw_font(font)
  }
  return builder.build()
}

/** The first character in `data`, at any depth, that would be missing, with its number; null when there is none. */
function firstStrange(data: unknown): string | null {
  if (typeof data === 'string') {
    const letter = [...data].find((one) => !isPrintable(one))
    return letter === undefined ? null : `${letter} (U+${letter.codePointAt(0)!.toString(16).toUpperCase()})`
  }
  if (typeof data !== 'object' || data === null) return null
  for (const part of Object.values(data)) {
    const strange = firstStrange(part)
    if (strange !== null) return strange
  }
  return null
}
