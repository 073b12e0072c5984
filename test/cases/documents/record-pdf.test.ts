import { beforeAll, describe, expect, test } from 'vitest'
import { type RecordContents, recordContents } from '../../../src/documents/record-contents.ts'
import { noEntries } from '../../../src/formats/entry/run-entries.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { type JudgedRun, judgeKnown, judgeReadings } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { type RecordOptions, recordInput, writeRecord } from '../../../src/operations/write-record.ts'
import { english } from '../../../src/words/english.ts'
import { inches, noSide, sampleReading } from '../../fixtures/record-inputs.ts'
import { sha256 } from '../../fixtures/record-text-of.ts'
import { runAllowing } from '../../fixtures/roadside.ts'
import { demoVersions } from '../../fixtures/three-versions.ts'
import { fileOf, isInstalled, outputOf, pixelsOf, qpdfCheck, textOf } from './outside-programs.ts'
import { pngOf } from './png-of.ts'

const options = {
  page: 'letter',
  lie: 'portrait',
  printedAt: '2016-05-13T09:00:00-06:00',
  author: 'M. Reyes',
  sha256,
  entries: noEntries,
  photos: null,
  print: english(null),
} as const

const pdfOf = async (judged: JudgedRun, options: RecordOptions): Promise<Uint8Array> =>
  (await writeRecord(judged, options)).pdf

function demoJudged(changes: object = {}): JudgedRun {
  const demo = demoProject()
  const file = JSON.stringify({ ...JSON.parse(demo.run), ...changes })
  const run = readRun('run.json', file)
  const required = run.ok ? requireRun('run.json', run.value) : run
  const readings = readReadings('readings.json', demo.readings)
  if (!required.ok || !readings.ok) throw new Error('the demo project is not sound')
  const judged = judgeReadings('readings.json', required.value, readings.value.readings)
  if (!judged.ok) throw new Error(JSON.stringify(judged.error))
  return judged.value
}

const contentsOf = (judged: JudgedRun): RecordContents =>
  recordContents(
    recordInput(judged, english(null)),
    { printedAt: options.printedAt, author: options.author, hash: sha256('') },
    noSide,
  )

