import {
  AlignedDimension,
  BlockFlags,
  type DxfBlock,
  DxfWriter,
  HatchBoundaryPaths,
  HatchPolylineBoundary,
  HatchPredefinedPatterns,
  LWPolylineFlags,
  type LWPolylineVertex,
  pattern,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
  vertex,
} from '@tarikjabiri/dxf'
import { dimensionParts } from '../dimension-parts.ts'
import type { Dimension, Drawing, Fill, Group, Item, Point, Text } from '../drawing.ts'
import { blockWord, type Shape, shapeKey, splitGroup } from './dxf-blocks.ts'
import { addLayers, layerName, rounded } from './dxf-layers.ts'

/** The unit of the file's coordinates; the header states it. */
export type DxfUnit = 'inch' | 'foot' | 'US survey foot' | 'metre'

export interface DxfOptions {
  readonly unit: DxfUnit
  /** Stated as the last to save the file; empty when not said. */
  readonly author: string
}

/** How many to the inch, exactly, and the header's code. */
const units: Readonly<Record<DxfUnit, { readonly perInch: number; readonly code: Units }>> = {
  inch: { perInch: 1, code: Units.Inches },
  foot: { perInch: 1 / 12, code: Units.Feet },
  'US survey foot': { perInch: (0.0254 * 3937) / 1200, code: Units.USSurveyFeet },
  metre: { perInch: 0.0254, code: Units.Meters },
}

/**
 * `drawing` as a DXF file of the 2007 release, at its own coordinates in `unit`.
 *
 * Each layer keeps its plain words, colour and kind of line. The shapes of a group become a block, one for all groups
 * of the same shapes. A dimension is a dimension, with its picture as an anonymous block. Letters are as high as the
 * drawing has them at its scale. `blank` areas cover nothing here: programs draw on grounds of any colour. The same
 * drawing gives the same bytes.
 */
export function writeDxf(drawing: Drawing, options: DxfOptions): string {
  const dxf = new DxfWriter()
  const { perInch, code } = units[options.unit]
  dxf.setUnits(code)
  // The release writes UTF-8 in any case; readers that look for a code page first take the file for something else without one.
  dxf.setVariable('$DWGCODEPAGE', { 3: 'ANSI_1252' })
  dxf.setVariable('$MEASUREMENT', { 70: options.unit === 'metre' ? 1 : 0 })
  dxf.setVariable('$LASTSAVEDBY', { 1: onOneLine(options.author) })
  const size = (inches: number): number => rounded(inches * perInch)
  const { minX, minY, maxX, maxY } = drawing.extent
  dxf.setVariable('$EXTMIN', { 10: size(minX), 20: size(minY), 30: 0 })
  dxf.setVariable('$EXTMAX', { 10: size(maxX), 20: size(maxY), 30: 0 })
  addLayers(dxf, drawing, (drawing.scale / 72) * perInch)
  dxf.document.styleStandard.fontFileName = 'arial.ttf'
  const write = dxfWriter(dxf, drawing, perInch)
  for (const item of drawing.items) write(item)
  return `${dxf.stringify()}\n`
}

