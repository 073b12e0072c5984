import type { LongitudinalSheet, PostMake } from '../hardware/hardware-sheet.ts'
import { makeOf, specialMakeOf } from '../hardware/make.ts'
import type { LayoutPost, RunEnd } from './layout.ts'

interface Sheets {
  readonly system: LongitudinalSheet
  readonly first: RunEnd
  readonly second: RunEnd
}

/** What a post of a layout is made of: as its end unit's sheet says, or the system's with its rules for gaps. */
export function makeOfPost(post: LayoutPost, { system, first, second }: Sheets): PostMake {
  const end = post.unit === 'first' ? first : post.unit === 'second' ? second : null
  const own = end?.kind === 'unit' ? end.sheet.posts.find(({ number }) => number === post.ownNumber) : undefined
  if (own !== undefined) return makeOf(own)
  const rule = post.state === 'special' ? system.omissions.find((one) => one.specialPostKind === post.kind) : undefined
  return rule === undefined ? makeOf(system.post) : specialMakeOf(rule)
}
