import { readFileSync } from 'node:fs'
import { setTimeout as wait } from 'node:timers/promises'
import { describe, expect, test } from 'vitest'
import { crewSheetContents } from '../../../src/documents/crew-sheet-contents.ts'
import { signatureDrawing } from '../../../src/documents/signature-lines.ts'
import { noEntries } from '../../../src/formats/entry/run-entries.ts'
import type { InputProblem } from '../../../src/formats/input-problem.ts'
import { problemInWords } from '../../../src/formats/input-problem.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { deviceRun } from '../../../src/operations/device-run.ts'
import { type JudgedRun, judgeKnown } from '../../../src/operations/judge-readings.ts'
import type { PacketOptions } from '../../../src/operations/packet-options.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { type PacketFile, writePacket } from '../../../src/operations/write-packet.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { english } from '../../../src/words/english.ts'
import { recordTextOf, sha256 } from '../../fixtures/record-text-of.ts'
import { runAllowing } from '../../fixtures/roadside.ts'
import { atSplices, inventedRoad, judgedDemo, newYorkEast, sound } from '../exports/export-project.ts'
import { deviceOf, onDevice } from './device-of-demo.ts'
import { fileOf, isInstalled, outputOf, qpdfCheck, textOf } from './outside-programs.ts'
import { pngOf } from './png-of.ts'

const text = new TextEncoder()

const options: PacketOptions = {
  purpose: null,
  page: 'letter',
  lie: 'portrait',
  stakes: { order: 'point, northing, easting, elevation, code', header: true },
  printedAt: '2016-05-13T09:00:00-06:00',
  author: 'M. Reyes',
  version: '0.1.0',
  sha256,
  sources: { run: 'run.json', readings: 'readings.json' },
  pay: atSplices,
  ticket: null,
  place: null,
  photos: null,
  absentPhotos: 'problem',
  entries: noEntries,
  zone: 'America/Denver',
  print: english(null),
  progress: () => {},
}

const packetOf = async (judged: JudgedRun, changes: Partial<PacketOptions> = {}): Promise<readonly PacketFile[]> =>
  sound(await writePacket(judged, { ...options, ...changes }))

/** Made once, however many tests look at it. */
function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | null = null
  return () => {
    made ??= make()
    return made
  }
}

const named = (files: readonly PacketFile[], name: string): Uint8Array => {
  const file = files.find((one) => one.name === name)
  if (file === undefined) throw new Error(`the packet has no ${name}`)
  return file.bytes
}

const manifestOf = (files: readonly PacketFile[]) =>
  JSON.parse(new TextDecoder().decode(named(files, 'manifest.json'))) as {
    readonly files: readonly { readonly name: string; readonly bytes: number; readonly sha256: string }[]
    readonly leftOut: readonly { readonly what: string; readonly why: string }[]
    readonly notes: readonly string[]
    readonly acceptance: string
    readonly purpose: string | null
  }

/** A run of the demo's hardware with nothing read, `changes` in its file. */
function unreadRun(changes: object): JudgedRun {
  const file = JSON.stringify({ ...(JSON.parse(demoProject().run) as object), obstructions: [], ...changes })
  return judgeKnown(sound(requireRun('run.json', sound(readRun('run.json', file)))), [])
}

const canCheck =
  isInstalled('qpdf') &&
  isInstalled('pdftotext') &&
  isInstalled('pdfinfo') &&
  isInstalled('pdffonts') &&
  isInstalled('pdfimages')
const pdfNames = [
  ...['crew-sheet.pdf', 'crew-sheet-es.pdf', 'record.pdf'],
  ...['summary.pdf', 'as-built.pdf', 'quantities.pdf', 'material-list.pdf'],
]

/** Each PDF passes qpdf, carries its fonts and names the run; gives their texts by name. */
function checkedTexts(files: readonly PacketFile[]): ReadonlyMap<string, string> {
  return new Map(
    files
      .filter(({ name }) => name.endsWith('.pdf'))
      .map(({ name, bytes }) => {
        const path = fileOf(bytes, name)
        expect(qpdfCheck(path), name).toBe(0)
        const fonts = outputOf('pdffonts', path).trim().split('\n').slice(2)
        expect(fonts.length, name).toBeGreaterThan(0)
        for (const font of fonts) expect(font, name).toMatch(/ yes yes yes +\d+ +0$/)
        return [name, textOf(path)]
      }),
  )
}

