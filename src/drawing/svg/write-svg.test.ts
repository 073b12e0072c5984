import { describe, expect, it } from 'vitest'
import { area, circle, dimension, group, line, point, polyline, text } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
import { papers } from '../paper.ts'
import { escapeXml } from './escape-xml.ts'
import { writeSvg } from './write-svg.ts'

const drawing = (items: readonly Item[], change: Partial<Drawing> = {}): Drawing => ({
  title: 'a drawing',
  description: 'of something',
  extent: { minX: 0, minY: 0, maxX: 11 * 240, maxY: 8.5 * 240 },
  scale: 240,
  paper: papers.letter,
  layers: [{ name: 'l', penPoints: 1, dash: 'solid', ink: '#111111' }],
  items,
  ...change,
})

describe('writeSvg', () => {
  it('is true to scale: 20 ft at 1 in = 20 ft is 72 of the 72 units to the inch, on a page in millimetres', () => {
    const svg = writeSvg(drawing([line('l', point(0, 0), point(240, 0))]))
    expect(svg).toContain('width="279.4mm" height="215.9mm" viewBox="0 0 792 612"')
    expect(svg).toContain('<path d="M0 612L72 612"')
  })

  it('turns y round: what is higher in the drawing is nearer to the top', () => {
    const svg = writeSvg(drawing([circle('l', point(240, 8.5 * 240), 24)]))
    expect(svg).toContain('cx="72" cy="0" r="7.2"')
  })

  it('carries title, description, role and the ids of groups', () => {
    const svg = writeSvg(drawing([group('post-9', 'post 9, standing', [line('l', point(0, 0), point(1, 1))])]))
    expect(svg).toContain('role="img"')
    expect(svg).toContain('<title>a drawing</title>\n<desc>of something</desc>')
    expect(svg).toContain('<g data-place="post-9"><title>post 9, standing</title>')
  })

  it('writes names with marks, emoji and right-to-left letters so that they come back unchanged', () => {
    const name = '<Neuf> & "Ufer" 🚧 جسر'
    const svg = writeSvg(drawing([group(name, name, [text('l', point(0, 0), name, 7)])], { title: name }))
    const back = [...svg.matchAll(/>([^<>]*جسر)</g)].map(([, words]) =>
      words!
        .replace(/&lt;/g, '<')
        .replace(/&gt;/g, '>')
        .replace(/&quot;/g, '"')
        .replace(/&amp;/g, '&'),
    )
    expect(back).toEqual([name, name, name])
  })

  it('writes the same bytes for the same drawing, and no negative zero or long number', () => {
    const items = [
      polyline('l', [point(1 / 3, 2 / 3), point(-0.0001, 7)]),
      area('l', [point(0, 0), point(40, 0), point(40, 30)], 'hatch'),
      dimension('l', point(0, 0), point(75, 0), 10, `6' 3"`, 7),
    ]
    const svg = writeSvg(drawing(items))
    expect(writeSvg(drawing(items))).toBe(svg)
    expect(svg).not.toMatch(/-0[ ",LM]|\d\.\d{3}/)
  })

  it('draws an arc over its own angles', () => {
    const arc: Item = { kind: 'arc', layer: 'l', centre: point(240, 240), radius: 240, fromDegrees: 0, toDegrees: 270 }
    expect(writeSvg(drawing([arc]))).toContain('d="M144 540A72 72 0 1 0 72 612"')
  })

  it('refuses an item on a layer that the drawing does not list', () => {
    expect(() => writeSvg(drawing([line('other', point(0, 0), point(1, 1))]))).toThrow(/no layer “other”/)
  })
})

describe('escapeXml', () => {
  it('replaces what XML 1.0 cannot hold and keeps whole pairs', () => {
    expect(escapeXml('a\u0000b\u001bc\ud83dd\ufffe')).toBe('a\ufffdb\ufffdc\ufffdd\ufffd')
    expect(escapeXml('🚧')).toBe('🚧')
  })

  it('writes line breaks and tabs as spaces', () => {
    expect(escapeXml('a\nb\tc')).toBe('a b c')
  })
})
