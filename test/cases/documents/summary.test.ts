// Two pages beside the record: nothing on them that the record does not say, nothing set aside that they do not show.
import { createRequire } from 'node:module'
import type jsQr from 'jsqr'
import { describe, expect, test } from 'vitest'
import { firstVersionOf } from '../../../src/core/record/version.ts'
import { noEntries } from '../../../src/formats/entry/run-entries.ts'
import { checkShape } from '../../../src/formats/read-json.ts'
import { type RecordFile, recordFileShape } from '../../../src/formats/record/record-file-shape.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { deviceRun } from '../../../src/operations/device-run.ts'
import { type JudgedRun, judgeKnown } from '../../../src/operations/judge-readings.ts'
import { pinned } from '../../../src/operations/pin-run.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { type RecordOptions, recordFileText, writeRecord } from '../../../src/operations/write-record.ts'
import { writeRunSummary } from '../../../src/operations/write-run-summary.ts'
import { english } from '../../../src/words/english.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { sampleReading } from '../../fixtures/record-inputs.ts'
import { sha256 } from '../../fixtures/record-text-of.ts'
import { judgedDemo, sound } from '../exports/export-project.ts'
import { deviceOf, onDevice } from './device-of-demo.ts'
import { fileOf, isInstalled, outputOf, pixelsOf, qpdfCheck, textOf } from './outside-programs.ts'

const readCode: typeof jsQr = createRequire(import.meta.url)('jsqr')

const options: RecordOptions = {
  ...({ page: 'letter', lie: 'portrait' } as const),
  ...{ printedAt: '2016-05-13T09:00:00-06:00', author: 'M. Reyes', sha256, entries: noEntries, photos: null },
  print: english(null),
}

const summaryOf = async (judged: JudgedRun, changes: Partial<RecordOptions> = {}): Promise<string> =>
  fileOf((await writeRunSummary(judged, { ...options, ...changes })).pdf, 'summary.pdf')
const pagesOf = (path: string): number => Number(/^Pages: +(\d+)$/m.exec(outputOf('pdfinfo', path))?.[1])

/** What a reader of QR codes that nobody here wrote finds on the first page. */
function codeOn(path: string): string | undefined {
  const { width, pixels } = pixelsOf(path, 1, 200)
  const count = pixels.length / 3
  const seen = new Uint8ClampedArray(4 * count)
  for (let i = 0; i < count; i++) seen.set([...pixels.subarray(3 * i, 3 * i + 3), 255], 4 * i)
  return readCode(seen, width, count / width)?.data
}

const canCheck = isInstalled('qpdf') && isInstalled('pdftotext') && isInstalled('pdfinfo') && isInstalled('pdftoppm')

