import { describe, expect, it } from 'vitest'
import { boxOf, drawnGroups, drawnItems, drawnWords } from '../../../test/cases/drawing/drawn.ts'
import { mirrorPair, siteInput, siteInputs } from '../../../test/cases/drawing/site-inputs.ts'
import { touchingTexts } from '../../../test/cases/drawing/site-text-boxes.ts'
import { feet } from '../../core/units/quantity.ts'
import type { Drawing } from '../drawing.ts'
import { sectionDrawing } from './section.ts'

const boxIn = (drawing: Drawing, id: string, layer: string) =>
  boxOf(
    drawnGroups(drawing.items, new RegExp(`^${id}$`))
      .flatMap((one) => drawnItems(one.items))
      .find((item) => item.layer === layer)!,
    drawing.scale,
  )

describe('the cross section', () => {
  const drawing = sectionDrawing(siteInputs.twoWay('web'), feet(1010))

  it('has everything at its lateral distance, in inches', () => {
    const hazard = boxIn(drawing, 'hazard-1', 'hazards')
    expect([hazard.minX, hazard.maxX]).toEqual([expect.closeTo(13 * 12, 6), expect.closeTo(24 * 12, 6)])
    expect(boxIn(drawing, 'clear-zone', 'clear zone').minX).toBeCloseTo(30 * 12, 6)
    expect(boxIn(drawing, 'shy-line', 'shy line').minX).toBeCloseTo(8 * 12, 6)
    expect(drawnWords(drawing)).toEqual(
      expect.arrayContaining(['culvert headwall, near 13 ft', 'culvert headwall, far 24 ft', 'face of barrier 10 ft']),
    )
  })

  it('has the top of rail its height above the ground under its face', () => {
    // 8 ft of shoulder at 4 % and 2 ft at 1V:6H: 0.32 + 0.3333 ft below the edge; the sheet says 31 in
    const ground = -(8 * 0.04 + 2 / 6) * 12
    expect(boxIn(drawing, 'barrier', 'barrier').maxY).toBeCloseTo(ground + 31, 6)
    expect(boxIn(drawing, 'barrier', 'barrier').minX).toBeCloseTo(120, 6)
    expect(drawnWords(drawing)).toContain('barrier, top of rail 31 in')
  })

  it('draws heights larger only when told, and says so', () => {
    const high = sectionDrawing(siteInputs.twoWay('web'), feet(1010), 3)
    const top = (one: Drawing) => boxIn(one, 'barrier', 'barrier').maxY
    expect(top(high)).toBeCloseTo(3 * top(drawing), 6)
    expect(drawnWords(high).join(' ')).toContain('HEIGHTS ARE DRAWN 3 TIMES THEIR SIZE')
    expect(drawnWords(drawing).join(' ')).not.toContain('HEIGHTS ARE DRAWN')
  })

  it('is mirrored when the side is', () => {
    const [right, left] = mirrorPair().map((site) => sectionDrawing(siteInput(site, 'web'), feet(1010)))
    for (const [id, layer] of [
      ['hazard-1', 'hazards'],
      ['barrier', 'barrier'],
      ['clear-zone', 'clear zone'],
    ] as const) {
      const [a, b] = [boxIn(right!, id, layer), boxIn(left!, id, layer)]
      expect(b.minX, id).toBeCloseTo(-a.maxX, 6)
      expect(b.maxY, id).toBeCloseTo(a.maxY, 6)
    }
  })

  it('shows what is at its station: another hazard, the flare, or no barrier', () => {
    const at = (station: number) => sectionDrawing(siteInputs.twoWay('web'), feet(station))
    expect(drawnGroups(at(1054).items, /^hazard-1$/)).toEqual([])
    expect(boxIn(at(1054), 'hazard-2', 'hazards').minX).toBeCloseTo(16 * 12, 6)
    const bare = siteInputs.twoWay('web')
    // flared 14:1 from 9+75: at 9+47 it has left the parallel line by 2 ft
    expect(boxIn(sectionDrawing({ ...bare, approachEnd: null }, feet(947)), 'barrier', 'barrier').minX).toBeCloseTo(
      144,
      6,
    )
    expect(drawnWords(at(800)).join(' ')).toContain('no barrier at this station')
  })

  it.each(['web', 'phone', 'letter', 'A4'] as const)('on %s lets no text run into another', (page) => {
    for (const [make, station] of [
      [siteInputs.twoWay, feet(1010)],
      [siteInputs.left, feet(930)],
      [siteInputs.divided, 1205],
      [siteInputs.inside, feet(1054)],
    ] as const) {
      const section = sectionDrawing(make(page), station)
      expect(touchingTexts(section)).toEqual([])
      for (const item of drawnItems(section.items)) {
        const box = boxOf(item, section.scale)
        expect(box.minX, JSON.stringify(item)).toBeGreaterThanOrEqual(section.extent.minX)
        expect(box.maxX, JSON.stringify(item)).toBeLessThanOrEqual(section.extent.maxX)
        expect(box.minY, JSON.stringify(item)).toBeGreaterThanOrEqual(section.extent.minY)
        expect(box.maxY, JSON.stringify(item)).toBeLessThanOrEqual(section.extent.maxY)
      }
    }
  })
})
