import type { RunModel } from '../requirements/run-model.ts'
import { exactLength, type Nanometres } from '../units/exact-length.ts'
import type { AsBuilt, PostAsBuilt, StateAsBuilt } from './as-built.ts'

/** One thing that is built otherwise. */
export type Change =
  | {
      readonly kind: 'height'
      readonly post: string
      readonly of: 'railHeight' | 'stubHeight'
      readonly to: Nanometres
    }
  /** Posts from one to another, by their ids, moved along the rail; positive downstream. */
  | { readonly kind: 'posts along'; readonly from: string; readonly to: string; readonly by: Nanometres }
  /** The end post moved, and with it every post of its unit in proportion, so that the rail stays straight. */
  | { readonly kind: 'end away'; readonly post: string; readonly by: Nanometres }
  | { readonly kind: 'bow'; readonly panel: string; readonly to: Nanometres }
  | { readonly kind: 'panel'; readonly panel: string; readonly inches: number }
  | { readonly kind: 'state'; readonly of: string; readonly to: StateAsBuilt }

/** The run with this built otherwise, and all that hangs on it: what is not named here stays. */
export function withChange(built: AsBuilt, change: Change, model: RunModel): AsBuilt {
  switch (change.kind) {
    case 'height':
      return withPosts(built, (post) => (post.id === change.post ? { ...post, [change.of]: change.to } : post))
    case 'posts along': {
      const [from, to] = [change.from, change.to].map((id) => built.posts.findIndex((post) => post.id === id))
      return withPosts(built, (post, i) => (i >= from! && i <= to! ? { ...post, along: post.along + change.by } : post))
    }
    case 'end away': {
      const share = flareShares(built, model, change.post)
      return withPosts(built, (post, i) => ({ ...post, away: post.away + Math.round(change.by * share[i]!) }))
    }
    case 'bow':
      return withBow(built, change.panel, change.to, model)
    case 'panel':
      return {
        ...built,
        panels: built.panels.map((panel) => (panel.id === change.panel ? { ...panel, inches: change.inches } : panel)),
      }
    case 'state':
      return { ...built, states: new Map([...built.states, [change.of, change.to]]) }
    default:
      return change satisfies never
  }
}

const withPosts = (built: AsBuilt, of: (post: PostAsBuilt, i: number) => PostAsBuilt): AsBuilt => ({
  ...built,
  posts: built.posts.map(of),
})

/** Of what the end post is moved by, each post's part: as much as it has of the flare, and nothing beyond the unit's posts. */
function flareShares(built: AsBuilt, { layout }: RunModel, end: string): readonly number[] {
  const { unit } = layout.posts.find(({ id }) => id === end)!
  const outermost = built.posts.find(({ id }) => id === end)!.away
  return layout.posts.map((post, i) => {
    if (post.unit !== unit) return 0
    return outermost === 0 ? Number(post.id === end) : built.posts[i]!.away / outermost
  })
}

/**
 * A bowed panel carries its posts with it: an arc so flat that it is a parabola, nothing at the ends of the panel and `to` in
 * its middle.
 */
function withBow(built: AsBuilt, panel: string, to: Nanometres, { layout }: RunModel): AsBuilt {
  const i = layout.panels.findIndex(({ id }) => id === panel)
  const { fromInches, toInches } = layout.panels[i]!
  const by = to - built.panels[i]!.bow
  const [from, until] = [fromInches, toInches].map((one) => exactLength(one, 'in'))
  const moved = withPosts(built, (post) => {
    const t = (post.along - from!) / (until! - from!)
    return t > 0 && t < 1 ? { ...post, away: post.away + Math.round(4 * t * (1 - t) * by) } : post
  })
  return { ...moved, panels: built.panels.map((one) => (one.id === panel ? { ...one, bow: to } : one)) }
}
