import { describe, expect, it } from 'vitest'
import { boxOf, drawnItems, drawnWords } from '../../../test/cases/drawing/drawn.ts'
import { figureRequirements } from '../../../test/cases/drawing/figure-requirements.ts'
import { culvertRun, shippedSheet } from '../../../test/cases/drawing/hand-layouts.ts'
import { byHand } from '../../../test/fixtures/by-hand.ts'
import {
  type EndSheet,
  figureKinds,
  type HardwareSheet,
  type LongitudinalSheet,
} from '../../core/hardware/hardware-sheet.ts'
import { deriveRequirements } from '../../core/requirements/derive-requirements.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { landedSheets } from '../../sheets/landed-sheets.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { english } from '../../words/english.ts'
import { dimensionParts } from '../dimension-parts.ts'
import type { Drawing } from '../drawing.ts'
import { figureFacts } from './figures/figure-facts.ts'
import { figureDrawing } from './figures.ts'

const drawn = (requirement: Requirement): Drawing =>
  figureDrawing(requirement.figure!, figureFacts(requirement, shippedSheet(requirement.sheet), english(null)))

const named = (name: string): Drawing => drawn(figureRequirements.get(name)!)

describe('figures', () => {
  it('there is one for every kind', () => {
    const kinds = new Set([...figureRequirements.values()].map((requirement) => requirement.figure))
    expect(kinds).toEqual(new Set(figureKinds))
  })

  it.each([...figureRequirements.keys()])('%s: right and wrong are told in words and by their signs', (name) => {
    const drawing = named(name)
    expect(drawnWords(drawing)).toEqual(expect.arrayContaining(['right', 'wrong']))
    const layers = new Set(drawnItems(drawing.items).map((item) => item.layer))
    expect(layers).toContain('verdict meets')
    expect(layers).toContain('verdict fails')
  })

  it.each([...figureRequirements.keys()])('%s: the two halves differ', (name) => {
    const drawing = named(name)
    const middle = (drawing.extent.minX + drawing.extent.maxX) / 2
    const shapes = (isRight: boolean) =>
      drawnItems(drawing.items)
        .filter((item) => !item.layer.startsWith('verdict') && item.kind !== 'text')
        .map((item) => boxOf(item, drawing.scale))
        .filter((box) => box.maxX <= middle === isRight)
        .map((box) => {
          const left = isRight ? 0 : (108 * drawing.scale) / 72
          return [box.minX - left, box.maxX - left, box.minY, box.maxY].map((value) => value.toFixed(3)).join(' ')
        })
    expect(shapes(true)).not.toEqual(shapes(false))
  })

  it.each([...figureRequirements.keys()])('%s: everything stays within it, and no text runs into another', (name) => {
    const drawing = named(name)
    const { extent } = drawing
    const slack = drawing.scale / 72
    for (const item of drawnItems(drawing.items)) {
      const box = boxOf(item, drawing.scale)
      expect(box.minX, JSON.stringify(item)).toBeGreaterThanOrEqual(extent.minX - slack)
      expect(box.maxX, JSON.stringify(item)).toBeLessThanOrEqual(extent.maxX + slack)
      expect(box.minY, JSON.stringify(item)).toBeGreaterThanOrEqual(extent.minY - slack)
      expect(box.maxY, JSON.stringify(item)).toBeLessThanOrEqual(extent.maxY + slack)
    }
    const texts = drawnItems(drawing.items).flatMap((item) =>
      item.kind === 'text' ? [item] : item.kind === 'dimension' ? [dimensionParts(item, drawing.scale / 72).text] : [],
    )
    const level = texts.filter((item) => item.turnDegrees === 0 && item.text !== '')
    const boxes = level.map((item) => boxOf(item, drawing.scale))
    const touching = boxes.flatMap((a, i) =>
      boxes.flatMap((b, j) =>
        j > i && a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY
          ? [`${level[i]!.text} | ${level[j]!.text}`]
          : [],
      ),
    )
    expect(touching).toEqual([])
  })

  it('carry the numbers of the sheet', () => {
    expect(drawnWords(named('rail-height-centre'))).toEqual(expect.arrayContaining(['31 in', '30 in']))
    expect(drawnWords(named('rail-height-floor'))).toEqual(expect.arrayContaining(['≥ 27 3/4 in', '27 3/4 in']))
    expect(drawnWords(named('stub-height'))).toEqual(expect.arrayContaining(['≤ 4 in', '> 4 in']))
    expect(drawnWords(named('cable-play'))).toEqual(expect.arrayContaining(['≤ 1 in', '> 1 in']))
    expect(drawnWords(named('bearing-plate'))).toEqual(expect.arrayContaining(['5 in', '3 in']))
    expect(drawnWords(named('panel-length'))).toEqual(expect.arrayContaining(['9 ft 4 1/2 in', '12 ft 6 in']))
    expect(drawnWords(named('post-spacing'))).toEqual(expect.arrayContaining(['6 ft 3 in', '> 6 ft 4 in']))
  })

  it('swap the halves when the sheet wants the other side', () => {
    const boltOf = (name: string, change: (text: string) => string) => {
      const base = figureRequirements.get(name)!
      const swapped: Requirement = JSON.parse(change(JSON.stringify(base)))
      return drawnItems(drawn(swapped).items).find(
        (item) => item.layer === 'hole' && item.kind === 'circle' && item.fill === 'solid',
      )!
    }
    const away = boltOf('hinge-side', (text) => text)
    const toward = boltOf('hinge-side', (text) => text.replace('"toward":"away"', '"toward":"head"'))
    expect(away.kind === 'circle' && toward.kind === 'circle' && away.centre.x > toward.centre.x).toBe(true)
  })

  it('call neither half right when a sheet does not tell which is', () => {
    const base = figureRequirements.get('hinge-side')!
    const silent: Requirement = {
      ...base,
      must: byHand('The hinge is as the manual shows.'),
      look: { kind: 'confirm' },
      shows: {},
    }
    expect(drawnWords(drawn(silent))).not.toContain('right')
    expect(drawn(silent).description).toContain('the two ways it can be')
  })

  it('are drawn for the older edition of a sheet, which says it in words alone, as for the one on the shelf', () => {
    const run = culvertRun(6)
    const drawnWith = (sheets: readonly HardwareSheet[]) => {
      const end = ({ sheet }: typeof run.first) => ({
        kind: 'unit' as const,
        sheet: sheets.find(({ id }) => id === sheet!.id) as EndSheet,
        atInches: null,
      })
      return (
        deriveRequirements({
          ...{ layout: run.layout, system: sheets.find(({ id }) => id === run.system.id) as LongitudinalSheet },
          ...{ first: end(run.first), second: end(run.second), flare: null, work: null, letting: null },
          ...{ speed: null, opposingReaches: null },
        })
          .filter((requirement) => requirement.figure !== null)
          // A later edition may say the same in other words: its title and no more of the figure.
          .map((requirement) => [requirement.id, { ...drawn(requirement), title: '' }])
      )
    }
    const older = drawnWith(landedSheets)
    expect(older.length).toBeGreaterThan(100)
    expect(older).toEqual(drawnWith(shippedSheets))
  })

  it('are told by every rule that the shipped sheets give a figure', () => {
    const run = culvertRun(6)
    const end = (one: typeof run.first) => ({ kind: 'unit' as const, sheet: one.sheet!, atInches: null })
    const requirements = deriveRequirements({
      layout: run.layout,
      system: run.system,
      first: end(run.first),
      second: end(run.second),
      flare: null,
      work: null,
      letting: null,
      speed: null,
      opposingReaches: null,
    }).filter((requirement) => requirement.figure !== null)
    expect(requirements.length).toBeGreaterThan(100)
    for (const requirement of requirements)
      expect(drawnWords(drawn(requirement)), requirement.id).toEqual(expect.arrayContaining(['right', 'wrong']))
  })
})
