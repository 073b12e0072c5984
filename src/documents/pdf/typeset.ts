import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler'
import { markAccessible } from './mark-accessible.ts'

/** Pictures by the name under which a template finds them, as `/photos/1`. */
export type Pictures = ReadonlyMap<string, Uint8Array>

/** Where the typesetter sees its files: nothing of the disk is read. */
const workspace = '/lapwise'

/** Made once: it reads the fonts. */
let compiler: NodeCompiler | null = null

/**
 * `template`, a typst document, as PDF: PDF/A-2a and PDF/UA-1, tagged, with title, language and alternative texts, its
 * fonts within. It finds `data` as JSON in `sys.inputs.data`, so that no text of a user is ever read as markup. The same
 * template, data and pictures give the same bytes.
 * @throws Error when the template is wrong or the file would break a standard, with what the typesetter says
 */
export async function typeset(template: string, data: unknown, pictures: Pictures): Promise<Uint8Array> {
  const archived = withPictures(pictures, (typesetter) => {
    const compiled = typesetter.compile({ mainFileContent: template, inputs: { data: JSON.stringify(data) } })
    const document = compiled.result
    if (document === null) throw new Error(`the document could not be set: ${saidBy(typesetter, compiled)}`)
    // It marks one standard at a time, but checks the document by the other too.
    typesetter.pdf(document, { pdfStandard: 'ua-1' })
    const pdf = typesetter.pdf(document, { pdfStandard: 'a-2a' })
    typesetter.evictCache(10)
    return pdf
  })
  return markAccessible(archived)
}

/** What keeps the typesetter from reading a picture; null when it reads it. A picture read once is not read again soon. */
export async function pictureTrouble(bytes: Uint8Array): Promise<string | null> {
  const name = '/photos/1'
  return withPictures(new Map([[name, bytes]]), (typesetter) => {
    const compiled = typesetter.compile({ mainFileContent: `#image("${name}")` })
    return compiled.result === null ? saidBy(typesetter, compiled) : null
  })
}

function withPictures<T>(pictures: Pictures, use: (typesetter: NodeCompiler) => T): T {
  compiler ??= NodeCompiler.create({ workspace })
  for (const [name, bytes] of pictures) compiler.mapShadow(workspace + name, Buffer.from(bytes))
  try {
    return use(compiler)
  } finally {
    for (const name of pictures.keys()) compiler.unmapShadow(workspace + name)
  }
}

function saidBy(typesetter: NodeCompiler, compiled: ReturnType<NodeCompiler['compile']>): string {
  const error = compiled.takeError()
  if (error === null) return 'no reason given'
  return typesetter
    .fetchDiagnostics(error)
    .map(({ message }) => message)
    .join('; ')
}
