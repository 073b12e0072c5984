import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler'

/**
 * Which rules the file follows; the typesetter marks one at a time. Either way it is tagged, has its title, language
 * and alternative texts, and carries its fonts.
 */
export type PdfStandard = 'PDF/A-2a' | 'PDF/UA-1'

const standardNames: Readonly<Record<PdfStandard, string>> = { 'PDF/A-2a': 'a-2a', 'PDF/UA-1': 'ua-1' }

/** Pictures by the name under which a template finds them, as `/photos/1`. */
export type Pictures = ReadonlyMap<string, Uint8Array>

/** Where the typesetter sees its files: nothing of the disk is read. */
const workspace = '/lapwise'

/** Made once: it reads the fonts. */
let compiler: NodeCompiler | null = null

/**
 * `template`, a typst document, as PDF. It finds `data` as JSON in `sys.inputs.data`, so that no text of a user is ever
 * read as markup. The same template, data and pictures give the same bytes.
 * @throws Error when the template is wrong or the file would break the standard, with what the typesetter says
 */
export function typeset(template: string, data: unknown, standard: PdfStandard, pictures: Pictures): Uint8Array {
  return withPictures(pictures, (typesetter) => {
    const compiled = typesetter.compile({ mainFileContent: template, inputs: { data: JSON.stringify(data) } })
    const document = compiled.result
    if (document === null) throw new Error(`the document could not be set: ${saidBy(typesetter, compiled)}`)
    const pdf = typesetter.pdf(document, { pdfStandard: standardNames[standard] })
    typesetter.evictCache(10)
    return pdf
  })
}

/** What keeps the typesetter from reading a picture; null when it reads it. A picture read once is not read again soon. */
export function pictureTrouble(bytes: Uint8Array): string | null {
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
