import type { Layout } from '../../core/layout/layout.ts'
import { type Draft, itemsAt, withValue } from '../form/draft.ts'
import { words } from './words.ts'

/** A draft in which all that lies before a place stands, and what is to be said of that. */
export interface Anew {
  readonly draft: Draft
  readonly said: string
}

/** How far the reach of an obstruction is known at least, inches to either side: the step of all lengths along a rail. */
const leastReach = 1 / 16

/**
 * The draft with what stands from the first end on up to a post or panel of the layout; null where that has no such
 * piece. Of a post that could not go there the one before it is the last, and its place is an obstruction.
 */
export function anewDraft(draft: Draft, layout: Layout, from: string, isBlocked: boolean): Anew | null {
  const { posts, panels, omitted, postOneAtInches: origin } = layout
  const { edit } = words()
  const panel = panels.find(({ id }) => id === from)
  const post = posts.find(({ id }) => id === from)
  const reached = panel?.toInches ?? post?.alongInches
  if (reached === undefined) return null
  const stands = (hung: readonly unknown[], postsDriven: number): Draft => {
    const driven = posts.slice(0, postsDriven)
    return withValue(draft, 'standing', {
      ...{ postOneAt: origin, panels: hung, postsDriven },
      ...placesOf(
        'leftOut',
        omitted.filter(({ alongInches }) => alongInches < reached),
        origin,
      ),
      ...placesOf(
        'moved',
        driven.filter(({ state }) => state === 'moved'),
        origin,
      ),
      ...placesOf(
        'special',
        driven.filter(({ state }) => state === 'special'),
        origin,
      ),
    })
  }
  if (panel !== undefined) {
    const hung = panels.slice(0, panel.number).map(({ inches }) => inches)
    const driven = posts.filter(({ alongInches }) => alongInches <= panel.toInches).length
    return { draft: stands(hung, driven), said: edit.fromPanel(panel.number) }
  }
  if (post === undefined) return null
  const hung = itemsAt(draft, 'standing.panels')
  if (!isBlocked) return { draft: stands(hung, post.number), said: edit.fromPost(post.number) }
  const at = origin + post.alongInches
  const obstruction = { name: edit.blocked(post.number), from: at - leastReach, to: at + leastReach }
  const next = stands(hung, post.number - 1)
  return {
    draft: withValue(next, 'obstructions', [...itemsAt(next, 'obstructions'), obstruction]),
    said: edit.blockedPost(post.number),
  }
}

/** Where along the run something is as the plain spacing has it not, from its datum; nothing where there is none. */
const placesOf = (
  field: 'leftOut' | 'moved' | 'special',
  pieces: readonly { readonly alongInches: number }[],
  origin: number,
): object => (pieces.length === 0 ? {} : { [field]: pieces.map(({ alongInches }) => origin + alongInches) })
