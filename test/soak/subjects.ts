import { layAlignment } from '../../src/core/alignment/horizontal-alignment.ts'
import { findNeed } from '../../src/core/need/need.ts'
import type { Result } from '../../src/core/result.ts'
import { parseLength } from '../../src/core/units/length-text.ts'
import { parseStation } from '../../src/core/units/station.ts'
import { readDeviceFile } from '../../src/formats/entry/device-file.ts'
import { entryShape } from '../../src/formats/entry/entry-kinds.ts'
import { noEntries } from '../../src/formats/entry/run-entries.ts'
import { readLandXml } from '../../src/formats/landxml/read-landxml.ts'
import { writeLandXml } from '../../src/formats/landxml/write-landxml.ts'
import { checkShape } from '../../src/formats/read-json.ts'
import { readReadings, writeReadings } from '../../src/formats/readings/readings-file.ts'
import { type RunFile, readRun } from '../../src/formats/run/run-file.ts'
import { writeRun } from '../../src/formats/run/write-run.ts'
import { readSheet, writeSheet } from '../../src/formats/sheet/sheet-file.ts'
import { readSite } from '../../src/formats/site/read-site.ts'
import { writeElements } from '../../src/formats/site/write-elements.ts'
import { computeNeed, needProblem } from '../../src/operations/compute-need.ts'
import { demoProject } from '../../src/operations/demo-project.ts'
import { deviceRun } from '../../src/operations/device-run.ts'
import { type JudgedRun, judgeReadings } from '../../src/operations/judge-readings.ts'
import { layOutRun } from '../../src/operations/lay-out-run.ts'
import { parseNumbers } from '../../src/operations/number-list.ts'
import { judgeOutput, layoutOutput, requirementsOutput } from '../../src/operations/outputs.ts'
import { lineUnit } from '../../src/operations/packet-makers.ts'
import { pictureFault } from '../../src/operations/packet-photos.ts'
import { placeRun, type RoadPlace } from '../../src/operations/place-run.ts'
import { requireRun } from '../../src/operations/require-run.ts'
import {
  quantityList,
  writeRunIfc,
  writeStakeCsv,
  writeStakeDxf,
  writeStakeXml,
} from '../../src/operations/write-exports.ts'
import { writePacket } from '../../src/operations/write-packet.ts'
import { writePlan, writeSection } from '../../src/operations/write-site-drawings.ts'
import { runViews, writeRunView, writeRunViewDxf, writeStrip } from '../../src/operations/write-strip.ts'
import { shippedSheets } from '../../src/sheets/shipped-sheets.ts'
import { english } from '../../src/words/english.ts'
import { pngOf } from '../cases/documents/png-of.ts'
import { validDeviceFiles } from '../fixtures/device-files.ts'
import { validReadings } from '../fixtures/readings-files.ts'
import { recordTextOf, sha256 } from '../fixtures/record-text-of.ts'
import { validRuns } from '../fixtures/run-files.ts'
import { validSites } from '../fixtures/site-files.ts'
import { findNotFinite } from './find-not-finite.ts'

/** How far an input came: it was refused in words, or everything that follows was made of it. */
export type Outcome = 'refused' | 'through'

export interface Subject {
  readonly name: string
  /** Sound inputs, from which the others are made. */
  readonly seeds: readonly Uint8Array[]
  readonly exercise: (input: Uint8Array) => Outcome | Promise<Outcome>
}

const encode = (text: string): Uint8Array => new TextEncoder().encode(text)
const decode = (bytes: Uint8Array): string => new TextDecoder().decode(bytes)
const json = (value: unknown): Uint8Array => encode(JSON.stringify(value))
const stamp = { at: '2026-05-12T10:05:00.000Z', author: 'J. Okafor' }
const pay = { boundaries: { first: { kind: 'splice' }, second: { kind: 'splice' } }, rounding: '0.1 ft' } as const

function expectFinite(what: string, value: unknown): void {
  const place = findNotFinite(value)
  if (place !== null) throw new Error(`${what}: ${place} is not finite`)
}

/** What is drawn or written has no number that is none. */
function expectSound(what: string, text: string): void {
  const found = /.{0,40}\b(?:NaN|-?Infinity)\b.{0,20}/.exec(text)
  if (found !== null) throw new Error(`${what} holds ${JSON.stringify(found[0])}`)
}

