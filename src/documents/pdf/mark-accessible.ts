import { PDFBool, PDFDict, PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib'

/**
 * `pdf`, which the typesetter marked as PDF/A-2a, marked as PDF/UA-1 as well: its metadata name that standard, and a
 * reader shows the title instead of the file's name. Nothing else of its content changes. Whether it follows PDF/UA-1 is
 * not looked at here.
 * @throws RangeError when the file is not as the typesetter writes PDF/A
 * @source ISO 14289-1:2014, clauses 5 and 7.1; ISO 19005-2:2011, 6.6.2.3.3 (a schema that PDF/A does not know is described)
 */
export async function markAccessible(pdf: Uint8Array): Promise<Uint8Array> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false })
  const { catalog, context } = document
  const preferences = catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict)
  preferences.set(PDFName.of('DisplayDocTitle'), PDFBool.True)
  const name = PDFName.of('Metadata')
  const metadata = catalog.lookup(name)
  if (!(metadata instanceof PDFRawStream)) throw new RangeError('the file has no metadata')
  const marked = withAccessibility(new TextDecoder().decode(metadata.contents))
  catalog.set(name, context.register(PDFRawStream.of(metadata.dict.clone(context), new TextEncoder().encode(marked))))
  return document.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false })
}

function withAccessibility(xmp: string): string {
  const [beforeSchemas, afterSchemas, ...more] = xmp.split(schemasEnd)
  if (afterSchemas === undefined || more.length > 0) throw new RangeError('the metadata describe no schemas')
  const described = `${beforeSchemas}${accessibilitySchema}${schemasEnd}${afterSchemas}`
  if (!described.includes(archiveMark)) throw new RangeError('the metadata do not say PDF/A')
  return described.replace(archiveMark, `<pdfuaid:part xmlns:pdfuaid="${namespace}">1</pdfuaid:part>${archiveMark}`)
}

const namespace = 'http://www.aiim.org/pdfua/ns/id/'
const schemasEnd = '</rdf:Bag></pdfaExtension:schemas>'
const archiveMark = '<pdfaid:part>'

const accessibilitySchema = [
  '<rdf:li rdf:parseType="Resource">',
  '<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>',
  `<pdfaSchema:namespaceURI>${namespace}</pdfaSchema:namespaceURI>`,
  '<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>',
  '<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">',
  '<pdfaProperty:category>internal</pdfaProperty:category>',
  '<pdfaProperty:description>Part of ISO 14289 that the file follows</pdfaProperty:description>',
  '<pdfaProperty:name>part</pdfaProperty:name>',
  '<pdfaProperty:valueType>Integer</pdfaProperty:valueType>',
  '</rdf:li></rdf:Seq></pdfaSchema:property>',
  '</rdf:li>',
].join('')