describe('the record of the demo project as PDF', { timeout: 30_000 }, () => {
  const judged = demoJudged()
  const contents = contentsOf(judged)
  let pdf: Uint8Array
  let path: string
  beforeAll(async () => {
    pdf = await pdfOf(judged, options)
    path = fileOf(pdf, 'record.pdf')
  })

  test('the same input gives the same bytes, another time of printing gives others', async () => {
    expect(Buffer.compare(await pdfOf(judged, options), pdf)).toBe(0)
    const later = await pdfOf(judged, { ...options, printedAt: '2016-05-14T09:00:00-06:00' })
    expect(Buffer.compare(later, pdf)).not.toBe(0)
  })

  test('states PDF/A-2a and PDF/UA-1, with the schema of the latter described as the former asks', () => {
    const text = Buffer.from(pdf).toString('latin1')
    expect(text).toContain('<pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>')
    expect(text).toMatch(/<pdfuaid:part [^>]*>1<\/pdfuaid:part>/)
    expect(text).toContain('<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>')
    expect(text).toMatch(/\/DisplayDocTitle true/)
  })

  test.skipIf(!isInstalled('qpdf'))('qpdf finds no fault in it, and finds one in a file cut short', () => {
    expect(qpdfCheck(path)).toBe(0)
    expect(qpdfCheck(fileOf(pdf.subarray(0, pdf.length / 2), 'short.pdf'))).not.toBe(0)
  })

  test.skipIf(!isInstalled('pdftotext'))(
    'pdftotext finds every requirement with limit, reading, verdict and reason',
    () => {
      const text = textOf(path)
      const lines = [...contents.holdPoints, ...contents.requirements]
      expect(lines.length).toBe(judged.requirements.length)
      // A row runs from its requirement to where the next one begins.
      const starts = lines.map((line) =>
        text.indexOf(`${line.must} ${line.id}, by ${line.sheet}, source ${line.source}`),
      )
      for (const [i, line] of lines.entries()) {
        expect(starts[i], line.id).toBeGreaterThan(i === 0 ? 0 : starts[i - 1]!)
        const row = text.slice(starts[i], starts[i + 1])
        for (const words of [line.limit, line.verdict, line.reason, line.confirmation])
          expect(row, line.id).toContain(words)
        for (const reading of line.readings)
          for (const words of [reading.answer, `${reading.by}, ${reading.at} (${reading.id})`, ...reading.photos])
            expect(row, line.id).toContain(words)
        if (line.derived !== null) expect(row, line.id).toContain(line.derived.value)
        expect(row.includes('NOT CONFIRMED'), line.id).toBe(line.confirmation === 'from memory')
      }
      for (const { id, of, answer } of contents.measured) expect(text).toContain(`${id} ${of} ${answer}`)
      for (const { found, mustBe, remedy } of contents.findings) {
        expect(text).toContain(`Found: ${found}`)
        expect(text).toContain(`Must be: ${mustBe}`)
        expect(text).toContain(remedy)
      }
      for (const words of [...contents.cautions, 'NOT ACCEPTABLE', contents.decisionRule]) expect(text).toContain(words)
    },
  )

  test.skipIf(!isInstalled('pdftotext'))(
    'carries the hash of exactly its run, sheets, readings and decision rule',
    async () => {
      const text = textOf(path)
      const [hash] = /[0-9a-f]{64}/.exec(text) ?? []
      expect(hash).toBeDefined()
      const fewer = judgeKnown(judged, judged.readings.slice(1))
      expect(textOf(fileOf(await pdfOf(fewer, options), 'fewer.pdf'))).not.toContain(hash)
    },
  )

  test.skipIf(!isInstalled('pdffonts'))(
    'pdffonts finds every font embedded, and only those that the typesetter carries',
    () => {
      const rows = outputOf('pdffonts', path).trim().split('\n').slice(2)
      expect(rows.length).toBeGreaterThan(0)
      for (const row of rows) {
        expect(row).toMatch(/^[A-Z]{6}\+(LibertinusSerif|DejaVuSansMono)/)
        // embedded, subset, with Unicode values
        expect(row).toMatch(/ yes yes yes +\d+ +0$/)
      }
    },
  )

  test.skipIf(!isInstalled('pdfinfo'))(
    'pdfinfo finds tags, title, author and date, and pages of the size asked for',
    async () => {
      const info = outputOf('pdfinfo', '-isodates', path)
      expect(info).toMatch(/^Title: +Inspection record: Alder Creek culvert, right side$/m)
      expect(info).toMatch(/^Author: +M\. Reyes$/m)
      expect(info).toMatch(/^Tagged: +yes$/m)
      expect(info).toMatch(/^CreationDate: +2016-05-13T15:00:00Z$/m)
      // Letter and tabloid are 8 1/2 x 11 in and 11 x 17 in; A4 and A3 are 210 x 297 mm and 297 x 420 mm (ISO 216).
      const sizes = { letter: [612, 792], tabloid: [792, 1224], A4: [595.28, 841.89], A3: [841.89, 1190.55] } as const
      for (const page of ['letter', 'tabloid', 'A4', 'A3'] as const) {
        const paged = fileOf(await pdfOf(judged, { ...options, page }), `${page}.pdf`)
        const [, width, height] = /^Page size: +([\d.]+) x ([\d.]+) pts/m.exec(outputOf('pdfinfo', paged)) ?? []
        expect(Number(width)).toBeCloseTo(sizes[page][0], 0)
        expect(Number(height)).toBeCloseTo(sizes[page][1], 0)
      }
    },
  )

  test.skipIf(!isInstalled('pdftotext'))('prints the strip to the scale that it states', () => {
    // At 1 in = 20 ft, 25 ft of rail are 1.25 in, which is 90 points on paper.
    const pages = outputOf('pdftotext', '-bbox', path, '-').split('<page ')
    const page = pages.find((one) => one.includes('>(1:240)<'))!
    expect(textOf(path)).toContain('Scale 1 in = 20 ft (1:240)')
    const words = [...page.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="[\d.]+">([^<]+)</g)]
    const marks = ['25', '50', '75', '100', '125'].map((mark) => {
      const ruler = words.find(([, , , , word]) => word === '125')!
      const [, from, , to] = words.find(([, , y, , word]) => word === mark && y === ruler[2])!
      return (Number(from) + Number(to)) / 2
    })
    for (const [i, mark] of marks.slice(1).entries()) expect(mark - marks[i]!).toBeCloseTo(90, 1)
  })
})

const allowing = (topics: readonly string[]): unknown => JSON.parse(runAllowing(demoProject().run, topics)).sheets

