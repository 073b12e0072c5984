import type { AsBuilt } from '../drill/as-built.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { toMetres } from '../units/exact-length.ts'
import { inches } from '../units/quantity.ts'
import { kindOf } from '../units/quantity-kinds.ts'
import { type Seen, type Standing, standingAsAsked } from './standing.ts'

/** The run of a drill as it really stands, faults and all. */
export function standingAsBuilt(model: RunModel, built: AsBuilt, requirements: readonly Requirement[]): Standing {
  const asked = standingAsAsked(model)
  const right = new Set(
    requirements.flatMap(({ id, look }) =>
      look.kind === 'choose' ? look.choices.filter((one) => one.right).map((one) => `${id} ${one.id}`) : [],
    ),
  )
  return {
    posts: built.posts.map(({ id, along, away, railHeight, stubHeight }, i) => ({
      id,
      along: toMetres(along),
      away: toMetres(away),
      // Where no height is asked of a post, none was built.
      top: railHeight === 0 ? asked.posts[i]!.top : toMetres(railHeight),
      stub: stubHeight === null ? asked.posts[i]!.stub : toMetres(stubHeight),
    })),
    panels: built.panels.map(({ id, inches: length, bow }) => ({ id, length: inches(length), bow: toMetres(bow) })),
    seen: (requirement): Seen | null => {
      const state = built.states.get(requirement)
      if (state?.kind === 'choice')
        return { kind: 'choice', choice: state.choice, right: right.has(`${requirement} ${state.choice}`) }
      if (state?.kind === 'measured' && kindOf(state.unit) === 'length')
        return { kind: 'length', length: toMetres(state.value) }
      return null
    },
  }
}
