import { createHash } from 'node:crypto'
import { encode } from 'jpeg-js'
import { noEntries } from '../src/formats/entry/run-entries.ts'
import { runFromValue } from '../src/formats/run/run-file.ts'
import { type JudgedRun, judgeKnown } from '../src/operations/judge-readings.ts'
import type { PacketOptions } from '../src/operations/packet-options.ts'
import type { NamedPhoto } from '../src/operations/record-photos.ts'
import { requireRun } from '../src/operations/require-run.ts'
import { writePacket } from '../src/operations/write-packet.ts'
import { english } from '../src/words/english.ts'
import { type BenchRow, figure, median } from './measure.ts'
import { goodReading } from './verdicts.ts'

const photoCount = 40
const packets = 5

/** How long the whole packet of a 60-post run takes, every requirement read, 40 of its readings with a photo. */
export async function benchPacket(): Promise<readonly BenchRow[]> {
  const judged = readRunOf60()
  const photos = judged.readings.slice(0, photoCount).map(
    ({ photos: [photo] }, i): NamedPhoto => ({
      photo: photo!,
      file: `${photo}.jpg`,
      bytes: noisyJpeg(1600, 1200, i),
    }),
  )
  const times: number[] = []
  let bytes = 0
  // The first is the warm-up: it reads the fonts.
  for (let i = 0; i <= packets; i++) {
    const start = performance.now()
    const made = await writePacket(judged, { ...optionsOf(), photos })
    if (i > 0) times.push(performance.now() - start)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    bytes = made.value.reduce((sum, one) => sum + one.bytes.length, 0)
  }
  const { posts } = judged.model.layout
  return [
    {
      what: `packet, ${posts.length} posts, ${judged.readings.length} readings, ${photoCount} photos, ${figure(bytes / 1e6)} MB`,
      figure: `${figure(median(times) / 1000)} s`,
      aim: 'under 3 s',
    },
  ]
}

/** A run of 60 posts, every requirement read, the first readings with a photo each. */
function readRunOf60(): JudgedRun {
  const file = {
    ...{ format: 'lapwise-run/1', name: 'Bench run', units: 'us', work: 'new', letting: '2024-01-01' },
    road: { route: null, side: 'right', datumStation: '100+00', speed: 55, traffic: 'two-way' },
    ...{ system: 'w-beam-midspan-31', first: { sheet: 'flared-terminal-31' }, second: { sheet: 'trailing-anchor-31' } },
    need: { from: '-50 ft', to: '275 ft' },
  }
  const run = runFromValue('run.json', file)
  const required = run.ok ? requireRun('run.json', run.value) : run
  if (!required.ok) throw new Error(JSON.stringify(required.error))
  const readings = required.value.requirements
    .flatMap(goodReading)
    .map((reading, i) => (i < photoCount ? { ...reading, photos: [`photo-${i + 1}`] } : reading))
  return judgeKnown(required.value, readings)
}

/** As a phone takes it, grain and all. */
function noisyJpeg(width: number, height: number, seed: number): Uint8Array {
  const data = Buffer.alloc(width * height * 4, 255)
  let state = seed + 1
  for (let i = 0; i < data.length; i += 4) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    const shade = 128 + 60 * Math.sin(i / 9000) + (state >>> 28)
    data.fill(shade, i, i + 3)
  }
  return encode({ data, width, height }, 80).data
}

const optionsOf = (): PacketOptions => ({
  ...{ page: 'letter', printedAt: '2024-06-01T12:00:00Z', author: 'bench', version: '0', zone: 'UTC', purpose: null },
  lie: 'portrait',
  stakes: { order: 'point, northing, easting, elevation, code', header: true },
  sha256: (content) => createHash('sha256').update(content).digest('hex'),
  sources: { run: 'run.json', readings: 'readings.json' },
  pay: { boundaries: { first: { kind: 'splice' }, second: { kind: 'splice' } }, rounding: '0.1 ft' },
  ...{ ticket: null, place: null, photos: null, absentPhotos: 'problem', entries: noEntries },
  progress: () => {},
  print: english(null),
})