const demo = demoProject()
const demoRun = JSON.parse(demo.run) as object
const tangentEnds = {
  system: 'w-beam-midspan-31',
  first: { sheet: 'tangent-terminal-31' },
  second: { sheet: 'tangent-terminal-31' },
}
const lawfulRuns: readonly object[] = [
  demoRun,
  {
    ...{ ...demoRun, ...tangentEnds, units: 'metric', need: { from: 0, to: '40 m' }, obstructions: [], mayExtend: 900 },
    ...{ road: { side: 'left', traffic: 'two-way', datumStation: '6+100.000' } },
    reduced: [{ from: 300, to: 900, spacing: 'half', nested: true }],
    decisionRule: { kind: 'guard band', multiple: 1 },
  },
  { ...demoRun, ...tangentEnds, stock: [150, 300, { length: 112.5, count: 2 }, 187.5], need: { from: -400, to: 900 } },
  {
    ...{ ...demoRun, obstructions: [], need: null },
    first: { standingSplice: { at: 0, position: 'midspan' } },
    second: { standingSplice: { at: 1200, position: 'midspan' } },
  },
  { ...demoRun, second: { sheet: 'bridge-end-31', at: 700 }, need: { from: -600, to: 700 } },
  {
    ...{ ...demoRun, system: 'w-beam-post-splice-27-3-4', obstructions: [{ name: 'inlet', from: 700, to: 720 }] },
    ...{ first: { sheet: 'flared-terminal-27-3-4' }, second: { sheet: 'trailing-anchor-27-3-4' } },
  },
]
const sheetSeeds = shippedSheets.map((sheet) => encode(writeSheet(sheet)))

const metric = {
  format: 'lapwise-site/1',
  units: 'metric',
  road: {
    ...{ speed: 100, adt: 6000, traffic: 'divided', lanes: 4, laneWidth: 3.6, shoulderWidth: 2.4, medianWidth: 12 },
    alignment: {
      kind: 'elements',
      start: { easting: 500_000, northing: 4_000_000, azimuth: 30, station: '1+000.000' },
      elements: [
        { kind: 'tangent', length: 300 },
        { kind: 'spiral', length: 60, radiusStart: null, radiusEnd: 400, turn: 'right' },
        { kind: 'curve', length: 250, radius: 400, turn: 'right' },
      ],
      stationEquations: [{ back: '1+200.000', ahead: '1+250.000' }],
    },
  },
  clearZone: { foreslope: 6 },
  hazards: [{ name: 'pond', from: 1400, to: 1440, near: 6, beyondClearZone: true }],
  barrier: { offset: 3, approachEnd: 'tangent-terminal-31', departureEnd: 'tangent-terminal-31' },
  hardware: { system: 'w-beam-midspan-31', ground: { platformSlope: 10, behindPostOne: 2 } },
}

function exerciseSite(input: Uint8Array): Outcome {
  const site = readSite('site.json', decode(input))
  if (!site.ok) return 'refused'
  expectFinite('site', site.value.road.alignment)
  const need = computeNeed(site.value)
  if (!need.ok) {
    expectFinite('refusal', need.error)
    expectSound('refusal', JSON.stringify(needProblem('site.json', need.error, site.value.units)))
    expectSound('plan', writePlan(site.value, null, 'web', english(null)))
    return 'refused'
  }
  expectFinite('need', need.value)
  expectSound('need', JSON.stringify(need.value))
  const found = findNeed(site.value)
  if (!found.ok) throw new Error('one need is found and the other refused')
  for (const page of ['web', 'letter'] as const) {
    expectSound('plan', writePlan(site.value, found.value, page, english(null)))
    expectSound('section', writeSection(site.value, found.value, found.value.approach.station, page, english(null)))
  }
  if (need.value.run !== null) exerciseRun(json(need.value.run))
  return 'through'
}

const road: RoadPlace = {
  horizontal: layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0.5, station: 6000 }, [
    { length: 400, curvatureStart: 0, curvatureEnd: 0 },
    { length: 60, curvatureStart: 0, curvatureEnd: 1 / 300 },
    { length: 400, curvatureStart: 1 / 300, curvatureEnd: 1 / 300 },
  ]),
  equations: [],
  surface: null,
}