const pagesOf = (files: readonly PacketFile[], name: string): number =>
  Number(/^Pages: +(\d+)$/m.exec(outputOf('pdfinfo', fileOf(named(files, name), name)))?.[1])

const judged = judgedDemo()
const demoPacket = once(() => packetOf(judged))

describe('the packet of the demo project', { timeout: 60_000 }, () => {
  test('holds every document and the files themselves; the manifest has the hash and size of each', async () => {
    const files = await demoPacket()
    const manifest = manifestOf(files)
    expect(files.map(({ name }) => name)).toEqual([
      'crew-sheet.pdf',
      'crew-sheet-es.pdf',
      'record.pdf',
      'record.json',
      'summary.pdf',
      'as-built.pdf',
      'quantities.pdf',
      'quantities.xlsx',
      'material-list.pdf',
      'daily-report-2016-05-09.pdf',
      'daily-report-2016-05-12.pdf',
      'strip.svg',
      'strip.dxf',
      'elevation.dxf',
      'detail-1.dxf',
      'detail-2.dxf',
      'stakes.csv',
      'run.ifc',
      'run.json',
      'readings.json',
      'manifest.json',
    ])
    expect(manifest.files).toEqual(
      files
        .filter(({ name }) => name !== 'manifest.json')
        .map(({ name, bytes }) => ({ name, bytes: bytes.length, sha256: sha256(bytes) })),
    )
    const run = sound(readRun('run.json', new TextDecoder().decode(named(files, 'run.json'))))
    expect({ ...run, sheets: [], version: undefined }).toEqual({ ...judged.run, version: undefined })
    expect(run.version!.layout).toEqual(judged.model.layout)
    expect(run.sheets.map(({ id }) => id)).toEqual(['w-beam-midspan-31', 'flared-terminal-31', 'trailing-anchor-31'])
    expect(run.sheets[0]).toEqual(judged.model.system)
    const read = sound(readReadings('readings.json', new TextDecoder().decode(named(files, 'readings.json'))))
    expect(read.readings).toEqual(judged.log)
    expect(manifest.leftOut.map(({ what }) => what)).toEqual([
      'stakes.xml, stakes.dxf',
      'run.geojson, run.gpkg',
      'photos: covered-1, covered-2, covered-20',
    ])
    expect(manifest.notes.join()).toContain('no map coordinates')
  })

  test('is the same to the byte some seconds later, with a place too, and another at another date', async () => {
    const place = {
      run: { offset: 3.6576, road: inventedRoad, unit: 'US survey foot' },
      system: await newYorkEast(),
      sqliteAt: null,
    } as const
    const first = await packetOf(judged, { place })
    // The times in a ZIP file have a step of two seconds.
    await wait(2_100)
    const again = await packetOf(judged, { place })
    expect(first.map(({ name }) => name)).toEqual(expect.arrayContaining(['run.geojson', 'run.gpkg', 'stakes.csv']))
    expect(manifestOf(first).notes).toEqual([])
    for (const [i, { name, bytes }] of first.entries()) {
      expect(again[i]!.name).toBe(name)
      expect(Buffer.compare(again[i]!.bytes, bytes), name).toBe(0)
    }
    const later = await packetOf(judged, { place, printedAt: '2016-05-14T09:00:00-06:00' })
    for (const name of [...pdfNames, 'quantities.xlsx', 'run.gpkg', 'manifest.json'])
      expect(Buffer.compare(named(later, name), named(first, name)), name).not.toBe(0)
  })

  test('leaves the stakes out and says why where the side of the road is not known', async () => {
    const { road } = JSON.parse(demoProject().run) as { road: object }
    const files = await packetOf(judgedDemo({ road: { ...road, side: null } }))
    expect(files.some(({ name }) => name === 'stakes.csv')).toBe(false)
    const { what, why } = manifestOf(files).leftOut[0]!
    expect(what).toBe('stakes.csv, run.ifc')
    expect(why).toContain('road.side: expected "right" or "left"')
  })

  test.skipIf(!canCheck)('opens in programs of others, each document with what it is for', async () => {
    const files = await demoPacket()
    const texts = checkedTexts(files)
    const crew = texts.get('crew-sheet.pdf')!
    expect(crew).toContain('Utility ticket: not entered')
    expect(crew).toContain('NO POST at 68 ft 9 in, because of the culvert')
    expect(crew).toContain('Panel 3 is 9 ft 4 1/2 in long')
    expect(crew).toContain('The lower post was seen in place')
    expect(crew).toContain('in the upper hole set')
    const spanish = texts.get('crew-sheet-es.pdf')!
    for (const words of ['Hoja de cuadrilla', 'Postes que se estacan', 'SIN POSTE a 68 ft 9 in, por the culvert'])
      expect(spanish).toContain(words)
    const built = texts.get('as-built.pdf')!
    for (const words of [
      'The run is not acceptable.',
      '3-in side up',
      'Downstream panel on the traffic side',
      '12 ft 6 in',
    ])
      expect(built).toContain(words)
    // Panels 4 to 6 of 25 ft lie between the terminal and the anchor: 3 x 25 = 75.
    expect(texts.get('quantities.pdf')).toContain('75 ft to be paid')
    const material = texts.get('material-list.pdf')!
    for (const words of ['Heat mark', 'Coating mark', 'panel 7']) expect(material).toContain(words)
    const ticketed = await packetOf(judged, { ticket: '2016-0512-77 through 20 May' })
    expect(textOf(fileOf(named(ticketed, 'crew-sheet.pdf'), 'ticket.pdf'))).toContain('2016-0512-77 through 20 May')
  })

  test.skipIf(!canCheck)('has its crew sheet on two pages of letter or A4, in letters for arm’s length', async () => {
    for (const files of [await demoPacket(), await packetOf(judged, { page: 'A4' })])
      for (const name of ['crew-sheet.pdf', 'crew-sheet-es.pdf']) {
        expect(pagesOf(files, name), name).toBeLessThanOrEqual(2)
        const boxes = outputOf('pdftotext', '-bbox', fileOf(named(files, name), name), '-')
        /** Tallest box of a word, in points. */
        const heightOf = (word: string): number =>
          Math.max(
            ...[...boxes.matchAll(new RegExp(`yMin="([\\d.]+)" xMax="[\\d.]+" yMax="([\\d.]+)">${word}<`, 'g'))].map(
              ([, top, bottom]) => Number(bottom) - Number(top),
            ),
          )
        // The foot is set in 7.5 points.
        const perPoint = heightOf(name === 'crew-sheet.pdf' ? 'Printed' : 'Impreso') / 7.5
        // In a table, a rule and a caution.
        for (const word of name === 'crew-sheet.pdf'
          ? ['hinged', 'retainer', 'one-call']
          : ['bisagra', 'retén', 'hincar'])
          expect(heightOf(word) / perPoint, word).toBeGreaterThanOrEqual(9.95)
      }
  })

  test('the crew sheet stakes the flare: 48 in at post 1, in a straight line to the splice 34 ft 4 1/2 in on', () => {
    const { posts, flare } = crewSheetContents(recordInput(judged, english(null)), null)
    expect(flare).toContain('First end: straight flare, 48 in over 34 ft 4 1/2 in')
    // 48 (412.5 - 75 k) / 412.5 = 48, 39.27, 30.55, 21.82, 13.09 and 4.36, to the nearest 1/8 in.
    expect(posts.map(({ offset }) => offset)).toEqual([
      ...['48 in', '39 1/4 in', '30 1/2 in', '21 7/8 in', '13 1/8 in', '4 3/8 in'],
      ...Array.from({ length: 14 }, () => '0 in'),
    ])
    // The only space that is not 6 ft 3 in is the one over the culvert.
    expect(posts.filter(({ isOddSpace }) => isOddSpace).map(({ number, next }) => [number, next])).toEqual([
      [11, '12 ft 6 in'],
    ])
  })

  test('the crew sheet says where posts stand closer and which panels are nested, and only where they are', () => {
    const reduced = [{ from: '100 ft', to: '125 ft', spacing: 'half', nested: true }]
    const changed = unreadRun({ need: { from: '-50 ft', to: '300 ft' }, reduced })
    const { departures, panels } = crewSheetContents(recordInput(changed, english(null)), null)
    const closer = /stand 3 ft 1 1\/2 in apart instead of 6 ft 3 in/
    expect(departures.some((line) => closer.test(line))).toBe(true)
    expect(departures.some((line) => line.startsWith('NESTED, two layers of rail: panel'))).toBe(true)
    expect(panels.some(({ nested }) => nested)).toBe(true)
    expect(crewSheetContents(recordInput(judged, english(null)), null).departures.join()).not.toMatch(
      /NESTED|instead of/,
    )
  })
})