describe('the record of a run of which something is set aside', { timeout: 30_000 }, () => {
  test.skipIf(!isInstalled('pdftotext'))('says so on its first page, with the reason and who did it', async () => {
    const judged = demoJudged({ sheets: allowing(['block', 'lap']) })
    const aside = ['post-9/block', 'post-10/block', 'post-12/block', 'splice-4/lap'].map((of, i) => ({
      ...{ ...judged.readings[0]!, id: `aside-${i}`, of, instrument: null, by: i < 3 ? 'R. Quist' : 'M. Reyes' },
      answer: { kind: 'does not apply', because: i < 3 ? 'wood blocks are left out here' : 'by the plan' } as const,
    }))
    const sound = judged.readings.map((reading) => {
      const right = judged.requirements.find(({ id }) => id === reading.of)?.look
      return right?.kind === 'choose'
        ? { ...reading, answer: { kind: 'choice', choice: right.choices.find((one) => one.right)!.id } as const }
        : reading.of === 'post-1/stub-height'
          ? { ...reading, answer: { ...reading.answer, value: 3.25 * 25_400_000 } as typeof reading.answer }
          : reading
    })
    const again = judgeKnown(judged, [...sound, ...aside])
    const path = fileOf(await pdfOf(again, options), 'aside.pdf')
    const first = outputOf('pdftotext', '-raw', '-f', '1', '-l', '1', path, '-').replace(/\s+/g, ' ')
    expect(first).toContain('ACCEPTABLE EXCEPT FOR 4 SET ASIDE BY R. QUIST, M. REYES')
    expect(first).toMatch(/posts 9, 10 and 12 .*3 requirements wood blocks are left out here R[.] Quist/)
    const line = judged.requirements.findIndex(({ id }) => id === 'splice-4/lap') + 1
    expect(first).toMatch(new RegExp(`splice 4 The upstream .*requirement no[.] ${line} by the plan M[.] Reyes`))
  })
})

describe('the record of a run with awkward texts', { timeout: 30_000 }, () => {
  const hostile = 'a "b" <i>&amp; #set text(red) $x$ *bold* _it_ @ref // no `raw` \\u{41} 27¾ ≤ ≥ ±'
  const foreign = 'שלום עולם مرحبا 漢字 😀👩🏽‍🔧 \u202Eback\u202C \u0007'
  const long = 'the post could not be reached because the slope had slid; '.repeat(70).slice(0, 4_000)

  test.skipIf(!isInstalled('pdftotext') || !isInstalled('qpdf'))(
    'prints them as they are, or by number where no font has them',
    async () => {
      const judged = demoJudged({ name: `${hostile} ${foreign}`, sheets: allowing(['block']) })
      const readings = judged.readings.map((reading, i) => {
        if (reading.of === 'post-5/block')
          return { ...reading, answer: { kind: 'does not apply', because: long } as const, by: foreign }
        return i % 10 === 0 ? { ...reading, where: 'x'.repeat(4_000), by: hostile } : reading
      })
      const path = fileOf(await pdfOf(judgeKnown(judged, readings), { ...options, author: foreign }), 'awkward.pdf')
      expect(qpdfCheck(path)).toBe(0)
      const text = textOf(path)
      expect(text).toContain(hostile)
      for (const code of ['[U+6F22]', '[U+1F600]', '[U+202E]', '[U+0007]']) expect(text).toContain(code)
      // The note is longer than a page, so that foot and head of a page stand in it.
      const words = long.trim().split(' ')
      expect(text).toContain(words.slice(0, 40).join(' '))
      expect(text).toContain(words.slice(-40).join(' '))
    },
  )

  test.skipIf(!isInstalled('pdftotext') || !isInstalled('qpdf'))('is whole with no reading at all', async () => {
    const path = fileOf(await pdfOf(judgeKnown(demoJudged(), []), options), 'unread.pdf')
    expect(qpdfCheck(path)).toBe(0)
    expect(textOf(path)).toContain('NOT YET KNOWN')
  })
})

