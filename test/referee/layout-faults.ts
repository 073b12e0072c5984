import type { LongitudinalSheet } from '../../src/core/hardware/hardware-sheet.ts'
import type { Layout, LayoutRequest, LayoutScore } from '../../src/core/layout/layout.ts'
import { dividedSpaces, insideDivided, partsFrom, reducedFaultsOf } from './reduced-rules.ts'
import {
  full,
  isOddAdapter,
  mostMoved,
  nestedRail,
  remainder,
  splicePhase,
  standsClear,
  stockCount,
} from './run-rules.ts'

/** The score counted again from the pieces of a layout. */
export function recount(layout: Layout, system: LongitudinalSheet): LayoutScore {
  const bought = layout.panels.filter(({ role }) => role !== 'own')
  return {
    changedPosts:
      layout.omitted.length + layout.posts.filter(({ state }) => state === 'moved' || state === 'special').length,
    oddPanels: bought.filter(({ inches }) => isOddAdapter(system, inches)).length,
    railInches: layout.panels.reduce((sum, { inches }) => sum + inches, 0),
    pieces: layout.panels.length,
  }
}

/** What a layout has that the rules forbid, looked at piece by piece. */
export function faultsOf(request: LayoutRequest, layout: Layout): readonly string[] {
  const { need, stock, system } = request
  const zero = layout.postOneAtInches
  const faults: string[] = []
  const driven = request.standing?.postsDriven ?? 0
  for (const post of layout.posts) {
    if (
      post.number <= driven ||
      post.state === 'standing' ||
      standsClear(zero + post.alongInches, request.obstructions)
    )
      continue
    faults.push(`post ${post.number} stands in an obstruction`)
  }
  if (need !== null && layout.countsFromInches !== null && zero + layout.countsFromInches > need.fromInches)
    faults.push('begin of need not covered')
  if (need !== null && layout.countsToInches !== null && zero + layout.countsToInches < need.toInches)
    faults.push('end of need not covered')
  const hung = request.standing?.panels ?? []
  if (hung.some((inches, i) => layout.panels[i]?.inches !== inches)) faults.push('what hangs is changed')
  if (request.standing !== null && zero !== request.standing.postOneAtInches) faults.push('post 1 is moved')
  const bought = layout.panels.filter(({ role }, i) => role !== 'own' && i >= hung.length)
  for (const inches of new Set(bought.map((panel) => panel.inches))) {
    const have = stockCount(stock, inches)
    if (have !== null && bought.filter((panel) => panel.inches === inches).length > have)
      faults.push(`more panels of ${inches} in than in stock`)
  }
  if (layout.posts.filter(({ state }) => state === 'moved').length > mostMoved(system))
    faults.push('too many posts moved')
  if (request.curb === 'present') {
    for (const { alongInches, rule } of layout.omitted) {
      const nested = nestedRail(system.omissions.find(({ kind }) => kind === rule)!, 'present')
      if (nested === 'not allowed') faults.push(`no gap of rule ${rule} is allowed at a curb`)
      const here = layout.panels.find(({ fromInches, toInches }) => fromInches <= alongInches && toInches > alongInches)
      if (nested !== 0 && !here!.nested) faults.push(`plain rail over the gap at ${alongInches} in, at a curb`)
    }
  }
  const lastPost = Math.max(...layout.posts.filter(({ unit }) => unit === 'first').map((post) => post.alongInches))
  const divided = dividedSpaces(system, partsFrom(request, zero), lastPost)
  faults.push(...reducedFaultsOf(request, layout, divided))
  const ownSplices = layout.panels.filter(({ unit }, i) => unit === 'run' && layout.panels[i - 1]?.unit === 'run')
  for (const { fromInches } of ownSplices) {
    if (remainder(fromInches - lastPost, full) !== splicePhase(system) && !insideDivided(divided, fromInches))
      faults.push(`splice misplaced at ${fromInches} in`)
    if (layout.omitted.some(({ alongInches }) => alongInches === fromInches))
      faults.push(`splice on a post left out at ${fromInches} in`)
  }
  return faults
}
