import { nameOf } from '../core/hardware/sheet-text.ts'
import { gapsThatDependOnCurb } from '../core/layout/gaps-at-curb.ts'
import { kindOfPost } from '../core/layout/kind-of-post.ts'
import type { Layout, LayoutRequest, RunEnd } from '../core/layout/layout.ts'
import type { LayoutReason } from '../core/layout/layout-saying.ts'
import { sheetOf } from '../core/layout/sheet-of.ts'

/** Why the layout is as it is. */
export function explainLayout(layout: Layout, request: LayoutRequest): readonly LayoutReason[] {
  const { changedPosts, oddPanels, railInches, pieces } = layout.score
  return [
    ...(layout.asCounted === undefined ? [] : [{ kind: 'as counted', known: layout.asCounted } as const]),
    joined(layout, 'first', request.first),
    joined(layout, 'second', request.second),
    ...covered(layout, request),
    ...layout.omitted.map((omitted): LayoutReason => ({ kind: 'post left out', ...omitted })),
    ...keptClear(request),
    ...onCurbCondition(layout, request),
    ...changed(layout, request),
    { kind: 'pieces of run', changedPosts, oddPanels, railInches, pieces },
  ]
}

function joined(layout: Layout, unit: 'first' | 'second', end: RunEnd): LayoutReason {
  if (end.kind === 'standing splice') return { kind: 'goes on from standing splice', end: unit }
  if (end.kind === 'unknown') return { kind: 'end not known', end: unit, because: end.because }
  const adapter = layout.panels.find((panel) => panel.unit === unit && panel.role === 'adapter')
  return { kind: 'sheet joins run', sheet: nameOf(end.sheet), adapterInches: adapter?.inches ?? null }
}

const changed = ({ posts }: Layout, request: LayoutRequest): readonly LayoutReason[] =>
  posts.flatMap((post): LayoutReason[] => {
    if (post.state === 'moved') return [{ kind: 'post moved along rail', post: post.number }]
    if (post.state !== 'special') return []
    return [{ kind: 'post of special kind', post: post.number, of: kindOfPost(post, sheetOf(request, post.unit)) }]
  })

const keptClear = ({ obstructions, postClearance }: LayoutRequest): readonly LayoutReason[] =>
  postClearance === undefined || obstructions.length === 0 ? [] : [{ kind: 'posts keep clear', ...postClearance }]

/** What a gap would need if a curb stood before the rail, where nobody said whether one does. */
function onCurbCondition(layout: Layout, { system, curb }: LayoutRequest): readonly LayoutReason[] {
  if (curb !== undefined) return []
  return gapsThatDependOnCurb(layout, system).map(({ obstructions, doubled }) => ({
    kind: 'gap as without curb',
    ...{ obstructions, doubledInches: doubled },
  }))
}

function covered(layout: Layout, { need }: LayoutRequest): readonly LayoutReason[] {
  if (need === null) return []
  const { postOneAtInches: zero, countsFromInches: from, countsToInches: to } = layout
  return [
    {
      kind: 'need covered',
      atBegin: from === null ? null : need.fromInches - zero - from,
      atEnd: to === null ? null : to + zero - need.toInches,
    },
  ]
}
