import { kindOfPost } from '../../../core/layout/kind-of-post.ts'
import type { LayoutPost, OmittedPost } from '../../../core/layout/layout.ts'
import { theirNames } from '../../../words/their-names.ts'
import { area, circle, group, line, point, rectangle, text } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { runWords } from '../../words/run-words.ts'
import { type Frame, isWithin, lengthLabel } from './frame.ts'
import { spreadRows } from './spread.ts'
import type { StripInput } from './strip-input.ts'

export type PostSign = 'standard' | 'breakaway' | 'moved' | 'special'

/** How far behind the face of rail a post's number begins, points. */
const numberTop = (post: LayoutPost): number => (post.block ? 16.5 : 11.5)
const numberHeight = 7.5

/** Posts and omitted posts of the frame, and how far below the line of the run they reach, points. */
export function postItems(frame: Frame): { items: Item[]; depth: number } {
  const { layout } = frame.input
  const posts = layout.posts.filter((post) => isWithin(frame.range, post.alongInches))
  const spans = posts.map((post) => {
    const half = (numberWidth(post) / 2 + 1) * frame.perPoint
    return { from: post.alongInches - half, to: post.alongInches + half }
  })
  const rows = spreadRows(spans)
  const items: Item[] = layout.omitted
    .filter((omitted) => isWithin(frame.range, omitted.alongInches))
    .map((omitted) => omittedGroup(frame, omitted))
  let depth = 16.5
  posts.forEach((post, i) => {
    const drop = rows[i]! * (post.ownNumber === null ? numberHeight : 2 * numberHeight)
    items.push(postGroup(frame, post, drop))
    const own = post.ownNumber === null ? 0 : numberHeight
    depth = Math.max(depth, frame.drawnOffset(post.alongInches) + numberTop(post) + drop + numberHeight + own)
  })
  return { items, depth }
}

const numberWidth = (post: LayoutPost): number =>
  Math.max(textWidth(String(post.number), 7, true), post.ownNumber === null ? 0 : textWidth(`(${post.ownNumber})`, 6.5))

function postGroup(frame: Frame, post: LayoutPost, drop: number): Item {
  const { perPoint } = frame
  const face = frame.at(post.alongInches, 0)
  const below = (points: number): Point => point(face.x, face.y - points * perPoint)
  const items: Item[] = []
  if (post.block) items.push(blockSign(below(6), perPoint))
  const centre = below(post.block ? 12 : 7)
  items.push(...postSign(postSignOf(frame.input, post), centre, perPoint))
  if (post.state === 'standing') items.push(...standingMark(centre, perPoint))
  if (drop > 0) items.push(line('dimensions', below(numberTop(post) - 0.5), below(numberTop(post) + drop)))
  items.push(
    text('text', below(numberTop(post) + drop), String(post.number), 7, { anchor: 'middle', level: 'top', bold: true }),
  )
  if (post.ownNumber !== null) {
    const own = below(numberTop(post) + drop + numberHeight)
    items.push(text('text', own, `(${post.ownNumber})`, 6.5, { anchor: 'middle', level: 'top' }))
  }
  return group(post.id, postTitle(frame.input, post), items)
}

/** A post breaks away when its sheet limits the stub it leaves. */
export function postSignOf(input: StripInput, post: LayoutPost): PostSign {
  if (post.state === 'moved' || post.state === 'special') return post.state
  if (post.unit === 'run' || post.ownNumber === null) return 'standard'
  const own = input[post.unit].sheet?.posts.find((one) => one.number === post.ownNumber)
  return own !== undefined && own.stub !== 'none' ? 'breakaway' : 'standard'
}

/** The sign of a post in plan, about 6.5 points wide, traffic side up. */
export function postSign(sign: PostSign, centre: Point, perPoint: number): Item[] {
  const at = (x: number, y: number): Point => point(centre.x + x * perPoint, centre.y + y * perPoint)
  switch (sign) {
    case 'standard':
      return [
        area(
          'posts',
          [
            [-3, 3],
            [3, 3],
            [3, 1.6],
            [0.8, 1.6],
            [0.8, -1.6],
            [3, -1.6],
            [3, -3],
            [-3, -3],
            [-3, -1.6],
            [-0.8, -1.6],
            [-0.8, 1.6],
            [-3, 1.6],
          ].map(([x, y]) => at(x!, y!)),
          'solid',
          false,
        ),
      ]
    case 'breakaway':
      return [area('posts', [at(-3, -3), at(3, -3), at(3, 3), at(-3, 3)], 'blank')]
    case 'moved':
      return [area('posts', [at(-3.6, 3), at(3.6, 3), at(0, -3.4)], 'solid')]
    case 'special':
      return [
        area('posts', [at(-3.8, 0), at(0, 3.8), at(3.8, 0), at(0, -3.8)], 'blank'),
        circle('posts', centre, 0.7 * perPoint, 'solid'),
      ]
    default:
      return sign satisfies never
  }
}

export const blockSign = (centre: Point, perPoint: number): Item =>
  rectangle(
    'blocks',
    {
      minX: centre.x - 2 * perPoint,
      maxX: centre.x + 2 * perPoint,
      minY: centre.y - 3 * perPoint,
      maxY: centre.y + 3 * perPoint,
    },
    'tint',
  )

/** A bar on each side of a post that stands already. */
export const standingMark = (centre: Point, perPoint: number): Item[] =>
  [-5, 5].map((x) =>
    line(
      'posts',
      point(centre.x + x * perPoint, centre.y - 3 * perPoint),
      point(centre.x + x * perPoint, centre.y + 3 * perPoint),
    ),
  )

/** A cross in a dashed circle, 10 points wide. */
export function omittedSign(centre: Point, perPoint: number): Item[] {
  const at = (x: number, y: number): Point => point(centre.x + x * perPoint, centre.y + y * perPoint)
  return [
    circle('omitted posts', centre, 5 * perPoint, 'blank'),
    line('posts', at(-2.5, -2.5), at(2.5, 2.5)),
    line('posts', at(-2.5, 2.5), at(2.5, -2.5)),
  ]
}

const omittedGroup = (frame: Frame, omitted: OmittedPost): Item =>
  group(
    `omitted-${omitted.alongInches}`,
    omittedTitle(frame.input, omitted),
    omittedSign(frame.at(omitted.alongInches, -12), frame.perPoint),
  )

const omittedTitle = (input: StripInput, { alongInches, obstructions, rule }: OmittedPost): string => {
  const { print } = input
  return runWords(print).omitted(lengthLabel(input, alongInches), theirNames(obstructions, print), rule)
}

function postTitle(input: StripInput, post: LayoutPost): string {
  const words = runWords(input.print)
  const { number, ownNumber: own, unit } = post
  const name = own === null || unit === 'run' ? words.post(number) : words.postOf(number, own, input[unit].name)
  return postFacts(input, post, name)
}

/** `name` with what kind of post it is, its state, its block and where it stands. */
export function postFacts(input: StripInput, post: LayoutPost, name: string): string {
  const { print, system } = input
  const sheet = post.unit === 'run' ? system : (input[post.unit].sheet ?? system)
  const kind = print.say(kindOfPost(post, sheet))
  return runWords(print).postFacts(name, kind, post.state, post.block, lengthLabel(input, post.alongInches))
}
