import type { SplicePosition } from '../hardware/hardware-sheet.ts'
import type { LayoutPanel, LayoutPost, LayoutSplice } from '../layout/layout.ts'
import { endSheetOf, type RunModel } from './run-model.ts'

/**
 * What the sheets ask for where a layout is as counted, and what the count says of it. In a lawful layout every piece is
 * what it has to be, and no count says anything.
 */
export interface Wanted<T> {
  readonly wanted: T
  /** What stands by the count; null where it does not say, or where nothing was counted. */
  readonly counted: T | null
}

/** The distance between two neighbouring posts, inches. */
export function wantedSpace(model: RunModel, before: LayoutPost, after: LayoutPost): Wanted<number> {
  const apart = after.alongInches - before.alongInches
  if (model.layout.asCounted === undefined) return { wanted: apart, counted: null }
  const wanted = spaceOfUnit(model, before, after) ?? spaceOfRun(model, apart)
  return { wanted, counted: typeof model.counted?.posts === 'object' ? apart : null }
}

/** Between a post of an end unit and the next post inward, by the unit's sheet. */
function spaceOfUnit(model: RunModel, before: LayoutPost, after: LayoutPost): number | null {
  const sheet = before.unit === after.unit ? endSheetOf(model, before.unit) : null
  if (sheet === null || before.ownNumber === null || after.ownNumber === null) return null
  const outer = Math.min(before.ownNumber, after.ownNumber)
  return sheet.posts[outer]!.along - sheet.posts[outer - 1]!.along
}

/** The spacing of the system that the posts come nearest to; never more than the full one. */
function spaceOfRun({ system: { spacings } }: RunModel, apart: number): number {
  const [full, half, quarter] = [spacings.full.inches, spacings.half.inches, spacings.quarter.inches]
  if (apart > (full + half) / 2) return full
  return apart > (half + quarter) / 2 ? half : quarter
}

/** The length of a panel, inches. */
export function wantedLength(model: RunModel, panel: LayoutPanel): Wanted<number> {
  const { inches } = panel
  if (model.layout.asCounted === undefined) return { wanted: inches, counted: null }
  const lengths = lawfulLengths(model, panel)
  // Where two are as near, a shorter one at the first end and a longer one at the second leave the run as long as it is.
  const tie = panel.unit === 'second' ? -1 : 1
  const [nearest = inches] = lengths.toSorted((a, b) => Math.abs(a - inches) - Math.abs(b - inches) || tie * (a - b))
  return { wanted: nearest, counted: inches }
}

function lawfulLengths(model: RunModel, { unit, ownNumber, number }: LayoutPanel): readonly number[] {
  const sheet = endSheetOf(model, unit)
  if (sheet !== null && ownNumber !== null) {
    const own = sheet.panels.own[ownNumber - 1]
    return (own === undefined ? sheet.panels.adapters : [own]).map(({ inches }) => inches)
  }
  const { standard, converting, endOnly } = model.system.panels
  const { panels } = model.layout
  const isEnd = [number - 2, number].some((i) => (panels[i]?.unit ?? 'none') !== 'run')
  return [...standard, ...converting, ...(isEnd ? endOnly : [])].map(({ inches }) => inches)
}

/** Where a splice lies; between posts, but not midway, it is elsewhere. */
export function wantedPosition(
  model: RunModel,
  splice: LayoutSplice,
): Wanted<SplicePosition | 'elsewhere'> & {
  readonly wanted: SplicePosition
} {
  const { position, unit, number } = splice
  const { asCounted, panels } = model.layout
  if (asCounted === undefined) return { wanted: position, counted: null }
  const sheet = endSheetOf(model, unit)
  const inward = unit === 'first' ? panels.slice(0, number) : panels.slice(number)
  const wanted = sheet === null ? model.system.splice.position : positionInUnit(inward.length, sheet)
  return { wanted, counted: asCounted === 'posts placed' ? positionAmong(model, splice.alongInches) : null }
}

/** Where a unit's sheet puts the splice after its nth panel, counted from its outermost. */
function positionInUnit(n: number, { panels, posts }: NonNullable<ReturnType<typeof endSheetOf>>): SplicePosition {
  const at = panels.own.slice(0, n).reduce((sum, { inches }) => sum + inches, 0)
  return posts.some(({ along }) => along === at) ? 'post' : 'midspan'
}

/** Null where the posts beside it do not stand as they should: where the splice belongs, nobody can see by them. */
function positionAmong(model: RunModel, at: number): SplicePosition | 'elsewhere' | null {
  const { posts } = model.layout
  const i = posts.findIndex(({ alongInches }) => alongInches >= at)
  const [before, after] = [posts[i - 1], posts[i]]
  if (after?.alongInches === at) return 'post'
  if (before === undefined || after === undefined) return null
  if (wantedSpace(model, before, after).wanted !== after.alongInches - before.alongInches) return null
  return at - before.alongInches === after.alongInches - at ? 'midspan' : 'elsewhere'
}