describe('what a device recorded', { timeout: 60_000 }, () => {
  const signed = onDevice(judged)
  const { entries } = sound(deviceRun('device.json', deviceOf(signed, demoProject().run, []), judged.run))
  const signedPacket = once(() => packetOf(signed, { entries }))
  const textIn = (files: readonly PacketFile[], name: string): string => textOf(fileOf(named(files, name), name))

  test('comes with the readings of the device, in their order, and gives the hash that was signed', () => {
    const device = sound(deviceRun('device.json', deviceOf(signed, demoProject().run, []), judged.run))
    expect(device.readings).toEqual(signed.readings)
    expect(sha256(recordTextOf(judgeKnown(judged, device.readings)))).toBe(entries.signatures[0]!.body.recordHash)
  })

  test('is refused where the device holds another run of that name', () => {
    const other = { ...judged.run, work: 'standing' as const }
    const refused = deviceRun('device.json', deviceOf(signed, demoProject().run, []), other)
    expect(refused.ok ? [] : refused.error.map(({ place }) => place)).toEqual(['entries'])
  })

  test.skipIf(!canCheck)('gives a report of each day with a log or readings, by the days of the zone', async () => {
    const files = await signedPacket()
    const reports = files.map(({ name }) => name).filter((name) => name.startsWith('daily-report'))
    // The crew read on the 9th and the inspector on the 12th; the log of the 9th was written on the 10th in UTC.
    expect(reports).toEqual(['daily-report-2016-05-09.pdf', 'daily-report-2016-05-12.pdf'])
    const first = textIn(files, reports[0]!)
    for (const words of [
      'Posts driven posts 1 to 4',
      '4 of 20 posts, 1 of 7 panels',
      'Hung panel 1.',
      'Open ends: Drums at post 4',
      'Utility-locate ticket 2016-0512-77 is valid through 2016-05-20.',
      // Post 4 stands 225 in from post 1, the mark 20 in beyond it.
      'Post 4 was driven 1 ft 8 in from a mark: gas main',
    ])
      expect(first).toContain(words)
    expect(first).not.toContain('posts 1 to 3')
    expect(textIn(files, reports[1]!)).toContain('No log was written on this day.')
    const inTokyo = await packetOf(judgeKnown(signed, []), { entries, zone: 'Asia/Tokyo' })
    expect(inTokyo.some(({ name }) => name === 'daily-report-2016-05-09.pdf')).toBe(true)
    expect(inTokyo.some(({ name }) => name === 'daily-report-2016-05-12.pdf')).toBe(false)
  })

  test.skipIf(!canCheck)('puts the ticket in force on the crew sheet, unless another is given', async () => {
    const crew = textIn(await signedPacket(), 'crew-sheet.pdf')
    expect(crew).toContain('2016-0512-77, called on 2016-05-02, valid 2016-05-05 through 2016-05-20')
    expect(crew).toContain('gas main 20 ft 5 in from post 1')
    expect(crew).toContain('Within 2 ft of gas main: post 4.')
    const given = textIn(await packetOf(signed, { entries, ticket: 'by telephone' }), 'crew-sheet.pdf')
    expect(given).toContain('Utility ticket: by telephone')
    expect(given).not.toContain('2016-0512-77')
  })

  test.skipIf(!canCheck)(
    'prints each signature with what was signed, and says whether that is this record',
    async () => {
      const record = textIn(await signedPacket(), 'record.pdf')
      const hash = sha256(recordTextOf(signed))
      expect(record).toMatch(
        new RegExp(`J. Okafor, Inspector, 2016-05-12 17:00 UTC .*The record that was signed is this one.*${hash}`),
      )
      expect(record).toMatch(/M. Reyes, Engineer, .*Signed by typing the name.*is ANOTHER ONE.*0{64}/)
      const { id, ...reading } = signed.readings[0]!
      const later = judgeKnown(signed, [...signed.readings, { ...reading, id: `${id}-again` }])
      const after = textIn(await packetOf(later, { entries }), 'record.pdf')
      expect(after).toContain('The record that was signed is AN EARLIER ONE: 1 reading was added since.')
      expect(after).not.toContain('The record that was signed is this one')
    },
  )

  test('draws a signature as lines, every point of it within its picture', () => {
    const outside = {
      ...entries.signatures[0]!,
      body: {
        ...entries.signatures[0]!.body,
        signature: { kind: 'drawn' as const, strokes: [[[-3, 9] as [number, number]]] },
      },
    }
    for (const one of [...entries.signatures, outside]) {
      const { extent, items } = signatureDrawing(one, english(null))
      const points = items.flatMap((item) =>
        item.kind === 'polyline' ? item.points : item.kind === 'line' ? [item.from, item.to] : [],
      )
      expect(points.length).toBeGreaterThan(0)
      for (const { x, y } of points) {
        expect(x >= extent.minX && x <= extent.maxX).toBe(true)
        expect(y >= extent.minY && y <= extent.maxY).toBe(true)
      }
    }
  })
})