describe.skipIf(!canCheck)('the summary of a record', { timeout: 60_000 }, () => {
  const judged = onDevice(judgedDemo())
  const { entries } = sound(deviceRun('device.json', deviceOf(judged, demoProject().run, []), judged.run))

  test('has verdict, findings, what is not proven, strip and signatures on two pages, as the record says them', async () => {
    const path = await summaryOf(judged, { entries })
    expect([qpdfCheck(path), pagesOf(path)]).toEqual([0, 2])
    const text = textOf(path)
    const record = textOf(fileOf((await writeRecord(judged, { ...options, entries })).pdf, 'record.pdf'))
    for (const words of [
      'NOT ACCEPTABLE 9 requirements not met: see the findings.',
      'Slacken the cable, turn the plate so that the 5-in side is up, tighten, and fix the retainer.',
      'Exchange panel 3 (12 ft 6 in) for a 9 ft 4 1/2 in panel',
      'Nothing: every requirement is read and decided.',
      'The record that was signed is this one.',
    ]) {
      expect(text).toContain(words)
      expect(record).toContain(words)
    }
    expect(text).toContain('OFFSETS ARE DRAWN 2 TIMES THEIR SIZE')
    // What can let it fail comes before what weakens it.
    expect(text.indexOf('3-in side up')).toBeLessThan(text.indexOf('4 3/4 in, 3/4 in outside'))
  })

  test('its QR code, read by another program, names the run and the record', async () => {
    const { hash } = await writeRunSummary(judged, options)
    const run = firstVersionOf(pinned(judged, sha256).run.version!)
    expect(codeOn(await summaryOf(judged))).toBe(`lapwise-record/2\nrun ${run}\nsha256 ${hash}`)
  })

  test('printed elsewhere, by another person, in another language, it is other bytes and the same record', async () => {
    const here = { ...options, entries }
    const there = { ...here, page: 'A4', print: spanish('metric'), author: 'R. Quist' } as const
    const later = { ...there, printedAt: '2036-05-13T09:00:00+02:00' }
    const written = await Promise.all([
      writeRecord(judged, here),
      writeRecord(judged, later),
      writeRunSummary(judged, here),
      writeRunSummary(judged, later),
    ])
    expect(new Set(written.map(({ pdf }) => sha256(pdf))).size).toBe(4)
    const hashes = written.map(({ pdf }, i) => /\b[0-9a-f]{64}\b/.exec(textOf(fileOf(pdf, `${i}.pdf`)))?.[0])
    expect(new Set(hashes)).toEqual(new Set([written[0]!.hash]))
    // One reading more is another record.
    const more = judgeKnown(judged, [...judged.log, { ...judged.log[0]!, id: 'r-more' }])
    expect((await writeRecord(more, here)).hash).not.toBe(written[0]!.hash)
  })

  test('all that the record says is in its JSON file, under the same hash', async () => {
    const file = JSON.parse(recordFileText(judged, { ...options, entries })) as RecordFile
    expect(checkShape('record.json', file, recordFileShape)).toMatchObject({ ok: true })
    const { pdf, hash } = await writeRecord(judged, { ...options, entries })
    expect([file.hash, file.hashRule, file.units]).toEqual([hash, 2, null])
    const text = textOf(fileOf(pdf, 'record.pdf'))
    const said = [
      ...[file.acceptance.means, file.decisionRule, ...file.cautions, ...file.facts.map(({ value }) => value)],
      ...file.findings.flatMap(({ found, mustBe, remedy }) => [found, mustBe, remedy]),
      ...file.signed.map(({ standing }) => standing),
    ]
    expect(said.length).toBeGreaterThan(25)
    expect(said.filter((words) => !text.includes(words))).toEqual([])
    expect(file.holdPoints.length + file.requirements.length).toBe(judged.requirements.length)
  })

  test('of a long run with a fault at each post says how many more findings there are, on two pages', async () => {
    const file = { ...JSON.parse(demoProject().run), obstructions: [], need: { from: 0, to: 9000 } }
    const long = sound(requireRun('run.json', sound(readRun('run.json', JSON.stringify(file)))))
    const wrong = long.requirements.flatMap(({ id, topic, look }, i) => {
      const choice = topic === 'block' && look.kind === 'choose' ? look.choices.find(({ right }) => !right) : undefined
      return choice === undefined ? [] : [sampleReading(`r${i}`, id, { kind: 'choice', choice: choice.id })]
    })
    const found = judgeKnown(long, wrong)
    const path = await summaryOf(found)
    expect([pagesOf(path), found.judgement.findings.length]).toEqual([2, wrong.length])
    const text = textOf(path)
    const more = Number(/(\d+) more findings stand in the record\./.exec(text)?.[1])
    expect(text.match(/Found: /g)).toHaveLength(wrong.length - more)
  })

  test('is said in Spanish, in metres', async () => {
    const text = textOf(await summaryOf(judged, { print: spanish('metric'), page: 'A4' }))
    expect(text).toContain('Resumen del acta de inspección')
    expect(text).not.toMatch(/\b(Findings|Signatures|Summary|record)\b/)
    expect(text).toContain('120.65 mm (4 3/4 in)')
  })
})