function exerciseRun(input: Uint8Array): Outcome {
  const run = readRun('run.json', decode(input))
  if (!run.ok) return 'refused'
  const again = readRun('run.json', writeRun(run.value))
  if (!again.ok) throw new Error(`a run written is not read again: ${JSON.stringify(again.error)}`)
  const laid = layOutRun('run.json', run.value, 3)
  if (laid.ok) expectFinite('layout', layoutOutput(laid.value, english(null)))
  return judged(run.value, []) === null ? 'refused' : 'through'
}

function judged(run: RunFile, readings: Parameters<typeof judgeReadings>[2]): JudgedRun | null {
  const required = requireRun('run.json', run)
  if (!required.ok) return null
  const result = judgeReadings('readings.json', required.value, readings)
  if (!result.ok) return null
  expectFinite('requirements', requirementsOutput(required.value, english(null)))
  expectFinite('judgement', judgeOutput(result.value, english(null)))
  expectSound('record', recordTextOf(result.value))
  // A long run is drawn and written in full by the packet; each way is tried on what is drawn quickly.
  if (result.value.model.layout.posts.length < 300) exports(result.value)
  return result.value
}

function exports(run: JudgedRun): void {
  for (const view of runViews) {
    for (const page of ['web', 'A4'] as const)
      for (const svg of writeRunView(run, view, page, english(null))) expectSound(view, svg)
    for (const dxf of writeRunViewDxf(run, view, '', english(null))) expectSound(`${view} as DXF`, dxf)
  }
  for (const svg of writeStrip(run, 'letter', english(null))) expectSound('strip', svg)
  const quantities = quantityList('run.json', run, pay, english(null))
  if (quantities.ok) expectFinite('quantities', quantities.value)
  for (const place of [road, null]) {
    const unit = lineUnit(run)
    const placed = placeRun('run.json', run, { offset: 3.6, road: place, unit })
    if (!placed.ok) continue
    expectFinite('staking', placed.value.staking)
    expectFinite('rail', placed.value.rail)
    const order = 'point, northing, easting, elevation, code'
    expectSound('stakes', writeStakeCsv(placed.value, { order, header: true, unit }, english(null)))
    expectSound('stakes as LandXML', writeStakeXml(placed.value, unit, stamp, english(null)))
    expectSound('stakes as DXF', writeStakeDxf(run, placed.value, unit, stamp, english(null)))
    const ifc = writeRunIfc('run.json', run, placed.value, { system: null, unit, sha256, stamp, print: english(null) })
    if (ifc.ok) expectSound('IFC', ifc.value)
  }
}

function sound<T>(result: Result<T, unknown>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}

const demoRunFile = sound(readRun('run.json', demo.run))

function exerciseReadings(input: Uint8Array): Outcome {
  const readings = readReadings('readings.json', decode(input))
  if (!readings.ok) return 'refused'
  const again = readReadings('readings.json', writeReadings(readings.value))
  if (!again.ok) throw new Error(`readings written are not read again: ${JSON.stringify(again.error)}`)
  return judged(demoRunFile, readings.value.readings) === null ? 'refused' : 'through'
}

function exerciseSheet(input: Uint8Array): Outcome {
  const sheet = readSheet('sheet.json', decode(input))
  if (!sheet.ok) return 'refused'
  const { id, kind, railHeight } = sheet.value
  const at31 = railHeight.nominal === 31 || railHeight.low === 31
  const own = { ...demoRun, sheets: [sheet.value] }
  const run =
    kind === 'longitudinal'
      ? { ...own, system: id }
      : kind === 'bridge end'
        ? { ...own, second: { sheet: id, at: 900 } }
        : { ...own, first: { sheet: id } }
  return exerciseRun(
    json(
      at31 || kind === 'longitudinal'
        ? run
        : { ...run, system: 'w-beam-post-splice-27-3-4', second: { sheet: 'trailing-anchor-27-3-4' } },
    ),
  )
}

function exerciseDevice(input: Uint8Array): Outcome {
  const device = readDeviceFile('device.json', decode(input))
  if (!device.ok) return 'refused'
  deviceRun('device.json', { entries: device.value.entries.map(({ entry }) => entry) }, demoRunFile)
  return 'through'
}

function exerciseEntry(input: Uint8Array): Outcome {
  let value: unknown
  try {
    value = JSON.parse(decode(input))
  } catch {
    return 'refused'
  }
  return checkShape('entry', value, entryShape).ok ? 'through' : 'refused'
}