describe('photos of a packet', { timeout: 60_000 }, () => {
  /** Of 240 x 120 pixels, to be turned by its orientation. */
  const jpeg = new Uint8Array(readFileSync(new URL('../../acceptance/web/fieldwork-sideways.jpg', import.meta.url)))
  const photo = (name: string, bytes: Uint8Array) => ({ photo: name, file: `${name}.jpg`, bytes })
  const names = ['covered-1', 'covered-2', 'covered-20']

  test('are taken in under their own names, with their hash in the manifest', async () => {
    const files = await packetOf(judged, { photos: names.map((name) => photo(name, jpeg)) })
    expect(named(files, 'photos/covered-20.jpg')).toEqual(jpeg)
    expect(manifestOf(files).files).toContainEqual({
      name: 'photos/covered-1.jpg',
      bytes: jpeg.length,
      sha256: sha256(jpeg),
    })
  })

  test('that are missing, empty, cut short, spoilt or no picture are named one by one', async () => {
    const spoilt = pngOf(2, 2).with(45, 0xff)
    const refusedOf = async (given: readonly (readonly [string, Uint8Array])[]) => {
      const photos = given.map(([name, bytes]) => photo(name, bytes))
      const refused = await writePacket(judged, { ...options, photos })
      const problems: readonly InputProblem[] = refused.ok ? [] : refused.error
      return problems
        .map((one) => problemInWords(one, english(null)))
        .map(({ file, place, found }) => [file, place, found])
    }
    expect(
      await refusedOf([
        ['covered-1', text.encode('%PDF-1.7')],
        ['covered-2', new Uint8Array()],
      ]),
    ).toEqual([
      ['covered-1.jpg', '', 'a file that begins like none of them'],
      ['covered-2.jpg', '', 'an empty file'],
      ['readings.json', 'photo "covered-20"', 'no such file'],
    ])
    expect(
      await refusedOf([
        ['covered-1', jpeg.subarray(0, jpeg.length - 2)],
        ['covered-2', spoilt],
        ['covered-20', jpeg],
      ]),
    ).toEqual([
      ['covered-1.jpg', '', 'a picture that is cut short'],
      ['covered-2.jpg', '', expect.stringContaining('a picture that cannot be read: failed to decode image')],
    ])
  })

  test('that are hostile are named before they are read', async () => {
    const huge = pngOf(2, 2).with(18, 0xc3).with(22, 0xc3)
    const refused = await writePacket(judged, { ...options, photos: [photo('covered-1', huge)] })
    expect(refused.ok ? [] : refused.error.map((one) => problemInWords(one, english(null)).found)).toContain(
      'a picture of 49922 x 49922 pixels',
    )
  })

  test('that are there already and cannot be read are named in a packet that is made all the same', async () => {
    const three = Uint8Array.from([0xff, 0xd8, 0xff])
    const given = [photo('covered-1', three), photo('covered-2', pngOf(2, 2).with(45, 0xff)), photo('covered-20', jpeg)]
    const files = await packetOf(judged, { photos: given, absentPhotos: 'left out' })
    expect(files.filter(({ name }) => name.startsWith('photos/')).map(({ name }) => name)).toEqual([
      'photos/covered-20.jpg',
    ])
    expect(manifestOf(files).leftOut).toEqual(
      expect.arrayContaining([
        { what: 'photo: covered-1', why: 'a picture that is cut short' },
        { what: 'photo: covered-2', why: expect.stringContaining('a picture that cannot be read') },
      ]),
    )
  })

  test.skipIf(!canCheck)('stand in the record beside their requirements and larger further on', async () => {
    const given = [jpeg, Buffer.concat([jpeg, text.encode('a film')]), pngOf(3, 2)]
    const files = await packetOf(judged, { photos: names.map((name, i) => photo(name, given[i]!)) })
    const path = fileOf(named(files, 'record.pdf'), 'photos.pdf')
    expect(qpdfCheck(path)).toBe(0)
    // Twice each.
    const drawn = outputOf('pdfimages', '-list', path)
      .trim()
      .split('\n')
      .slice(2)
      .map((line) => line.trim().split(/\s+/))
    const sizes = drawn.filter(([, , type]) => type === 'image').map(([, , , width, height]) => `${width} x ${height}`)
    expect(sizes.filter((size) => size === '240 x 120')).toHaveLength(4)
    expect(sizes.filter((size) => size === '3 x 2')).toHaveLength(2)
    const record = textOf(path)
    for (const [i, name] of names.entries()) {
      expect(record).toContain(`Photo ${i + 1}: ${name}`)
      expect(record).toContain(`Photo ${i + 1}, ${name} No. ${i + 1}, post`)
    }
    expect(record).not.toContain('not in this packet')
    const without = textOf(fileOf(named(await demoPacket(), 'record.pdf'), 'without.pdf'))
    expect(without).toContain('Photo 1: covered-1 (not in this packet)')
    expect(without).toContain('This photo is not in this packet.')
  })

  test.skipIf(!canCheck)('that were entered have their time, place and note', async () => {
    const signed = onDevice(judged)
    const { entries } = sound(deviceRun('device.json', deviceOf(signed, demoProject().run, [jpeg]), judged.run))
    const taken = { photo: sha256(jpeg), file: 'stub.jpg', bytes: jpeg }
    const photos = [...names.map((name) => photo(name, jpeg)), taken]
    const record = textOf(fileOf(named(await packetOf(signed, { entries, photos }), 'record.pdf'), 'entered.pdf'))
    expect(record).toContain(`Photo 4: ${sha256(jpeg).slice(0, 12)}…`)
    expect(record).toContain(
      `2016-05-09 08:25; T. Alvarez; 40.12345, -105.54321 (WGS 84, ±5 m) SHA-256 ${sha256(jpeg).slice(0, 16)}… Stub, view 1 marked by T. Alvarez, 2016-05-10 02:20`,
    )
  })
})

