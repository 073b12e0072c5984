import { describe, expect, it } from 'vitest'
import { area, circle, dimension, group, line, point, polyline, text } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
import { writeDxf } from './write-dxf.ts'

const drawing = (items: readonly Item[]): Drawing => ({
  title: 'A drawing',
  description: 'For a test.',
  extent: { minX: 0, minY: 0, maxX: 120, maxY: 120 },
  scale: 24,
  paper: null,
  layers: [
    { name: 'face of rail', penPoints: 1, dash: 'dashed', ink: '#000000' },
    { name: 'findings', penPoints: 1, dash: 'solid', ink: '#b00000' },
  ],
  items,
})

/** Group codes with their values, in the file's order. */
function tagsOf(dxf: string): readonly (readonly [string, string])[] {
  const lines = dxf.trimEnd().split('\n')
  return Array.from({ length: lines.length / 2 }, (_, i) => [lines[2 * i]!.trim(), lines[2 * i + 1]!] as const)
}

const valuesOf = (dxf: string, code: string): readonly string[] =>
  tagsOf(dxf)
    .filter(([found]) => found === code)
    .map(([, value]) => value)

const inFeet = { unit: 'foot', author: 'J. Okafor' } as const

describe('a DXF file', () => {
  it('has the unit in its header and true coordinates in that unit', () => {
    const written = writeDxf(drawing([line('face of rail', point(0, 0), point(75, 150))]), inFeet)
    expect(written).toMatch(/\$INSUNITS\s+70\s+2\s/)
    expect(valuesOf(written, '11')).toContain('6.25')
    expect(valuesOf(written, '21')).toContain('12.5')
  })

  it('tells the US survey foot from the foot', () => {
    // 0.3048 x 3937 / 1200 is 0.999998 exactly, so 2,000,001 ft are 2,000,001 - 4.000002 US survey feet
    const written = writeDxf(drawing([line('findings', point(0, 0), point(24_000_012, 0))]), {
      ...inFeet,
      unit: 'US survey foot',
    })
    expect(written).toMatch(/\$INSUNITS\s+70\s+21\s/)
    expect(valuesOf(written, '11').map(Number)).toContain(1_999_996.999998)
  })

  it('names layers by their words and gives colour to what is not grey', () => {
    const written = writeDxf(drawing([]), inFeet)
    const names = valuesOf(written, '2')
    expect(names).toContain('face-of-rail')
    expect(names).toContain('findings')
    expect(valuesOf(written, '420')).toEqual([String(0xb00000)])
  })

  it('shares one block between groups of the same shape, and keeps their texts apart', () => {
    const post = (number: number, x: number): Item =>
      group(`post-${number}`, `post ${number}`, [
        circle('findings', point(x, 0), 3, 'solid'),
        text('findings', point(x, 5), String(number), 6),
      ])
    const wide = group('post-3', 'post 3', [circle('findings', point(99, 0), 4)])
    const written = writeDxf(drawing([post(1, 0), post(2, 75), wide]), inFeet)
    const tags = tagsOf(written)
    const inserts = tags.flatMap(([code, value], i) =>
      code === '0' && value === 'INSERT' ? [tags.slice(i).find(([found]) => found === '2')![1]] : [],
    )
    expect(inserts).toEqual(['POST', 'POST', 'POST-2'])
    expect(valuesOf(written, '1')).toEqual(expect.arrayContaining(['1', '2']))
  })

  it('writes a dimension as a dimension with its own text, also when it stands upright', () => {
    const upright = dimension('face of rail', point(0, 0), point(0, 75), 12, `6' 3"`, 8)
    const written = writeDxf(drawing([upright]), inFeet)
    expect(valuesOf(written, '0')).toContain('DIMENSION')
    expect(valuesOf(written, '2')).toContain('*D1')
    expect(valuesOf(written, '1')).toContain(`6' 3"`)
    expect(valuesOf(written, '42')).toContain('6.25')
    expect(written).not.toMatch(/NaN|undefined/)
  })

  it('keeps a text on one line of the file, so that the lines stay in pairs', () => {
    const written = writeDxf(drawing([text('findings', point(0, 0), 'one\ntwo\r\u0007three 🚧 \u05e9', 6)]), inFeet)
    expect(valuesOf(written, '1')).toContain('one two three 🚧 \u05e9')
  })

  it('gives the same bytes for the same drawing', () => {
    const items = [
      polyline('face of rail', [point(0, 0), point(5, 5)]),
      area('findings', [point(0, 0), point(9, 0), point(9, 9)], 'hatch'),
    ]
    expect(writeDxf(drawing(items), inFeet)).toBe(writeDxf(drawing(items), inFeet))
  })

  it('refuses an item on a layer that the drawing does not have', () => {
    expect(() => writeDxf(drawing([line('posts', point(0, 0), point(1, 1))]), inFeet)).toThrow('no layer “posts”')
  })
})
