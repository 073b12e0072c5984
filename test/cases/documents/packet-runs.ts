import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import { exactValue, valueIn } from '../../../src/core/units/quantity-kinds.ts'
import { noEntries, type RunEntries } from '../../../src/formats/entry/run-entries.ts'
import { loadReferenceSystem } from '../../../src/formats/map/reference-system.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { writeRun } from '../../../src/formats/run/write-run.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { deviceRun } from '../../../src/operations/device-run.ts'
import { type JudgedRun, judgeKnown } from '../../../src/operations/judge-readings.ts'
import type { PacketOptions } from '../../../src/operations/packet-options.ts'
import type { RoadPlace } from '../../../src/operations/place-run.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { type PacketFile, writePacket } from '../../../src/operations/write-packet.ts'
import { english } from '../../../src/words/english.ts'
import { sha256 } from '../../fixtures/record-text-of.ts'
import { soundReading } from '../../fixtures/sound-reading.ts'
import { atSplices, inventedRoad, judgedDemo, newYorkEast, sound } from '../exports/export-project.ts'
import { deviceOf, onDevice } from './device-of-demo.ts'

/** The demo on a curved road in a survey-foot zone, a metric run on the same curve in metres, and a run of 61 posts. */
export const packetRuns = ['demo', 'metric', 'long'] as const

export type PacketRun = (typeof packetRuns)[number]

export function judgedOf(run: PacketRun): JudgedRun {
  switch (run) {
    case 'demo':
      return judgedDemo()
    case 'metric':
      return metricRun()
    case 'long':
      return longRun()
  }
}

/** The packet of a run with all that is made of a run on a road; made once, however many tests of a file look at it. */
export function packetOfRun(run: PacketRun): Promise<readonly PacketFile[]> {
  const known = made.get(run)
  if (known !== undefined) return known
  const judged = judgedOf(run)
  const packet = makePacket(judged, run === 'metric' ? entriesOf(judged) : noEntries)
  made.set(run, packet)
  return packet
}

const made = new Map<PacketRun, Promise<readonly PacketFile[]>>()

async function makePacket(judged: JudgedRun, entries: RunEntries): Promise<readonly PacketFile[]> {
  const isMetric = judged.run.units === 'metric'
  const packet = await writePacket(judged, {
    purpose: null,
    ...({ page: isMetric ? 'A4' : 'letter', lie: 'portrait', author: 'M. Reyes' } as const),
    ...{ printedAt: '2016-05-13T09:00:00-06:00', version: '0.1.0', sha256 },
    ...{ sources: { run: 'run.json', readings: 'readings.json' }, pay: atSplices },
    stakes: { order: 'point, northing, easting, elevation, code', header: true },
    ...{ ticket: null, photos: null, absentPhotos: 'left out', entries },
    place: isMetric ? await inMetres() : await inSurveyFeet(),
    ...{ zone: 'America/Denver', print: english(judged.run.units), progress: () => {} },
  })
  return sound(packet)
}

const inSurveyFeet = async (): Promise<PacketOptions['place']> => ({
  run: { offset: 3.6576, road: inventedRoad, unit: 'US survey foot' },
  ...{ system: await newYorkEast(), sqliteAt: null },
})

/** A road of tangent, spiral and arc in NAD83 / UTM zone 18N (EPSG:26918). */
const metricRoad: RoadPlace = {
  horizontal: layAlignment({ point: { easting: 580_000, northing: 4_540_000 }, azimuth: 0.9, station: 6_000 }, [
    { length: 110, curvatureStart: 0, curvatureEnd: 0 },
    { length: 12, curvatureStart: 0, curvatureEnd: 1 / 90 },
    { length: 120, curvatureStart: 1 / 90, curvatureEnd: 1 / 90 },
  ]),
  equations: [],
  surface: null,
}

async function inMetres(): Promise<PacketOptions['place']> {
  const found = await loadReferenceSystem(26_918)
  if (!found.ok) throw new Error(found.error.kind)
  return { run: { offset: 3.6, road: metricRoad, unit: 'metre' }, system: found.value, sqliteAt: null }
}

/** The demo in metric units, read with a metric tape. */
function metricRun(): JudgedRun {
  const { road } = JSON.parse(demoProject().run) as { road: object }
  const judged = judgedDemo({ units: 'metric', road: { ...road, datumStation: '6+120.5', speed: 90 } })
  const readings = judged.readings.map((reading) => {
    const { answer } = reading
    if (answer.kind !== 'measured' || answer.unit !== 'in') return reading
    const value = exactValue(Math.round(valueIn(answer.value, 'mm')), 'mm')
    return { ...reading, answer: { ...answer, value, unit: 'mm' as const, resolution: null } }
  })
  return onDevice(judgeKnown(judged, readings))
}

/** A log, a ticket with a mark near a post, and signatures. */
const entriesOf = (judged: JudgedRun): RunEntries =>
  sound(deviceRun('device.json', deviceOf(judged, writeRun(judged.run), []), judged.run)).entries

/** All that a title block can say. */
const titleBlock = {
  ...{ agency: 'County of Alder, Roads', contract: 'C-2016-14', drawn: 'R. Quist, 2016-05-01' },
  ...{ checked: 'J. Okafor, 2016-05-02', approved: 'M. Reyes, 2016-05-03', seal: true },
  revisions: [
    { date: '2016-05-04', what: 'run made longer' },
    { date: '2016-05-12', what: 'as built', replacedDate: '2016-05-04', replacedHash: '719ca09a8f763b9c' },
  ],
}

/** 61 posts in which every seventh place was not read, and one height is an inch too low. */
function longRun(): JudgedRun {
  const file = JSON.parse(demoProject().run) as object
  const text = JSON.stringify({
    ...file,
    need: { from: '-50 ft', to: '277 ft' },
    project: 'Resurfacing 2016',
    titleBlock,
  })
  const required = sound(requireRun('run.json', sound(readRun('run.json', text))))
  const readings = required.requirements.flatMap((requirement, i) => (i % 7 === 3 ? [] : soundReading(requirement)))
  return judgeKnown(
    required,
    readings.map((reading) =>
      reading.of === 'post-31/rail-height' && reading.answer.kind === 'measured'
        ? { ...reading, answer: { ...reading.answer, value: exactValue(29, 'in') } }
        : reading,
    ),
  )
}
