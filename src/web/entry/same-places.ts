import { contentOf } from '../../core/hardware/sheet-text.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'

/**
 * The requirements that one answer can be given to together with this one: of the same topic at places of the same
 * kind, with the same limits or choices and the same words, all or none of which may be set aside. In the order of their numbers, this one among them.
 */
export function samePlaces(requirement: Requirement, requirements: readonly Requirement[]): readonly Requirement[] {
  if (requirement.place.number === 0) return [requirement]
  const asked = askedOf(requirement)
  return requirements
    .filter(
      (one) => one.topic === requirement.topic && one.place.kind === requirement.place.kind && askedOf(one) === asked,
    )
    .sort((a, b) => a.place.number - b.place.number)
}

const askedOf = (one: Requirement): string => contentOf([one.must, lookAsked(one), one.maySetAside])

/** What a look asks for, less the readings it may be computed from, which are others at every place. */
const lookAsked = ({ look }: Requirement): unknown => (look.kind === 'measure' ? look.limits : look)

/** Those of `places` from number `from` to number `to`, whichever is the larger. */
export function placesBetween(places: readonly Requirement[], from: number, to: number): readonly Requirement[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)]
  return places.filter(({ place }) => place.number >= low && place.number <= high)
}
