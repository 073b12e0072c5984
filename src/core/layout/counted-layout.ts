import type { EndSheet } from '../hardware/hardware-sheet.ts'
import { type CountedHardware, countedPosts, type PlacedPosts } from './counted-posts.ts'
import type { CountedPieces, Layout, LayoutPanel, LayoutPost, LayoutSplice, RunEnd, Unit } from './layout.ts'
import { withFirstIds } from './place-ids.ts'
import { scoreOf } from './score.ts'
import { inchesOf, type Sixteenths, sixteenths } from './sixteenths.ts'

/** The run as it stands, lawful or not: the pieces that were counted, each with the part of the run that it belongs to. */
export function countedLayout(hardware: CountedHardware, counted: CountedPieces): Layout {
  const { system, first, second } = hardware
  const lengths = counted.panels.map(sixteenths)
  const rail = lengths.reduce((sum, length) => sum + length, 0)
  const placed = countedPosts(hardware, counted.posts, rail)
  const zero = placed.posts[0]!.at
  const posts = placed.posts.map(({ at, ...post }, i) => ({ ...post, number: i + 1, alongInches: inchesOf(at - zero) }))
  const panels = panelsOf(hardware, lengths, zero)
  const pieces = {
    posts,
    panels,
    splices: splicesOf(panels, posts),
    omitted: [],
    postOneAtInches: (first.atInches ?? 0) + inchesOf(zero),
    countsFromInches: first.kind === 'unit' ? first.sheet.lengthOfNeedFrom.inches - inchesOf(zero) : null,
    countsToInches: second.kind === 'unit' ? inchesOf(rail - zero) - second.sheet.lengthOfNeedFrom.inches : null,
  }
  return { ...withFirstIds({ ...pieces, score: scoreOf(pieces, system) }), asCounted: knownAs(placed) }
}

const knownAs = ({ arePlaced }: PlacedPosts): Layout['asCounted'] => (arePlaced ? 'posts placed' : 'posts only counted')

/** How many panels an end has of its own, the adapter with them. */
const panelsOfEnd = (end: RunEnd): number => {
  if (end.kind === 'unknown') return end.panels
  return end.kind === 'unit' ? panelsOfUnit(end.sheet) : 0
}

/** The panels that a unit has: its own, and one adapter where it takes one. */
export const panelsOfUnit = ({ panels }: EndSheet): number => panels.own.length + Math.min(1, panels.adapters.length)

function panelsOf({ first, second }: CountedHardware, lengths: readonly Sixteenths[], zero: Sixteenths) {
  const atFirst = Math.min(panelsOfEnd(first), lengths.length)
  const atSecond = Math.min(panelsOfEnd(second), lengths.length - atFirst)
  let at = 0
  return lengths.map((length, i): Omit<LayoutPanel, 'id'> => {
    const from = at
    at += length
    const unit: Unit = i < atFirst ? 'first' : i >= lengths.length - atSecond ? 'second' : 'run'
    const ownNumber = unit === 'first' ? i + 1 : unit === 'second' ? lengths.length - i : null
    return {
      number: i + 1,
      ...{ inches: inchesOf(length), fromInches: inchesOf(from - zero), toInches: inchesOf(at - zero) },
      ...roleIn(unit === 'first' ? first : second, unit === 'run' ? null : ownNumber),
      ...{ unit, nested: false },
    }
  })
}

/** What hangs in the run hangs; a panel of an end is one of its sheet. */
function roleIn(end: RunEnd, ownNumber: number | null): Pick<LayoutPanel, 'role' | 'ownNumber'> {
  if (ownNumber === null || end.kind !== 'unit') return { role: 'hung', ownNumber: null }
  return { role: ownNumber > end.sheet.panels.own.length ? 'adapter' : 'own', ownNumber }
}

function splicesOf(
  panels: readonly Omit<LayoutPanel, 'id'>[],
  posts: readonly Omit<LayoutPost, 'id'>[],
): Omit<LayoutSplice, 'id'>[] {
  const standing = new Set(posts.map(({ alongInches }) => alongInches))
  return panels.slice(1).map(({ fromInches, unit: after }, i) => ({
    number: i + 1,
    alongInches: fromInches,
    position: standing.has(fromInches) ? 'post' : 'midspan',
    unit: panels[i]!.unit === after ? after : 'run',
  }))
}
