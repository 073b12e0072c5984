import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler'
import { describe, expect, test } from 'vitest'
import { markAccessible } from '../../../src/documents/pdf/mark-accessible.ts'
import { fileOf, isInstalled, outputOf, qpdfCheck } from './outside-programs.ts'

const compiler = NodeCompiler.create()
const set = (pdfStandard: string): Uint8Array => {
  const source = `#set document(title: "Title", author: "A", date: datetime(year: 2020, month: 1, day: 1))
= Heading
#table(columns: 2, table.header[a][b], [⅛ in], [2])`
  return compiler.pdf(compiler.compile({ mainFileContent: source }).result!, { pdfStandard })
}

/** The file as qpdf writes it for reading: objects in one order, streams unpacked. */
const readable = (pdf: Uint8Array, name: string): string =>
  outputOf('qpdf', '--qdf', '--object-streams=disable', '--no-original-object-ids', fileOf(pdf, name), '-')

/** Lines of either file that the other has not, the places of objects aside. */
function differences(a: string, b: string): readonly string[] {
  const isPlace = /^\d{10} \d{5} n|^\d+$|^ *\/(ID|Size) /
  const lines = (text: string): Set<string> => new Set(text.split('\n').filter((line) => !isPlace.test(line.trim())))
  const [ours, theirs] = [lines(a), lines(b)]
  return [...[...ours].filter((line) => !theirs.has(line)), ...[...theirs].filter((line) => !ours.has(line))]
}

describe('a file of the typesetter marked as PDF/UA-1 too', () => {
  test.skipIf(!isInstalled('qpdf'))(
    'differs, as qpdf shows it, in its metadata and the title shown alone',
    async () => {
      const before = set('a-2a')
      const marked = await markAccessible(before)
      expect(qpdfCheck(fileOf(marked, 'marked.pdf'))).toBe(0)
      const found = differences(readable(before, 'before.pdf'), readable(marked, 'marked.pdf'))
      const [told, untold] = found.filter((line) => line.includes('<x:xmpmeta'))
      expect(untold).toBeDefined()
      expect(found.filter((line) => line !== told && line !== untold)).toEqual(['    /DisplayDocTitle true'])
    },
  )

  test('is the same bytes for the same file, and keeps its first identifier', async () => {
    const before = set('a-2a')
    const marked = await markAccessible(before)
    expect(Buffer.compare(await markAccessible(before), marked)).toBe(0)
    const idOf = (pdf: Uint8Array): string => /\/ID \[\s*\(([^)]+)\)/.exec(Buffer.from(pdf).toString('latin1'))![1]!
    expect(idOf(marked)).toBe(idOf(before))
  })

  test('is refused when it is no PDF/A file of the typesetter', async () => {
    await expect(markAccessible(set('ua-1'))).rejects.toThrow(RangeError)
  })
})
