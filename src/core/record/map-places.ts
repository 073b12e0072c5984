import { contentOf } from '../hardware/sheet-text.ts'
import type { Layout } from '../layout/layout.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { placesIn } from './places-in.ts'
import { placeIdsIn } from './version.ts'

/** The later version with its places named, and what became of those of the earlier one. */
export interface MappedPlaces {
  readonly layout: Layout
  /** Ids of both versions, of the earlier alone, and of the later alone, each from the first end on. */
  readonly kept: readonly string[]
  readonly gone: readonly string[]
  readonly added: readonly string[]
}

/**
 * `after` with the ids of the places that `before` has too; every other place gets one that the run never had.
 *
 * @param used  every id that a version of the run ever had
 * @param mark  of the later version: letters and digits that no other version of the run has
 */
export function mapPlaces(before: RunModel, after: RunModel, used: ReadonlySet<string>, mark: string): MappedPlaces {
  if (!/^[0-9a-z]+$/.test(mark)) throw new RangeError(`a mark is of letters and digits, got ${mark}`)
  const known = new Map([...placesIn(before)].map(([id, place]) => [place, id]))
  const places = placesIn(after)
  const nameOf = (id: string, fresh: string): string => {
    const same = known.get(places.get(id)!)
    if (same !== undefined) return same
    const named = `${fresh}~${mark}`
    if (used.has(named)) throw new RangeError(`the mark ${mark} was used before`)
    return named
  }
  const { posts, spaces, panels, splices, endIds } = after.layout
  const layout: Layout = {
    ...after.layout,
    posts: posts.map((post) => ({ ...post, id: nameOf(post.id, `post-${post.number}`) })),
    spaces: spaces.map((space) => ({ ...space, id: nameOf(space.id, `space-${space.number}`) })),
    panels: panels.map((panel) => ({ ...panel, id: nameOf(panel.id, `panel-${panel.number}`) })),
    splices: splices.map((splice) => ({ ...splice, id: nameOf(splice.id, `splice-${splice.number}`) })),
    endIds: { first: nameOf(endIds.first, 'first'), second: nameOf(endIds.second, 'second') },
  }
  const [old, now] = [placeIdsIn(before.layout), placeIdsIn(layout)]
  const [had, has] = [new Set(old), new Set(now)]
  return {
    layout,
    kept: old.filter((id) => has.has(id)),
    gone: old.filter((id) => !has.has(id)),
    added: now.filter((id) => !had.has(id)),
  }
}

/**
 * What can be read at places of both versions but is asked otherwise by the later one: other answers to choose from,
 * another sentence to confirm, another way to measure. Other limits, and another answer that is right, are the same
 * question. Distances along the rail are read from post 1, so that another post 1 asks all of them otherwise.
 */
export function askedOtherwise(
  before: { readonly model: RunModel; readonly requirements: readonly Requirement[] },
  after: { readonly model: RunModel; readonly requirements: readonly Requirement[] },
): readonly string[] {
  const now = new Map(after.requirements.map((requirement) => [requirement.id, questionOf(requirement)]))
  const changed = before.requirements.flatMap((requirement) => {
    const question = now.get(requirement.id)
    return question === undefined || question === questionOf(requirement) ? [] : [requirement.id]
  })
  const has = new Set(after.model.layout.posts.map(({ id }) => id))
  const [from, to] = [before, after].map(({ model }) => model.layout.posts[0]!.id)
  const along = before.model.layout.posts.flatMap(({ id }) => (from === to || !has.has(id) ? [] : [`${id}/along`]))
  return [...changed, ...along]
}

/** What somebody is asked; the same where the answer to the one answers the other. */
function questionOf({ look, must }: Requirement): string {
  switch (look.kind) {
    case 'measure':
      return JSON.stringify([look.kind, look.limits.measured])
    case 'choose':
      return contentOf([look.kind, look.choices.map(({ id, label }) => [id, label])])
    case 'confirm':
      return contentOf([look.kind, must])
    case 'record':
      // Of these alone something can be said, that one is set aside: of another check that says nothing.
      return look.rule.kind === 'site check' ? contentOf([look.rule.kind, look.rule.check]) : look.kind
  }
}
