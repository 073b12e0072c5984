import { describe, expect, it } from 'vitest'
import { crewSheetContents } from '../../../src/documents/crew-sheet-contents.ts'
import { recordContents } from '../../../src/documents/record-contents.ts'
import { runSheets } from '../../../src/documents/xlsx/run-sheets.ts'
import { elevationDrawing } from '../../../src/drawing/views/elevation.ts'
import { stripDrawing } from '../../../src/drawing/views/strip.ts'
import type { EntryOf, PhotoBody } from '../../../src/formats/entry/entry-kinds.ts'
import type { RunFile } from '../../../src/formats/run/run-file.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { stripInput } from '../../../src/operations/strip-input.ts'
import { quantityList } from '../../../src/operations/write-exports.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { english } from '../../../src/words/english.ts'
import type { Print } from '../../../src/words/print.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { pseudo } from '../../pseudo/pseudo.ts'
import { atSplices, judgedDemo, sound } from '../exports/export-project.ts'
import { drawingTexts } from '../spanish/drawing-texts.ts'

// Names that are also words of the trade, and lengths as people write them.
const own = {
  run: 'Post hill, 1,250 ft',
  route: 'Rail Road 31 in',
  obstruction: 'Bolt culvert, 48 in',
  reader: 'Ana Poste',
  finder: 'Ned Post',
  note: 'Rail seen 1,250 ft on, 31 in high, poste',
  seen: 'Bolt lies 31 in off, a {31 in} one',
  caption: 'Panel, 1,250 ft on',
}

const demo = judgedDemo()
const run: RunFile = {
  ...demo.run,
  name: own.run,
  units: 'metric',
  road: { ...demo.run.road, route: own.route, datumStation: '1+200' },
  obstructions: demo.run.obstructions.map((one) => ({ ...one, name: own.obstruction })),
}
const freeFinding = {
  ...{ id: 'free-1', what: 'debris' as const, of: 'post-3', note: own.seen, photos: [] },
  ...{ by: own.finder, at: '2026-05-04T15:30:00.000Z', closed: null },
} as const
const judged = judgeKnown(
  { ...demo, run },
  demo.readings.map((one) => ({ ...one, by: own.reader, note: own.note })),
  new Map(),
  undefined,
  [freeFinding],
)
const photo: EntryOf<PhotoBody> = {
  ...{ id: 'p', author: own.finder, capturedAt: '2026-05-04T15:30:00.000Z', supersedes: null },
  body: {
    ...({ sha256: 'b'.repeat(64), type: 'image/jpeg', bytes: 1, width: 1, height: 1 } as const),
    ...{ takenAt: null, position: null, of: 'post-3/rail-height', drawnOn: null, note: own.caption },
  },
}

/** Everything that the outputs say, and in which of `own` has to stand. */
const outputs: Readonly<Record<string, readonly [(keyof typeof own)[], (print: Print) => unknown]>> = {
  record: [
    ['run', 'route', 'reader', 'finder', 'note', 'seen', 'caption'],
    (print) =>
      recordContents(
        recordInput(judged, print),
        { printedAt: '2026-05-05T09:00:00Z', author: '', hash: '' },
        {
          signed: [],
          photos: [photo],
          photoStrokes: [],
          photoHashes: {},
          photosHash: '',
          photosHere: new Set([photo.body.sha256]),
          versions: [],
          assignments: [],
        },
      ),
  ],
  'crew sheet': [['run', 'route'], (print) => crewSheetContents(recordInput(judged, print), null)],
  workbook: [
    ['run', 'route', 'reader', 'note', 'seen'],
    (print) =>
      runSheets(recordInput(judged, print), null, sound(quantityList('run', judged, atSplices, print)), {
        photos: [photo],
        versions: [],
        assignments: [],
      }),
  ],
  strip: [['run', 'route', 'obstruction'], (print) => drawingTexts(stripDrawing(stripInput(judged, print)))],
  elevation: [['run', 'route'], (print) => drawingTexts(elevationDrawing(stripInput(judged, print)))],
}

const timesIn = (text: string, words: string): number => text.split(words).length - 1
const textOf = (said: unknown): string => JSON.stringify(said)

describe.each(Object.entries(outputs))('%s', (_, [held, say]) => {
  it('has what people wrote as they wrote it, in each language and in metric', () => {
    const published = textOf(say(english(null)))
    for (const name of held) expect(timesIn(published, own[name]), name).toBeGreaterThan(0)
    for (const print of [english('metric'), spanish('metric'), spanish('us')])
      for (const [name, words] of Object.entries(own))
        expect(timesIn(textOf(say(print)), words), name).toBe(timesIn(published, words))
  })

  it('marks it as theirs', () => {
    const said = textOf(say(pseudo('metric')))
    for (const name of held) expect(said, name).toContain(`‹${own[name]}›`)
    const ours = said.replaceAll(/‹[^‹›]*›/g, '')
    for (const words of Object.values(own)) expect(ours).not.toContain(words)
  })
})
