import type { LayoutPanel, LayoutPost, OmittedPost } from '../core/layout/layout.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import { theirNames } from '../words/their-names.ts'
import { groupBy } from './group-by.ts'
import { alongText, numberedText } from './places-text.ts'
import { postKind } from './post-kind.ts'
import { type DocumentWords, documentWords } from './words/document-words.ts'

/** The few places where the run is not what a crew would build by habit, in sentences, from its first end. */
export function crewDepartures(run: RunFile, model: RunModel, print: Print): readonly string[] {
  return [
    ...standingParts(model, print),
    ...leftOut(run, model, print),
    ...changedPosts(model, print),
    ...otherSpaces(run, model, print),
    ...oddPanels(run, model, print),
    ...nestedRail(model, print),
  ]
}

function standingParts({ layout, first, second }: RunModel, print: Print): string[] {
  const words = documentWords(print).crewSheet
  const ends = [
    ['first', first],
    ['second', second],
  ] as const
  const driven = layout.posts.filter(({ state }) => state === 'standing')
  const hung = layout.panels.filter(({ role }) => role === 'hung')
  const numbers = (pieces: readonly { readonly number: number }[]): number[] => pieces.map(({ number }) => number)
  return [
    ...ends.flatMap(([name, end]) => (end.kind === 'standing splice' ? [words.goesOn(name, end.position)] : [])),
    ...(driven.length === 0 ? [] : [words.driven(numberedText('post', numbers(driven), print))]),
    ...(hung.length === 0 ? [] : [words.alreadyHung(numberedText('panel', numbers(hung), print))]),
  ]
}

function leftOut(run: RunFile, { layout }: RunModel, print: Print): string[] {
  const words = documentWords(print).crewSheet
  return layout.omitted.map(({ alongInches, obstructions, rule }) => {
    const before = layout.posts.findLast((post) => post.alongInches < alongInches)
    const after = layout.posts.find((post) => post.alongInches > alongInches)
    const gap =
      before === undefined || after === undefined
        ? ''
        : ` ${words.gap(before.number, after.number, alongText(run, after.alongInches - before.alongInches))}`
    return `${words.noPost(alongText(run, alongInches), theirNames(obstructions, print), rule)}${gap}`
  })
}

function changedPosts(model: RunModel, print: Print): string[] {
  const words = documentWords(print).crewSheet
  return model.layout.posts.flatMap((post) =>
    post.state === 'moved'
      ? [words.movedPost(post.number)]
      : post.state === 'special'
        ? [words.specialPost(post.number, postKind(post, model, print))]
        : [],
  )
}

/** Spaces of other than the full spacing; a gap that a post was left out of stands above. */
function otherSpaces(run: RunFile, { layout, system }: RunModel, print: Print): string[] {
  const words = documentWords(print).crewSheet
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
  return groupBy(spaces, (one) => one.stretch).map((group) => {
    const [{ from, apart }] = group
    const { to } = group.at(-1)!
    return words.oddSpaces(from.number, to.number, group.length === 1, alongText(run, apart), alongText(run, full))
  })
}

const isGap = (from: LayoutPost, to: LayoutPost, omitted: readonly OmittedPost[]): boolean =>
  omitted.some(({ alongInches }) => alongInches > from.alongInches && alongInches < to.alongInches)

function oddPanels(run: RunFile, { layout }: RunModel, print: Print): string[] {
  const words = documentWords(print).crewSheet
  return layout.panels.flatMap((panel) => {
    const why = oddWords(panel, words.oddness)
    return why === null ? [] : [words.oddPanel(panel.number, alongText(run, panel.inches), why)]
  })
}

function oddWords({ role, unit }: LayoutPanel, words: DocumentWords['crewSheet']['oddness']): string | null {
  switch (role) {
    case 'adapter':
      return words.adapter(unit)
    case 'converting':
      return words.converting
    case 'end only':
      return words['end only']
    case 'own':
    case 'standard':
    case 'hung':
      return null
    default:
      return role satisfies never
  }
}

function nestedRail({ layout }: RunModel, print: Print): string[] {
  const nested = layout.panels.filter((panel) => panel.nested).map(({ number }) => number)
  return nested.length === 0 ? [] : [documentWords(print).crewSheet.nestedRail(numberedText('panel', nested, print))]
}
