import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import type { HardwareSheet } from '../../src/core/hardware/hardware-sheet.ts'
import { groundFromMetres } from '../../src/core/units/ground-unit.ts'
import { runSheets } from '../../src/documents/xlsx/run-sheets.ts'
import type { Cell } from '../../src/documents/xlsx/sheet.ts'
import { writeWorkbook } from '../../src/documents/xlsx/write-workbook.ts'
import { noEntries } from '../../src/formats/entry/run-entries.ts'
import { takeTexts, writeTexts } from '../../src/formats/sheet/text-table.ts'
import {
  quantityList,
  stakeList,
  writeRunGeoJson,
  writeRunGeoPackage,
  writeRunWorkbook,
  writeStakeCsv,
  writeStakeDxf,
  writeStakeXml,
} from '../../src/operations/write-exports.ts'
import { recordInput } from '../../src/operations/write-record.ts'
import { writeRunViewDxf } from '../../src/operations/write-strip.ts'
import { shippedSheets } from '../../src/sheets/shipped-sheets.ts'
import { english } from '../../src/words/english.ts'
import { atSplices, judgedDemo, newYorkEast, placedDemo, sound, stamp } from '../cases/exports/export-project.ts'

// Every export is opened by a program that nobody here wrote, from Debian's packages gdal-bin, python3-gdal,
// libxml2-utils, python3-ezdxf and libreoffice-calc. Each check has a broken file beside it that it must reject.

const python = '/usr/bin/python3'
const programs = {
  ogrinfo: ['ogrinfo', '--version'],
  'validate_gpkg (python3-gdal)': [python, '-c', 'import osgeo_utils.samples.validate_gpkg'],
  'ezdxf (python3-ezdxf)': [python, '-c', 'import ezdxf'],
  xmllint: ['xmllint', '--version'],
  'soffice (libreoffice-calc)': ['soffice', '--version'],
} as const

function isMissing(name: keyof typeof programs): boolean {
  const [program, ...words] = programs[name]
  const found = spawnSync(program, words)
  const missing = found.error !== undefined || found.status !== 0
  if (missing) console.warn(`${name} is not installed: the checks that it makes are skipped`)
  return missing
}