test.skipIf(!isInstalled('pdftotext'))(
  'names what an earlier version asked, with its reading and its photo',
  async () => {
    const [, second] = demoVersions(['v1', 'v2'])
    const required = requireRun('run.json', second!)
    if (!required.ok) throw new Error('the run cannot be laid out')
    const gone = sampleReading('r-gone', 'post-19/rail-height', inches(30.5), {
      version: 'v1',
      photos: ['of the anchor'],
    })
    const photo = {
      ...{ id: 'p1', author: 'J. Okafor', capturedAt: '2026-05-04T15:30:00.000Z', supersedes: null },
      body: {
        ...({ sha256: 'b'.repeat(64), type: 'image/jpeg', bytes: 1, width: 1, height: 1 } as const),
        ...{ takenAt: null, position: null, of: 'second/cable-tight', drawnOn: null, note: 'hangs loose' },
      },
    }
    const entries = { ...noEntries, photos: [photo] }
    const text = textOf(fileOf(await pdfOf(judgeKnown(required.value, [gone]), { ...options, entries }), 'v2.pdf'))
    const at = text.indexOf('Asked by an earlier version')
    expect(at).toBeGreaterThan(0)
    const part = text.slice(at, text.indexOf('Limits that nobody has confirmed', at))
    for (const words of ['r-gone', 'post-19, rail height', '30 1/2 in', 'no longer has this place', 'version 1'])
      expect(part).toContain(words)
    // A line of the table may break behind a hyphen.
    for (const words of ['second end, trailing-end anchor, 31 in, cable- tight', 'hangs loose', 'photo 2'])
      expect(part).toContain(words)
  },
)

test.skipIf(!isInstalled('pdftoppm'))('has what was drawn on a photo over it, where it was drawn', async () => {
  // Light grey, which nothing else in the record is; drawn through its lower right quarter.
  const grey = new Uint8Array(pngOf(80, 40, () => 200))
  const photo = sha256(grey)
  const drawn = { id: 's', photo, width: 80, height: 40, by: 'M. Reyes', at: '2026-05-04T10:30Z' }
  const strokes = [
    {
      kind: 'line',
      points: [
        [0.5, 0.5],
        [1, 1],
      ],
    },
  ] as const
  const entry = {
    ...{ id: 'p1', author: 'J. Okafor', capturedAt: '2026-05-04T15:30:00.000Z', supersedes: null },
    body: {
      ...({ sha256: photo, type: 'image/png', bytes: grey.length, width: 80, height: 40 } as const),
      ...{ takenAt: null, position: null, of: null, drawnOn: null, note: null },
    },
  }
  const entries = { ...noEntries, photos: [entry], photoStrokes: [{ ...drawn, strokes }] }
  const photos = [{ photo, file: 'p.png', bytes: grey }]
  const path = fileOf(await pdfOf(demoJudged(), { ...options, entries, photos }), 'drawn.pdf')
  expect(qpdfCheck(path)).toBe(0)
  // A short hash under the photo, and that of the list where people sign, made here as docs/record-hash.md says.
  const list = [[photo, photo], ...['covered-1', 'covered-2', 'covered-20'].map((name) => [name, null])].sort()
  const said = textOf(path)
  expect(said).toContain(`SHA-256 ${photo.slice(0, 16)}…`)
  expect(said).toContain(sha256(JSON.stringify(Object.fromEntries(list))))
  expect(said).toContain('SHA-256 not known: it was not at hand')
  const page = outputOf('pdftotext', '-raw', path, '-')
    .split('\f')
    .findIndex((text) => text.includes('marked by M. Reyes, 2026-05-04 10:30'))
  const drawnPage = pixelsOf(path, page + 1)
  const ground = boxOf(drawnPage, (red, green, blue) => red === 200 && green === 200 && blue === 200, 20)
  const ink = boxOf(drawnPage, (red, green, blue) => red > 150 && green < 60 && blue < 60, 1)
  const part = (value: number, [from, to]: readonly [number, number]) => (value - from) / (to - from)
  expect(part(ink.x[0], ground.x)).toBeCloseTo(0.5, 1)
  expect(part(ink.x[1], ground.x)).toBeCloseTo(1, 1)
  expect(part(ink.y[0], ground.y)).toBeCloseTo(0.5, 1)
  expect(part(ink.y[1], ground.y)).toBeCloseTo(1, 1)
})

type IsOfColour = (red: number, green: number, blue: number) => boolean

/** What pixels of a colour lie within, as many as `inRow` of them beside each other: the edges of letters are of any grey. */
function boxOf({ width, pixels }: ReturnType<typeof pixelsOf>, isOf: IsOfColour, inRow: number) {
  const all = Array.from({ length: pixels.length / 3 }, (_, i) =>
    isOf(pixels[3 * i]!, pixels[3 * i + 1]!, pixels[3 * i + 2]!),
  )
  const found = all.flatMap((_, i) => (all.slice(i, i + inRow).every(Boolean) ? [i, i + inRow - 1] : []))
  const reach = (values: readonly number[]) =>
    [values.reduce((a, b) => Math.min(a, b)), values.reduce((a, b) => Math.max(a, b))] as const
  return { x: reach(found.map((i) => i % width)), y: reach(found.map((i) => Math.floor(i / width))) }
}
