import type { LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Layout, Obstructed } from '../../core/layout/layout.ts'
import { scoreOf } from '../../core/layout/score.ts'
import type { RunVersion } from '../../core/record/version.ts'
import type { LayoutShape } from './layout-shape.ts'

/** The layout as a file has it; numbers and sums, which follow from it, are left out. */
const layoutToShape = (layout: Layout): LayoutShape => ({
  postOneAt: layout.postOneAtInches,
  countsFrom: layout.countsFromInches,
  countsTo: layout.countsToInches,
  firstEnd: layout.endIds.first,
  secondEnd: layout.endIds.second,
  posts: layout.posts.map(({ id, alongInches, kind, block, unit, ownNumber, state }) => ({
    ...{ id, along: alongInches, kind, block, unit, ownNumber, state },
  })),
  spaces: layout.spaces.map(({ id }) => id),
  panels: layout.panels.map(({ id, fromInches, toInches, unit, role, ownNumber, nested }) => ({
    ...{ id, from: fromInches, to: toInches, unit, role, ownNumber, nested },
  })),
  splices: layout.splices.map(({ id, alongInches, position, unit }) => ({ id, at: alongInches, position, unit })),
  omitted: layout.omitted.map(({ alongInches, obstructions, rule }) => ({
    ...{ along: alongInches, obstruction: obstructedToShape(obstructions), rule },
  })),
  ...(layout.asCounted === undefined ? {} : { asCounted: layout.asCounted }),
})

type ObstructedShape = LayoutShape['omitted'][number]['obstruction']

/** One name stands as a text, as it did before a list could; what was written so is written so again. */
const obstructedToShape = (names: Obstructed): ObstructedShape => (names.length === 1 ? names[0]! : [...names])

const obstructedFromShape = (shape: ObstructedShape): Obstructed => (typeof shape === 'string' ? [shape] : shape)

/** The layout of a file whose parts do not contradict each other. */
export function layoutFromShape(shape: LayoutShape, system: LongitudinalSheet): Layout {
  const pieces = {
    posts: shape.posts.map(({ along, ...post }, i) => ({ ...post, number: i + 1, alongInches: along })),
    panels: shape.panels.map(({ from, to, ...panel }, i) => ({
      ...panel,
      ...{ number: i + 1, inches: to - from, fromInches: from, toInches: to },
    })),
    splices: shape.splices.map(({ at, ...splice }, i) => ({ ...splice, number: i + 1, alongInches: at })),
    omitted: shape.omitted.map(({ along, obstruction, rule }) => ({
      ...{ alongInches: along, obstructions: obstructedFromShape(obstruction), rule },
    })),
    postOneAtInches: shape.postOneAt,
    countsFromInches: shape.countsFrom,
    countsToInches: shape.countsTo,
  }
  return {
    ...pieces,
    spaces: shape.spaces.map((id, i) => {
      const [before, after] = [pieces.posts[i]!, pieces.posts[i + 1]!]
      return { id, number: i + 1, fromInches: before.alongInches, toInches: after.alongInches }
    }),
    endIds: { first: shape.firstEnd, second: shape.secondEnd },
    score: scoreOf(pieces, system),
    ...(shape.asCounted === undefined ? {} : { asCounted: shape.asCounted }),
  }
}

/** What a pinned run's file says beyond one that only asks. */
export const versionToShape = ({ id, earlier, layout }: RunVersion) => ({
  version: id,
  earlier,
  layout: layoutToShape(layout),
})