const folder = mkdtempSync(join(tmpdir(), 'lapwise-exports-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function fileOf(name: string, content: string | Uint8Array): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

interface Told {
  readonly status: number | null
  readonly text: string
}

const told = (program: string, ...words: readonly string[]): Told => answered('', program, ...words)

/** What `program` says when `input` is typed to it. */
function answered(input: string, program: string, ...words: readonly string[]): Told {
  const ended = spawnSync(program, words, { input, encoding: 'utf8', maxBuffer: 2 ** 28 })
  return { status: ended.status, text: `${ended.stdout}${ended.stderr}` }
}

const judged = judgedDemo()
const { judgement: _, ...required } = judged
const oddName = `Böschung \u05e9\u05dc\u05d5\u05dd 🚧\nsecond line, <b> "quoted" & =1+1 ${'long '.repeat(800)}`
const placed = placedDemo(judged)
const { stakes } = placed.staking
const system = await newYorkEast()
const geoPackage = sound(
  await writeRunGeoPackage('run.json', judged, placed, { system, sqliteAt: null, stamp, print: english(null) }),
)
const usFeet = (length: number): number => groundFromMetres(length, 'US survey foot')
const box = {
  minX: Math.min(...stakes.map(({ position }) => usFeet(position.easting))),
  maxX: Math.max(...stakes.map(({ position }) => usFeet(position.easting))),
  minY: Math.min(...stakes.map(({ position }) => usFeet(position.northing))),
  maxY: Math.max(...stakes.map(({ position }) => usFeet(position.northing))),
}

interface OgrLayer {
  readonly name: string
  readonly count: number
  readonly extent: readonly number[]
}

/** Layers as ogrinfo tells them: name, number of features, extent as least x, least y, greatest x, greatest y. */
function layersOf(path: string): readonly OgrLayer[] {
  const { text } = told('ogrinfo', '-ro', '-al', '-so', path)
  return text
    .split('\nLayer name: ')
    .slice(1)
    .map((part) => ({
      name: part.slice(0, part.indexOf('\n')),
      count: Number(/Feature Count: (\d+)/.exec(part)?.[1]),
      extent: /Extent: \((.*), (.*)\) - \((.*), (.*)\)/.exec(part)?.slice(1).map(Number) ?? [],
    }))
}

describe('DXF', () => {
  const plan = writeStakeDxf(judged, placed, 'US survey foot', stamp, english(null))
  const audit = (path: string) => told(python, '-m', 'ezdxf', 'audit', path)

  describe.skipIf(isMissing('ezdxf (python3-ezdxf)'))('audited by ezdxf', () => {
    it.each([
      ['plan.dxf', plan],
      ['strip.dxf', writeRunViewDxf(judged, 'strip', stamp.author, english(null))[0]!],
      ['elevation.dxf', writeRunViewDxf(judged, 'elevation', '', english(null))[0]!],
      ['detail-1.dxf', writeRunViewDxf(judged, 'detail', '', english(null))[0]!],
      ['detail-2.dxf', writeRunViewDxf(judged, 'detail', '', english(null))[1]!],
      ['odd-name.dxf', writeRunViewDxf(judgedDemo({ name: oddName }), 'strip', stamp.author, english(null))[0]!],
    ])('finds no errors in %s', (name, written) => {
      expect(audit(fileOf(name, written)).text).toContain('No errors found.')
    })

    it.each(['strip', 'elevation'] as const)(
      'measures in the %s the posts of the layout, as blocks on plain layers',
      (view) => {
        const script = [
          'import ezdxf, ezdxf.bbox, sys',
          'd = ezdxf.readfile(sys.argv[1])',
          'm = d.modelspace()',
          'posts = [e for e in m.query("INSERT") if e.dxf.name.startswith("POST")]',
          'print(d.header["$INSUNITS"], len(m.query("DIMENSION")) > 0, all("*" not in l.dxf.name for l in d.layers))',
          'print(*sorted(set(round(ezdxf.bbox.extents([e]).center.x, 3) for e in posts)))',
        ].join('\n')
        const { text } = told(
          python,
          '-c',
          script,
          fileOf(`${view}.dxf`, writeRunViewDxf(required, view, '', english(null))[0]!),
        )
        const [head, places] = text.trim().split('\n')
        expect(head).toBe('1 True True')
        expect(places!.split(' ').map(Number)).toEqual(required.model.layout.posts.map((post) => post.alongInches))
      },
    )

    it('reads letters beyond ASCII as they are', () => {
      const script =
        'import ezdxf.recover, sys; print(ascii([e.dxf.text for e in ezdxf.recover.readfile(sys.argv[1])[0].modelspace().query("TEXT")]))'
      const { text } = told(
        python,
        '-c',
        script,
        fileOf(
          'hill.dxf',
          writeRunViewDxf(judgedDemo({ name: 'B\u00f6schung \u05e9' }), 'strip', stamp.author, english(null))[0]!,
        ),
      )
      expect(text).toContain('B\\xf6schung \\u05e9')
    })

    it('finds the errors of a file whose version was changed by hand', () => {
      const broken = audit(fileOf('broken.dxf', plan.replace('AC1021', 'AC1009')))
      expect(broken.text).not.toContain('No errors found.')
    })

    it('reads the unit, a block for each stake, all alike, and the layers', () => {
      const script = [
        'import ezdxf, sys',
        'd = ezdxf.readfile(sys.argv[1])',
        'i = [e for e in d.modelspace() if e.dxftype() == "INSERT"]',
        'print(d.dxfversion, d.header["$INSUNITS"], len(i), sorted({e.dxf.name for e in i}))',
        'print(sorted(l.dxf.name for l in d.layers))',
      ].join('\n')
      const { text } = told(python, '-c', script, fileOf('plan.dxf', plan))
      const findings = placed.findings.length
      expect(text.split('\n')[0]).toBe(`AC1021 21 ${stakes.length + findings} ['FINDING', 'STAKE']`)
      expect(text).toContain("'face-of-rail'")
    })
  })

  describe.skipIf(isMissing('ogrinfo'))('read by ogrinfo', () => {
    it('lies at its true coordinates', () => {
      const [layer] = layersOf(fileOf('plan.dxf', plan))
      const [minX, minY, maxX, maxY] = layer!.extent as [number, number, number, number]
      expect(minX).toBeLessThan(box.minX)
      expect(maxX).toBeGreaterThan(box.maxX)
      expect(minX).toBeGreaterThan(box.minX - 60)
      expect(minY).toBeGreaterThan(box.minY - 60)
      expect(maxX).toBeLessThan(box.maxX + 60)
      expect(maxY).toBeLessThan(box.maxY + 60)
    })

    it('does not open half a file', () => {
      expect(told('ogrinfo', '-ro', '-al', fileOf('half.dxf', plan.slice(0, 400))).status).not.toBe(0)
    })
  })
})

describe.skipIf(isMissing('ogrinfo'))('GeoJSON', () => {
  const written = sound(writeRunGeoJson('run.json', judged, placed, system, english(null)))

  it('has run, posts and findings on WGS 84, where another program puts them', () => {
    const [layer] = layersOf(fileOf('run.geojson', written))
    expect(layer!.count).toBe(1 + stakes.length + placed.findings.length)
    const corners = [
      [box.minX, box.minY],
      [box.maxX, box.maxY],
    ].map((corner) => corner.join(' '))
    const words = ['-s_srs', 'EPSG:2260', '-t_srs', 'EPSG:4326']
    const moved = answered(corners.join('\n'), 'gdaltransform', ...words)
    const [[west = 0, south = 0] = [], [east = 0, north = 0] = []] = moved.text
      .trim()
      .split('\n')
      .map((line) => line.split(' ').map(Number))
    const [minX, minY, maxX, maxY] = layer!.extent as [number, number, number, number]
    // ogrinfo prints six decimals of a degree; the zone's grid is turned by 0.3 degrees, 0.2 m over this run
    for (const [found, wanted] of [
      [minX, west],
      [minY, south],
      [maxX, east],
      [maxY, north],
    ] as const)
      expect(Math.abs(found - wanted)).toBeLessThan(5e-6)
  })

  it('has no reference system of its own, which ogrinfo would let pass', () => {
    expect(Object.keys(JSON.parse(written) as object)).toEqual(['type', 'features'])
  })

  it('does not open when cut short', () => {
    const path = fileOf('cut.geojson', written.slice(0, written.length / 2))
    expect(told('ogrinfo', '-ro', '-al', path).status).not.toBe(0)
  })
})

describe('GeoPackage', () => {
  const written = geoPackage
  const validate = (path: string) => told(python, '-m', 'osgeo_utils.samples.validate_gpkg', path)

  describe.skipIf(isMissing('validate_gpkg (python3-gdal)'))('validated', () => {
    it('meets every requirement that is checked', () => {
      expect(validate(fileOf('run.gpkg', written))).toEqual({ status: 0, text: '' })
    })

    it('is rejected without the number that says what it is', () => {
      const broken = written.slice()
      broken.fill(0, 68, 72)
      expect(validate(fileOf('broken.gpkg', broken)).status).not.toBe(0)
    })

    it('is rejected when a geometry says that it is in another system', () => {
      const broken = written.slice()
      // a point's header: GP, version 0, flags 1, then 2260 little-endian
      const at = Buffer.from(broken).indexOf(Buffer.from('47500001d4080000', 'hex'))
      broken.set([0xd5], at + 4)
      expect(validate(fileOf('moved.gpkg', broken)).status).not.toBe(0)
    })
  })

  describe.skipIf(isMissing('ogrinfo'))('read by ogrinfo', () => {
    it('has its layers, counts, extents and reference', () => {
      const path = fileOf('run.gpkg', written)
      const layers = layersOf(path)
      expect(layers.map(({ name, count }) => [name, count])).toEqual([
        ['run', 1],
        ['posts', stakes.length],
        ['findings', placed.findings.length],
      ])
      const { extent } = layers[1]!
      const wanted = [box.minX, box.minY, box.maxX, box.maxY]
      for (const [i, value] of wanted.entries()) expect(extent[i]).toBeCloseTo(value, 4)
      expect(told('ogrinfo', '-ro', '-al', '-so', path).text).toContain('ID["EPSG",2260]')
    })
  })
})

describe.skipIf(isMissing('xmllint'))('LandXML', () => {
  const written = writeStakeXml(placed, 'US survey foot', stamp, english(null))

  it('is well-formed, with a point for each stake', () => {
    const path = fileOf('stakes.xml', written)
    expect(told('xmllint', '--noout', path)).toEqual({ status: 0, text: '' })
    expect(told('xmllint', '--xpath', 'count(//*[local-name()="CgPoint"])', path).text.trim()).toBe(`${stakes.length}`)
  })

  it('is rejected when a tag is left open', () => {
    const path = fileOf('open.xml', written.replace('</CgPoints>', ''))
    expect(told('xmllint', '--noout', path).status).not.toBe(0)
  })
})

describe.skipIf(isMissing('ogrinfo'))('CSV of stakes', () => {
  const written = writeStakeCsv(
    placed,
    {
      order: 'point, northing, easting, elevation, code',
      header: true,
      unit: 'US survey foot',
    },
    english(null),
  )
  const read = (path: string) => {
    const columns = ['X_POSSIBLE_NAMES=easting*', 'Y_POSSIBLE_NAMES=northing*'].flatMap((name) => ['-oo', name])
    const { text } = told('ogrinfo', '-ro', '-al', '-so', path, ...columns)
    return { count: /Feature Count: (\d+)/.exec(text)?.[1], extent: /Extent: \((.*), (.*)\) - /.exec(text)?.slice(1) }
  }

  it('is read with easting as x and northing as y', () => {
    const { count, extent } = read(fileOf('stakes.csv', written))
    expect(count).toBe(`${stakes.length}`)
    expect(Number(extent?.[0])).toBeCloseTo(box.minX, 3)
    expect(Number(extent?.[1])).toBeCloseTo(box.minY, 3)
  })

  it('would lie elsewhere with its columns swapped', () => {
    const swapped = written.replace('northing', 'first').replace('easting', 'northing').replace('first', 'easting')
    expect(Number(read(fileOf('swapped.csv', swapped)).extent?.[0])).not.toBeCloseTo(box.minX, 0)
  })
})

describe.skipIf(isMissing('soffice (libreoffice-calc)'))('the texts of a sheet in LibreOffice', () => {
  const { notice: _, ...shipped } = shippedSheets[0]!
  const { [_]: __, ...said } = shipped.translations!.es!
  const notice = '=1+1; said "so",\nand no formula'
  const sheet = { ...shipped, notice, translations: { es: { ...said, [notice]: '-2; dijo "así"' } } } as HardwareSheet

  /** The table as LibreOffice saves it after it was opened as UTF-8; cells apart by semicolons. */
  function savedAnew(name: string, table: string): string {
    const out = join(folder, name)
    const opened = '--infilter=CSV:44,34,76,1'
    const saved = 'csv:Text - txt - csv (StarCalc):59,34,76,1,,0,false,false'
    const profile = `-env:UserInstallation=file://${join(folder, 'texts-profile')}`
    told('soffice', profile, '--headless', opened, '--convert-to', saved, '--outdir', out, fileOf(`${name}.csv`, table))
    return readFileSync(join(out, `${name}.csv`), 'utf8')
  }

  it('come back whole, and nothing in them is reckoned', () => {
    const saved = savedAnew('texts', writeTexts(sheet, 'es'))
    expect(saved).toContain('key;en;es')
    expect(saved).toContain('said ""so"",\nand no formula')
    const taken = sound(takeTexts('texts.csv', saved, { ...sheet, translations: {} }))
    expect(taken.sheet.translations).toEqual(sheet.translations)
    expect([taken.changed, taken.gone]).toEqual([[], []])
  })

  it('would be reckoned without the apostrophe', () => {
    const bare = writeTexts(sheet, 'es').replace('\'=1+1; said ""so"",\nand no formula', '=1+1')
    expect(savedAnew('bare', bare)).toContain('notice;2;')
  })
})

describe.skipIf(isMissing('soffice (libreoffice-calc)'))('XLSX in LibreOffice', () => {
  const quantities = sound(quantityList('run.json', judged, atSplices, english(null)))
  const list = stakeList(judged, placed, 'US survey foot', english(null))
  const sheets = runSheets(recordInput(judged, english(null)), list, quantities, noEntries)

  /** The sheets as LibreOffice reads and reckons them anew: rows of texts by sheet. */
  function reckoned(name: string, bytes: Uint8Array): ReadonlyMap<string, readonly (readonly string[])[]> {
    const profile = join(folder, 'profile')
    mkdirSync(join(profile, 'user'), { recursive: true })
    writeFileSync(join(profile, 'user', 'registrymodifications.xcu'), alwaysReckon)
    const out = join(folder, name)
    // fields apart by tabs, UTF-8, all sheets, values as they are and not as they show
    const filter = 'csv:Text - txt - csv (StarCalc):9,34,76,1,,0,false,false,false,false,false,-1'
    const words = [`-env:UserInstallation=file://${profile}`, '--headless', '--convert-to', filter, '--outdir', out]
    told('soffice', ...words, fileOf(`${name}.xlsx`, bytes))
    return new Map(
      sheets.map((sheet) => [
        sheet.name,
        readFileSync(join(out, `${name}-${sheet.name}.csv`), 'utf8')
          .trimEnd()
          .split('\n')
          .map((row) => row.split('\t').map((cell) => cell.replace(/^"|"$/g, ''))),
      ]),
    )
  }

  /** How many formulas come to something else than we say. */
  function differences(found: ReturnType<typeof reckoned>): { readonly formulas: number; readonly wrong: number } {
    const pairs = sheets.flatMap((sheet) =>
      sheet.rows.flatMap((row, r) =>
        row.flatMap((cell, c) =>
          isFormula(cell) ? [[cell.result, Number(found.get(sheet.name)![r + 1]![c])] as const] : [],
        ),
      ),
    )
    return { formulas: pairs.length, wrong: pairs.filter(([ours, theirs]) => !(Math.abs(ours - theirs) < 1e-9)).length }
  }

  it('comes to the same sums as we do', async () => {
    const bytes = await writeRunWorkbook(judged, list, quantities, noEntries, stamp, english(null))
    const found = reckoned('run', bytes)
    const { formulas, wrong } = differences(found)
    expect(wrong).toBe(0)
    expect(formulas).toBeGreaterThan(20)
    expect(
      found
        .get('Stakes')!
        .slice(1, 3)
        .map((row) => Number(row[1])),
    ).toEqual(list.stakes.slice(0, 2).map(({ northing }) => northing))
  })

  it('opens a run with an odd and very long name, and keeps the name', async () => {
    const odd = judgedDemo({ name: oddName })
    const found = reckoned('odd', await writeRunWorkbook(odd, list, quantities, noEntries, stamp, english(null)))
    expect(found.get('Run')!.flat().join(' ')).toContain('Böschung \u05e9\u05dc\u05d5\u05dd 🚧')
  })

  it('finds a sum that leaves one piece out', async () => {
    const short = sheets.map((sheet) => ({
      ...sheet,
      rows: sheet.rows.map((row) =>
        row.map((cell) =>
          isFormula(cell) ? { ...cell, formula: cell.formula.replace(/:([A-Z]+)(\d+)/, leaveOneOut) } : cell,
        ),
      ),
    }))
    const bytes = await writeWorkbook(short, { title: 'short', author: '', writtenAt: stamp.at, page: '&P' })
    expect(differences(reckoned('short', bytes)).wrong).toBeGreaterThan(0)
  })
})

const isFormula = (cell: Cell): cell is Exclude<Cell, string | number | null> =>
  cell !== null && typeof cell === 'object'

const leaveOneOut = (_: string, column: string, row: string): string => `:${column}${Number(row) - 1}`

/** LibreOffice's own setting: formulas of XLSX files are always reckoned anew, whatever results stand beside them. */
const alwaysReckon = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
`
