import type { LayoutPanel, LayoutPost, OmittedPost } from '../core/layout/layout.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { groupBy } from './group-by.ts'
import { alongText, numberedText } from './places-text.ts'

/** The few places where the run is not what a crew would build by habit, in sentences, from its first end. */
export function crewDepartures(run: RunFile, model: RunModel): readonly string[] {
  return [
    ...standingParts(model),
    ...leftOut(run, model),
    ...changedPosts(model),
    ...otherSpaces(run, model),
    ...oddPanels(run, model),
    ...nestedRail(model),
  ]
}

function standingParts({ layout, first, second }: RunModel): string[] {
  const ends = [
    ['first', first],
    ['second', second],
  ] as const
  const driven = layout.posts.filter(({ state }) => state === 'standing')
  const hung = layout.panels.filter(({ role }) => role === 'hung')
  const numbers = (pieces: readonly { readonly number: number }[]): number[] => pieces.map(({ number }) => number)
  return [
    ...ends.flatMap(([name, end]) =>
      end.kind === 'standing splice'
        ? [
            `The ${name} end goes on from a splice that stands, ${end.position === 'post' ? 'at a post' : 'at midspan'}.`,
          ]
        : [],
    ),
    ...(driven.length === 0 ? [] : [`Already in the ground: ${numberedText('post', 'posts', numbers(driven))}.`]),
    ...(hung.length === 0 ? [] : [`Already hung: ${numberedText('panel', 'panels', numbers(hung))}.`]),
  ]
}

function leftOut(run: RunFile, { layout }: RunModel): string[] {
  return layout.omitted.map(({ alongInches, obstruction, rule }) => {
    const before = layout.posts.findLast((post) => post.alongInches < alongInches)
    const after = layout.posts.find((post) => post.alongInches > alongInches)
    const gap =
      before === undefined || after === undefined
        ? ''
        : ` Posts ${before.number} and ${after.number} stand ${alongText(run, after.alongInches - before.alongInches)} apart.`
    return `NO POST at ${alongText(run, alongInches)}, because of ${obstruction} (rule for a ${rule} gap).${gap}`
  })
}

function changedPosts({ layout }: RunModel): string[] {
  return layout.posts.flatMap(({ number, state, kind }) =>
    state === 'moved'
      ? [`Post ${number} is moved along the rail: stake it where the table says.`]
      : state === 'special'
        ? [`Post ${number} is a ${kind}.`]
        : [],
  )
}

/** Spaces of other than the full spacing; a gap that a post was left out of stands above. */
function otherSpaces(run: RunFile, { layout, system }: RunModel): string[] {
  const full = system.spacings.full.inches
  let stretch = 0
  let last = full
  const spaces = layout.posts.slice(1).flatMap((to, i) => {
    const from = layout.posts[i]!
    const apart = isGap(from, to, layout.omitted) ? full : to.alongInches - from.alongInches
    if (apart !== last) stretch++
    last = apart
    return apart === full ? [] : [{ from, to, apart, stretch }]
  })
  return groupBy(spaces, (one) => String(one.stretch)).map((group) => {
    const [{ from, apart }] = group
    const { to } = group.at(-1)!
    const posts = group.length === 1 ? `Posts ${from.number} and ${to.number}` : `Posts ${from.number} to ${to.number}`
    return `${posts} stand ${alongText(run, apart)} apart instead of ${alongText(run, full)}.`
  })
}

const isGap = (from: LayoutPost, to: LayoutPost, omitted: readonly OmittedPost[]): boolean =>
  omitted.some(({ alongInches }) => alongInches > from.alongInches && alongInches < to.alongInches)

function oddPanels(run: RunFile, { layout }: RunModel): string[] {
  return layout.panels.flatMap((panel) => {
    const why = oddWords(panel)
    return why === null ? [] : [`Panel ${panel.number} is ${alongText(run, panel.inches)} long: ${why}.`]
  })
}

function oddWords({ role, unit }: LayoutPanel): string | null {
  switch (role) {
    case 'adapter':
      return `it joins the ${unit} end to the run`
    case 'converting':
      return 'it shifts the splices by half a post space'
    case 'end only':
      return 'a length that may only hang at an end of the run'
    case 'own':
    case 'standard':
    case 'hung':
      return null
    default:
      return role satisfies never
  }
}

function nestedRail({ layout }: RunModel): string[] {
  const nested = layout.panels.filter((panel) => panel.nested).map(({ number }) => number)
  return nested.length === 0 ? [] : [`NESTED, two layers of rail: ${numberedText('panel', 'panels', nested)}.`]
}