describe('a packet that is made for a purpose', { timeout: 60_000 }, () => {
  test.each([
    [
      'crew',
      ['crew-sheet.pdf', 'crew-sheet-es.pdf', 'material-list.pdf'],
      ['record.pdf', 'stakes.csv', 'quantities.pdf'],
    ],
    ['survey', ['stakes.csv', 'run.ifc', 'strip.dxf'], ['record.pdf', 'crew-sheet.pdf', 'readings.json']],
    [
      'estimate',
      ['quantities.pdf', 'quantities.xlsx', 'material-list.pdf'],
      ['record.pdf', 'crew-sheet.pdf', 'run.ifc'],
    ],
    ['record', ['record.pdf', 'as-built.pdf', 'readings.json'], ['crew-sheet.pdf', 'stakes.csv', 'material-list.pdf']],
  ] as const)(
    'for the %s holds what it is for, the run, and says what it does not hold',
    async (purpose, has, hasNot) => {
      const files = await packetOf(judged, { purpose })
      const names = files.map(({ name }) => name)
      for (const name of [...has, 'strip.svg', 'run.json', 'manifest.json']) expect(names).toContain(name)
      for (const name of hasNot) expect(names).not.toContain(name)
      const manifest = manifestOf(files)
      expect(manifest.purpose).toBe(purpose)
      const whole = (await demoPacket()).map(({ name }) => name)
      const left = manifest.leftOut.find(({ why }) => why.startsWith('this packet is made for'))!.what.split(', ')
      expect([...names, ...left].sort()).toEqual([...whole].sort())
      // Photos concern the record alone, and the road those who stake.
      expect(manifest.leftOut.some(({ what }) => what.startsWith('photos'))).toBe(purpose === 'record')
      expect(manifest.leftOut.some(({ what }) => what === 'stakes.xml, stakes.dxf')).toBe(purpose === 'survey')
    },
  )
})