function dxfWriter(dxf: DxfWriter, drawing: Drawing, perInch: number): (item: Item) => void {
  const perPoint = drawing.scale / 72
  const size = (inches: number): number => rounded(inches * perInch)
  const at = ({ x, y }: Point) => point3d(size(x), size(y), 0)
  const corners = (points: readonly Point[]): LWPolylineVertex[] =>
    points.map(({ x, y }) => ({ point: point2d(size(x), size(y)) }))
  const layers = new Set(drawing.layers.map(({ name }) => name))
  const on = (layer: string): { layerName: string } => {
    if (!layers.has(layer)) throw new RangeError(`the drawing has no layer “${layer}”`)
    return { layerName: layerName(layer) }
  }

  const fillWith = (into: DxfBlock, fill: Fill, layer: string, boundary: HatchPolylineBoundary): void => {
    if (fill === 'none' || fill === 'blank') return
    const path = new HatchBoundaryPaths()
    path.addPolylineBoundary(boundary)
    // The library's ANSI31 puts its lines 1.25 units apart along the y axis at scale 1; on paper they are 3 points apart.
    const lines = { name: HatchPredefinedPatterns.ANSI31, scale: (size(3 * perPoint) * Math.SQRT2) / 1.25 }
    const how = fill === 'hatch' ? lines : { name: HatchPredefinedPatterns.SOLID }
    into.addHatch(path, pattern(how), { ...on(layer), ...(fill === 'tint' ? { colorNumber: tintColour } : {}) })
  }

  const writeShape = (into: DxfBlock, shape: Shape): void => {
    switch (shape.kind) {
      case 'line':
        into.addLine(at(shape.from), at(shape.to), on(shape.layer))
        return
      case 'polyline':
        into.addLWPolyline(corners(shape.points), on(shape.layer))
        return
      case 'area': {
        const edge = shape.points.map(({ x, y }) => vertex(size(x), size(y)))
        fillWith(into, shape.fill, shape.layer, new HatchPolylineBoundary(edge))
        if (shape.edged)
          into.addLWPolyline(corners(shape.points), { ...on(shape.layer), flags: LWPolylineFlags.Closed })
        return
      }
      case 'circle': {
        const { centre, radius } = shape
        // Two half circles: a bulge of 1 is a half turn.
        const edge = [-radius, radius].map((dx) => vertex(size(centre.x + dx), size(centre.y), 1))
        fillWith(into, shape.fill, shape.layer, new HatchPolylineBoundary(edge))
        into.addCircle(at(centre), size(radius), on(shape.layer))
        return
      }
      case 'arc':
        into.addArc(at(shape.centre), size(shape.radius), shape.fromDegrees, shape.toDegrees, on(shape.layer))
        return
      default:
        shape satisfies never
    }
  }

  const writeText = (into: DxfBlock, item: Text): void => {
    const letters = 'points' in item.height ? item.height.points * perPoint : item.height.inches
    const across = {
      start: TextHorizontalAlignment.Left,
      middle: TextHorizontalAlignment.Center,
      end: TextHorizontalAlignment.Right,
    }
    const up = {
      base: TextVerticalAlignment.BaseLine,
      middle: TextVerticalAlignment.Middle,
      top: TextVerticalAlignment.Top,
    }
    into.addText(at(item.at), size(letters * capitalHeight), onOneLine(item.text), {
      ...on(item.layer),
      rotation: item.turnDegrees,
      horizontalAlignment: across[item.anchor],
      verticalAlignment: up[item.level],
      secondAlignmentPoint: at(item.at),
    })
  }

  let dimensions = 0
  const writeDimension = (item: Dimension): void => {
    const parts = dimensionParts(item, perPoint)
    const block = dxf.blocks.addBlock(`*D${++dimensions}`, dxf.document.objects, false)
    block.flags = BlockFlags.AnonymousBlock
    for (const line of parts.lines) writeShape(block, line)
    writeText(block, parts.text)
    const line = parts.lines.at(-1)!
    const length = Math.hypot(item.to.x - item.from.x, item.to.y - item.from.y)
    dxf.modelSpace.addEntity(
      new OwnBlockDimension(at(item.from), at(item.to), {
        ...on(item.layer),
        blockName: block.name,
        definitionPoint: at(line.to),
        middlePoint: at(parts.text.at),
        ActualMeasurement: size(length),
        text: onOneLine(item.text),
        styleName: 'Standard',
      }),
    )
  }

  const blocks = new Map<string, DxfBlock>()
  const named = new Map<string, number>()
  const blockOf = (group: Group, shapes: readonly Shape[]): DxfBlock => {
    const key = shapeKey(shapes)
    const known = blocks.get(key)
    if (known !== undefined) return known
    const word = blockWord(group.id)
    const count = (named.get(word) ?? 0) + 1
    named.set(word, count)
    const block = dxf.addBlock(count === 1 ? word : `${word}-${count}`)
    for (const shape of shapes) writeShape(block, shape)
    blocks.set(key, block)
    return block
  }

  const write = (item: Item): void => {
    switch (item.kind) {
      case 'text':
        writeText(dxf.modelSpace, item)
        return
      case 'dimension':
        writeDimension(item)
        return
      case 'group': {
        const { base, shapes, rest } = splitGroup(item)
        const [first] = shapes
        if (first !== undefined) dxf.addInsert(blockOf(item, shapes).name, at(base), on(first.layer))
        rest.forEach(write)
        return
      }
      default:
        writeShape(dxf.modelSpace, item)
    }
  }
  return write
}

/** A value of the file is one line of it. */
const onOneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')

/** Height of a capital letter for a font size of 1; DXF gives letters by it. */
const capitalHeight = 0.72

/** The middle grey, on which both black and white letters can be read. */
const tintColour = 8

/** An aligned dimension whose picture belongs to it alone. */
class OwnBlockDimension extends AlignedDimension {
  protected override dimensionType = 1 + 32
}
