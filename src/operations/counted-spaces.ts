import { countedLayout } from '../core/layout/counted-layout.ts'
import type { CountedHardware } from '../core/layout/counted-posts.ts'
import type { CountedPieces, Obstruction, ReducedPart } from '../core/layout/layout.ts'

/** What somebody sees between two posts of the run; `open` where the post at the downstream end of it is left out. */
export type SeenSpace = 'full' | 'half' | 'quarter' | 'open'

/** Between two posts that stand at the spacings of the sheets. */
export interface CountedSpace {
  /** Number of the post before it. */
  readonly number: number
  /** What can be seen there: of the space before a post of an end unit, not that this post is left out. */
  readonly ways: readonly SeenSpace[]
}

/** The spaces of a run that were counted as full ones; none while nobody knows where its posts stand. */
export function countedSpaces(hardware: CountedHardware, counted: CountedPieces): readonly CountedSpace[] {
  const { posts, asCounted } = countedLayout(hardware, counted)
  if (asCounted !== 'posts placed') return []
  return posts.slice(1).flatMap((after, i) => {
    const { unit } = posts[i]!
    if (unit !== 'run' && after.unit !== 'run') return []
    const isLast = after.unit !== 'run' || i === posts.length - 2
    const ways = ['full', 'half', 'quarter', ...(isLast || hardware.system.omissions.length === 0 ? [] : ['open'])]
    return [{ number: i + 1, ways: ways as readonly SeenSpace[] }]
  })
}

interface AsSeen extends Pick<CountedPieces, 'posts'> {
  readonly reduced: readonly ReducedPart[]
  readonly obstructions: readonly Obstruction[]
}

/**
 * Posts and what a run file says of them, once spaces were seen to be divided or a post to be left out.
 * @param seen      by the number of the post before the space; what is not there is full
 * @param leftOut  what posts are left out for, in the words of the person, gap by gap
 */
export function asSeen(
  hardware: CountedHardware,
  counted: CountedPieces,
  seen: ReadonlyMap<number, SeenSpace>,
  leftOut: (gap: number) => string,
): AsSeen {
  const { posts: base, postOneAtInches: zero } = countedLayout(hardware, counted)
  const at = base.map(({ alongInches }) => alongInches)
  const isOpen = (i: number): boolean => seen.get(i) === 'open'
  const posts = at.flatMap((along, i) => {
    const parts = { half: 2, quarter: 4, full: 1, open: 1 }[seen.get(i + 1) ?? 'full']
    const apart = ((at[i + 1] ?? along) - along) / parts
    const within = Array.from({ length: parts - 1 }, (_, k) => along + (k + 1) * apart)
    return [...(isOpen(i) ? [] : [along]), ...within]
  })
  const reduced = [...seen].flatMap(([number, way]): ReducedPart[] =>
    way === 'half' || way === 'quarter'
      ? [{ fromInches: zero + at[number - 1]!, toInches: zero + at[number]!, spacing: way, nested: false }]
      : [],
  )
  const gaps = at.flatMap((along, i) => (isOpen(i) && !isOpen(i - 1) ? [{ i, along }] : []))
  const obstructions = gaps.map(({ i, along }, k): Obstruction => {
    const last = at.findIndex((_, after) => after >= i && !isOpen(after + 1))
    return { name: leftOut(k + 1), fromInches: zero + along - 1, toInches: zero + at[last]! + 1 }
  })
  return { posts, reduced: joined(reduced), obstructions }
}

/** Neighbours of one spacing are one part. */
function joined(parts: readonly ReducedPart[]): readonly ReducedPart[] {
  const whole: ReducedPart[] = []
  for (const part of parts.toSorted((a, b) => a.fromInches - b.fromInches)) {
    const last = whole.at(-1)
    if (last?.toInches === part.fromInches && last.spacing === part.spacing)
      whole[whole.length - 1] = { ...last, toInches: part.toInches }
    else whole.push(part)
  }
  return whole
}