describe('the packet of an awkward run', { timeout: 120_000 }, () => {
  test.skipIf(!canCheck)('is whole with no reading at all', async () => {
    const files = await packetOf(judgeKnown(judged, []))
    const texts = checkedTexts(files)
    // What would state that somebody looked is not made, and the manifest says why.
    expect([...texts.keys()]).toEqual(['crew-sheet.pdf', 'crew-sheet-es.pdf', 'quantities.pdf', 'material-list.pdf'])
    const { acceptance, leftOut } = manifestOf(files)
    expect(acceptance).toBe('not yet known')
    expect(leftOut).toContainEqual({
      what: 'record.pdf, record.json, summary.pdf, as-built.pdf',
      why: 'nothing was read yet',
    })
    const record = await packetOf(judgeKnown(judged, []), { purpose: 'record' })
    expect(checkedTexts(record).get('record.pdf')).toContain('NOT YET KNOWN')
    expect(record.some(({ name }) => name === 'as-built.pdf')).toBe(false)
  })

  test.skipIf(!canCheck)(
    'prints emoji and right-to-left text, as letters or by number, and a note of 4,000 characters',
    async () => {
      const foreign = 'שלום עולם مرحبا 漢字 😀👩🏽‍🔧 \u202Eback\u202C #set "x" $y$ *z*'
      const long = 'the post could not be reached because the slope had slid; '.repeat(70).slice(0, 4_000)
      const awkward = judgedDemo({
        name: foreign,
        sheets: JSON.parse(runAllowing(demoProject().run, ['block'])).sheets,
      })
      const readings = awkward.readings.map((reading) =>
        reading.of === 'post-5/block'
          ? { ...reading, answer: { kind: 'does not apply', because: long } as const, by: foreign }
          : { ...reading, where: foreign },
      )
      const files = await packetOf(judgeKnown(awkward, readings), { author: foreign, ticket: `${foreign} ${long}` })
      for (const [name, set] of checkedTexts(files)) {
        for (const code of ['[U+1F600]', '[U+202E]', '[U+6F22]', '#set "x" $y$ *z*']) expect(set, name).toContain(code)
      }
      const ends = long.trim().split(' ').slice(-20).join(' ')
      expect(textOf(fileOf(named(files, 'record.pdf'), 'note.pdf'))).toContain(ends)
      expect(textOf(fileOf(named(files, 'crew-sheet.pdf'), 'note-crew.pdf'))).toContain(ends)
    },
  )

  test.skipIf(!canCheck)(
    'of 300 posts has every post in the crew sheet, and its strip on pages of their own',
    async () => {
      const long = unreadRun({ need: { from: '-50 ft', to: '1790 ft' } })
      const { posts } = long.model.layout
      expect(posts.length).toBeGreaterThanOrEqual(300)
      const files = await packetOf(long)
      const crew = checkedTexts(files).get('crew-sheet.pdf')!
      expect(crew).toContain('The strip stands on the last')
      for (const { number, along } of crewSheetContents(recordInput(long, english(null)), null).posts)
        expect(crew).toContain(`${number} ${along}`)
    },
  )

  test.skipIf(!canCheck)('of a metric run on the left without coordinates is sound', async () => {
    const metric = unreadRun({
      units: 'metric',
      road: { route: null, side: 'left', datumStation: null, speed: 90, traffic: 'divided' },
    })
    const files = await packetOf(metric, { page: 'A4' })
    expect(checkedTexts(files).get('crew-sheet.pdf')).toContain('1219 mm')
    expect(new TextDecoder().decode(named(files, 'stakes.csv'))).toContain('northing (metre)')
  })
})
