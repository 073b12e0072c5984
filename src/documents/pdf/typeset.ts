import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler'

/**
 * Which rules the file follows; the typesetter marks one at a time. Either way it is tagged, has its title, language
 * and alternative texts, and carries its fonts.
 */
export type PdfStandard = 'PDF/A-2a' | 'PDF/UA-1'

const standardNames: Readonly<Record<PdfStandard, string>> = { 'PDF/A-2a': 'a-2a', 'PDF/UA-1': 'ua-1' }

/** Made once: it reads the fonts. */
let compiler: NodeCompiler | null = null

/**
 * `template`, a typst document, as PDF. It finds `data` as JSON in `sys.inputs.data`, so that no text of a user is ever
 * read as markup. The same template and data give the same bytes.
 * @throws Error when the template is wrong or the file would break the standard, with what the typesetter says
 */
export function typeset(template: string, data: unknown, standard: PdfStandard): Uint8Array {
  compiler ??= NodeCompiler.create()
  const compiled = compiler.compile({ mainFileContent: template, inputs: { data: JSON.stringify(data) } })
  const document = compiled.result
  if (document === null) {
    const error = compiled.takeError()
    const said = error === null ? 'no reason given' : JSON.stringify(compiler.fetchDiagnostics(error))
    throw new Error(`the document could not be set: ${said}`)
  }
  const pdf = compiler.pdf(document, { pdfStandard: standardNames[standard] })
  compiler.evictCache(10)
  return pdf
}
