import { dimension } from '../../draw.ts'
import type { Item } from '../../drawing.ts'
import { textWidth } from '../../text-width.ts'
import { type Frame, lengthLabel } from '../strip/frame.ts'

/** Spaces of one width that follow each other: `4 x 6' 3" = 25' 0"`. */
export interface EqualSpaces {
  readonly fromInches: number
  readonly toInches: number
  readonly count: number
}

/** The spaces between posts, those of one width taken together. */
export function equalSpaces(posts: readonly { readonly alongInches: number }[]): EqualSpaces[] {
  const groups: { fromInches: number; toInches: number; count: number }[] = []
  for (const [i, post] of posts.slice(1).entries()) {
    const from = posts[i]!.alongInches
    const width = post.alongInches - from
    const last = groups.at(-1)
    if (last !== undefined && (last.toInches - last.fromInches) / last.count === width) {
      last.toInches = post.alongInches
      last.count += 1
    } else groups.push({ fromInches: from, toInches: post.alongInches, count: 1 })
  }
  return groups
}

/**
 * Distances between posts, `below` points under finish grade. A match line cuts a group; what lies on each side of it
 * is dimensioned in its own row, and the space that is cut in the row where it begins, up to the match line.
 */
export function spacingItems(frame: Frame, below: number): Item[] {
  const { range, perPoint, input } = frame
  const { posts } = input.layout
  const inside = posts.filter((post) => post.alongInches >= range.from && post.alongInches < range.to)
  const label = ({ fromInches, toInches, count }: EqualSpaces, from: number, to: number): string => {
    const each = lengthLabel(input, (toInches - fromInches) / count)
    if (count === 1) return textWidth(each, 6.5) + 4 <= (to - from) / perPoint ? each : ''
    const whole = `${count} x ${each} = ${lengthLabel(input, toInches - fromInches)}`
    const short = `${count} x ${each}`
    return [whole, short].find((words) => textWidth(words, 6.5) + 4 <= (to - from) / perPoint) ?? ''
  }
  const shown = equalSpaces(inside).map((spaces) => ({ spaces, from: spaces.fromInches, to: spaces.toInches }))
  const [first, last] = [inside[0], inside.at(-1)]
  const next = last && posts.find((post) => post.alongInches > last.alongInches)
  if (last && next && range.to < next.alongInches)
    shown.push({
      spaces: { fromInches: last.alongInches, toInches: next.alongInches, count: 1 },
      from: last.alongInches,
      to: range.to,
    })
  const before = first && posts.findLast((post) => post.alongInches < first.alongInches)
  if (first && before)
    shown.unshift({
      spaces: { fromInches: before.alongInches, toInches: first.alongInches, count: 1 },
      from: range.from,
      to: first.alongInches,
    })
  return shown.map(({ spaces, from, to }) =>
    dimension('dimensions', frame.level(from, -below), frame.level(to, -below), 0, label(spaces, from, to), 6.5),
  )
}
