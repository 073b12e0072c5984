import { CanvasTexture, type Color, SRGBColorSpace } from 'three'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import type { Item } from '../../drawing/drawing.ts'
import { verdictSign } from '../../drawing/verdict-signs.ts'

const pixels = 64

/** The sign of a verdict, as on the strip, as a picture that stands in the scene. */
export function signTexture(word: VerdictWord, ink: Color, paper: Color): CanvasTexture {
  const canvas = document.createElement('canvas')
  canvas.width = pixels
  canvas.height = pixels
  const pen = canvas.getContext('2d')
  if (pen !== null) {
    pen.translate(pixels / 2, pixels / 2)
    pen.scale(1, -1)
    pen.lineWidth = 6
    pen.lineCap = 'round'
    pen.lineJoin = 'round'
    for (const item of verdictSign(word, { x: 0, y: 0 }, pixels * 0.8))
      paint(pen, item, ink.getStyle(), paper.getStyle())
  }
  const texture = new CanvasTexture(canvas)
  texture.colorSpace = SRGBColorSpace
  return texture
}

function paint(pen: CanvasRenderingContext2D, item: Item, ink: string, paper: string): void {
  pen.beginPath()
  switch (item.kind) {
    case 'circle':
      pen.arc(item.centre.x, item.centre.y, item.radius, 0, 2 * Math.PI)
      break
    case 'line':
      pen.moveTo(item.from.x, item.from.y)
      pen.lineTo(item.to.x, item.to.y)
      break
    case 'polyline':
    case 'area':
      for (const { x, y } of item.points) pen.lineTo(x, y)
      if (item.kind === 'area') pen.closePath()
      break
    default:
      throw new Error(`no sign is made of a ${item.kind}`)
  }
  // The cross lies on a filled sign, in the colour of the paper.
  const isMark = item.layer === 'verdict fails, mark'
  if (item.kind === 'circle' || item.kind === 'area') {
    pen.fillStyle = item.fill === 'solid' ? ink : paper
    pen.fill()
  }
  pen.strokeStyle = isMark ? paper : ink
  pen.stroke()
}