function exerciseRoad(input: Uint8Array): Outcome {
  const read = readLandXml('road.xml', decode(input))
  if (!read.ok) return 'refused'
  expectFinite('alignments', read.value)
  for (const { name, horizontal, equations } of read.value.alignments) {
    expectFinite('short form', writeElements('centreline', horizontal, equations, 'us'))
    writeLandXml({ unit: 'meter', alignments: [{ name, horizontal, equations }] }, '2026-05-12', '10:05:00')
    const run = judged(demoRunFile, [])!
    const place = { horizontal, equations, surface: null }
    const placed = placeRun('run.json', run, { offset: 4, road: place, unit: 'foot' })
    if (placed.ok) expectFinite('staking', placed.value.staking)
  }
  return 'through'
}

function exerciseTexts(input: Uint8Array): Outcome {
  const text = decode(input)
  const length = parseLength(text, 'in')
  const station = parseStation(text, 'us')
  const numbers = parseNumbers(text, 10_000)
  for (const one of [length, station, numbers]) expectFinite('text', one)
  return length.ok || station.ok || numbers.ok ? 'through' : 'refused'
}

const exercisePicture = async (input: Uint8Array): Promise<Outcome> =>
  (await pictureFault(input)) === null ? 'through' : 'refused'

async function exercisePacket(input: Uint8Array): Promise<Outcome> {
  // Two files in one, so that both can change; a spoilt first line leaves no run.
  const [run = '', readings = ''] = decode(input).split('\n')
  const runFile = readRun('run.json', run)
  const list = readReadings('readings.json', readings)
  if (!runFile.ok || !list.ok) return 'refused'
  const all = judged(runFile.value, list.value.readings)
  if (all === null) return 'refused'
  const packet = await writePacket(all, {
    ...{
      page: 'letter',
      lie: 'portrait',
      printedAt: stamp.at,
      author: '',
      version: '0',
      sha256,
      pay,
      zone: 'UTC',
      purpose: null,
    },
    ...{
      ticket: null,
      photos: null,
      absentPhotos: 'left out',
      entries: noEntries,
      progress: () => {},
      print: english(null),
    },
    sources: { run: 'run.json', readings: 'readings.json' },
    stakes: { order: 'point, northing, easting, elevation, code', header: true },
    place: { run: { offset: 3.6, road, unit: 'foot' }, system: null, sqliteAt: null },
  })
  return packet.ok ? 'through' : 'refused'
}

const landXml = `<?xml version="1.0"?>
<LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2" date="2026-11-25" time="12:00:00">
<Units><Imperial linearUnit="foot"/></Units>
<Alignments><Alignment name="A" length="0" staStart="20600"><CoordGeom>
<Line><Start>200000 600000</Start><End>200300 600400</End></Line>
<Line><Start>200300 600400</Start><End>200600 600800</End></Line>
</CoordGeom><StaEquation staInternal="21000" staBack="21000" staAhead="20800"/></Alignment></Alignments>
</LandXML>`

/** Every reader, and what follows it. */
export const subjects: readonly Subject[] = [
  { name: 'site', seeds: [...validSites, metric].map(json), exercise: exerciseSite },
  { name: 'run', seeds: [...validRuns, ...lawfulRuns].map(json), exercise: exerciseRun },
  { name: 'readings', seeds: [...validReadings.map(json), encode(demo.readings)], exercise: exerciseReadings },
  { name: 'sheet', seeds: sheetSeeds, exercise: exerciseSheet },
  { name: 'device', seeds: validDeviceFiles.map(json), exercise: exerciseDevice },
  {
    name: 'entry',
    seeds: (validDeviceFiles[0] as { entries: unknown[] }).entries.map(json),
    exercise: exerciseEntry,
  },
  { name: 'road', seeds: [encode(landXml)], exercise: exerciseRoad },
  {
    name: 'text',
    seeds: ['12 ft 6 in', '27-3/4"', '208+40', '-0+50.25', '1-4, 7', "6'-3 1/2"].map(encode),
    exercise: exerciseTexts,
  },
  { name: 'picture', seeds: [pngOf(3, 2)], exercise: exercisePicture },
  {
    name: 'packet',
    seeds: [encode(`${JSON.stringify(demoRun)}\n${JSON.stringify(JSON.parse(demo.readings))}`)],
    exercise: exercisePacket,
  },
]
