import { feetInchesText } from '../core/hardware/dimension-text.ts'
import { gapsThatDependOnCurb } from '../core/layout/gaps-at-curb.ts'
import type { Layout, LayoutRequest, RunEnd } from '../core/layout/layout.ts'

/** Why the layout is as it is, in plain sentences. */
export function explainLayout(layout: Layout, request: LayoutRequest): readonly string[] {
  const { score } = layout
  return [
    ...joined(layout, 'first', request.first),
    ...joined(layout, 'second', request.second),
    ...covered(layout, request),
    ...layout.omitted.map(
      ({ alongInches, obstruction, rule }) =>
        `post at ${feetInchesText(alongInches)} left out for ${obstruction}, by the sheet's rule for a ${rule} gap`,
    ),
    ...onCurbCondition(layout, request),
    ...layout.posts
      .filter(({ state }) => state === 'moved' || state === 'special')
      .map(
        ({ number, state, kind }) => `post ${number} is ${state === 'moved' ? 'moved along the rail' : `a ${kind}`}`,
      ),
    `${count(score.changedPosts, 'post')} left out, moved or replaced; ${count(score.oddPanels, 'panel')} of other than standard length; ${feetInchesText(score.railInches)} of rail in ${count(score.pieces, 'piece')}`,
  ]
}

const count = (n: number, thing: string): string => `${n} ${thing}${n === 1 ? '' : 's'}`

function joined(layout: Layout, unit: 'first' | 'second', end: RunEnd): string[] {
  if (end.kind === 'standing splice') return [`the ${unit} end goes on from the standing splice`]
  const adapter = layout.panels.find((panel) => panel.unit === unit && panel.role === 'adapter')
  const how =
    adapter === undefined
      ? 'joins the run without an adapter panel'
      : `joins the run by a ${feetInchesText(adapter.inches)} panel`
  return [`${end.sheet.name} ${how}`]
}

/** What a gap would need if a curb stood before the rail, where nobody said whether one does. */
function onCurbCondition(layout: Layout, { system, curb }: LayoutRequest): string[] {
  if (curb !== undefined) return []
  return gapsThatDependOnCurb(layout, system).map(({ obstruction, doubled }) =>
    doubled === null
      ? `${obstruction}: laid out as without a curb, the run does not say whether one stands before the rail; at a curb the sheet does not allow this gap`
      : `${obstruction}: laid out as without a curb, the run does not say whether one stands before the rail; at a curb ${feetInchesText(doubled)} of rail has to be doubled`,
  )
}

function covered(layout: Layout, request: LayoutRequest): string[] {
  const { need } = request
  if (need === null) return []
  const zero = layout.postOneAtInches
  const spare: string[] = []
  if (layout.countsFromInches !== null)
    spare.push(`${feetInchesText(need.fromInches - zero - layout.countsFromInches)} to spare at its begin`)
  if (layout.countsToInches !== null)
    spare.push(`${feetInchesText(layout.countsToInches + zero - need.toInches)} at its end`)
  return [`the rail that counts covers the need${spare.length > 0 ? ` with ${spare.join(' and ')}` : ''}`]
}
