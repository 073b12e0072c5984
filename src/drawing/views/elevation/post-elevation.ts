import type { SheetPost } from '../../../core/hardware/hardware-sheet.ts'
import type { LayoutPost } from '../../../core/layout/layout.ts'
import { drawnSizes } from '../../../core/scene/drawn-sizes.ts'
import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import { circle, group, line, point, polyline, rectangle } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { runWords } from '../../words/run-words.ts'
import type { Frame } from '../strip/frame.ts'
import { postFacts } from '../strip/posts.ts'
import type { StripInput } from '../strip/strip-input.ts'
import { railTopAt } from './rail-elevation.ts'

/** The post of the end unit's sheet; null in the run. */
const sheetPostOf = (input: StripInput, post: LayoutPost): SheetPost | null =>
  post.unit === 'run' ? null : (input[post.unit].sheet?.posts.find((one) => one.number === post.ownNumber) ?? null)

/** Highest allowed stub of a post that breaks away, inches; null for one that does not. */
function stubOf(sheetPost: SheetPost | null): number | null {
  const stub = sheetPost?.stub ?? 'none'
  return stub === 'none' || stub.high === 'notStated' ? null : lengthIn(exactLength(stub.high, stub.unit), 'in')
}

/** One post with its block, in true height above finish grade and cut off below. */
export function postElevation(frame: Frame, post: LayoutPost): Item {
  const { input } = frame
  const along = post.alongInches
  const railTop = railTopAt(input, along) ?? 31
  const sheetPost = sheetPostOf(input, post)
  const stub = stubOf(sheetPost)
  const width = stub === null ? drawnSizes.postWidth : drawnSizes.breakawayWidth
  const box = (half: number, minY: number, maxY: number) => ({ minX: along - half, maxX: along + half, minY, maxY })
  const top = railTop + drawnSizes.postAboveRail
  const cut = -drawnSizes.cutBelow
  const foot = stub ?? 0
  const half = width / 2
  const items: Item[] = []
  if (post.block) {
    const middle = railTop - drawnSizes.beam / 2
    const blockHalf = drawnSizes.blockHeight / 2
    items.push(rectangle('blocks', box(drawnSizes.blockWidth / 2, middle - blockHalf, middle + blockHalf), 'tint'))
  }
  items.push(rectangle('posts', box(half, foot, top), post.state === 'special' ? 'hatch' : 'blank'))
  if (stub !== null)
    items.push(rectangle('posts', box(half + 1, 0, stub), 'tint'), ...hingeItems(post, sheetPost!, stub))
  const below = stub === null ? half : half + 1
  items.push(
    line('posts in the ground', point(along - below, 0), point(along - below, cut)),
    line('posts in the ground', point(along + below, 0), point(along + below, cut)),
    polyline('posts', [
      point(along - below - 1.5, cut),
      point(along - 1, cut),
      point(along - 0.5, cut + 2),
      point(along + 0.5, cut - 2),
      point(along + 1, cut),
      point(along + below + 1.5, cut),
    ]),
  )
  return group(post.id, postFacts(input, post, runWords(input.print).post(post.number)), items)
}

/** The hinge bolt, filled, on the side that the sheet says; the other hole stays open. */
function hingeItems(post: LayoutPost, sheetPost: SheetPost, stub: number): Item[] {
  const { hingeSide } = sheetPost
  if (hingeSide === 'notStated' || hingeSide === 'none') return []
  const head = headDirection(post)
  const side = hingeSide === 'upstream' ? head : -head
  const y = stub - 1.5
  return [-1, 1].map((one) =>
    circle('posts', point(post.alongInches + one * 2.6, y), 1, one === side ? 'solid' : 'blank'),
  )
}

/** Toward the head of the end unit: against the run's direction at the first end, with it at the second. */
const headDirection = (post: LayoutPost): 1 | -1 => (post.unit === 'second' ? 1 : -1)
