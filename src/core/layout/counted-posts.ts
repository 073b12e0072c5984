import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutPost, RunEnd, Unit } from './layout.ts'
import { type Sixteenths, sixteenths } from './sixteenths.ts'

/** The hardware of a run that was counted, as far as it is known. */
export interface CountedHardware {
  readonly system: LongitudinalSheet
  readonly first: RunEnd
  readonly second: RunEnd
}

/** Posts in order, measured from where the rail begins. */
export interface PlacedPosts {
  readonly posts: readonly PlacedPost[]
  /** Whether they stand where they are put: they were measured, or their number comes out at the spacings of the sheets. */
  readonly arePlaced: boolean
}

type PlacedPost = Omit<LayoutPost, 'id' | 'number' | 'alongInches'> & { readonly at: Sixteenths }

/** The posts that were counted or measured, each with the part of the run that it belongs to. */
export function countedPosts(
  hardware: CountedHardware,
  counted: number | readonly number[],
  rail: Sixteenths,
): PlacedPosts {
  return typeof counted === 'number' ? byNumber(hardware, counted, rail) : measured(hardware, counted, rail)
}

/** Where the posts of an end stand by its sheet, from its own origin inward; of an unknown one its posts at full spacing. */
function postsOfEnd(end: RunEnd, full: Sixteenths): readonly Sixteenths[] {
  if (end.kind === 'unknown') return Array.from({ length: end.posts }, (_, i) => i * full)
  return end.kind === 'unit' ? end.sheet.posts.map(({ along }) => sixteenths(along)) : []
}

/** At full spacing between the ends where their number comes out so; else spread over the rail, nobody knowing where. */
function byNumber(hardware: CountedHardware, count: number, rail: Sixteenths): PlacedPosts {
  const { system, first, second } = hardware
  const full = sixteenths(system.spacings.full.inches)
  const atFirst = postsOfEnd(first, full).slice(0, count)
  const atSecond = postsOfEnd(second, full)
    .slice(0, count - atFirst.length)
    .map((at) => rail - at)
    .reverse()
  const between = count - atFirst.length - atSecond.length
  // Where an end has no post of its own, as where nobody looked, posts go on as far as the rail, or as they were counted.
  const beyond = (length: Sixteenths): Sixteenths => Math.max(between + 1, Math.ceil(length / full), 1) * full
  const from = atFirst.at(-1) ?? (atSecond[0] ?? 0) - beyond(atSecond[0] ?? 0)
  const to = atSecond[0] ?? from + beyond(rail - from)
  const isWhole = to - from === (between + 1) * full
  const inRun = Array.from({ length: Math.max(0, between) }, (_, i) => from + (i + 1) * full)
  const places = isWhole ? [...atFirst, ...inRun, ...atSecond] : spread(count, rail)
  const units = [
    ...atFirst.map(() => 'first' as const),
    ...inRun.map(() => 'run' as const),
    ...atSecond.map(() => 'second' as const),
  ]
  return {
    posts: places.map((at, i) => postAt(hardware, at, units[i]!, ownNumber(units[i]!, i + 1, count))),
    arePlaced: isWhole,
  }
}

const ownNumber = (unit: Unit, number: number, count: number): number | null =>
  unit === 'first' ? number : unit === 'second' ? count - number + 1 : null

const spread = (count: number, rail: Sixteenths): readonly Sixteenths[] =>
  Array.from({ length: count }, (_, i) => Math.round((i * rail) / (count - 1)))

/** Each post of an end's sheet is the measured one nearest to it, within half a space; what is left belongs to the run. */
function measured(hardware: CountedHardware, along: readonly number[], rail: Sixteenths): PlacedPosts {
  const full = sixteenths(hardware.system.spacings.full.inches)
  const zero = postsOfEnd(hardware.first, full)[0] ?? 0
  const places = along.map((inches) => sixteenths(inches) + zero)
  const owners = new Map<number, { readonly unit: 'first' | 'second'; readonly own: number }>()
  const claim = (unit: 'first' | 'second', wanted: readonly Sixteenths[]): void => {
    for (const [own, at] of wanted.entries()) {
      const near = nearest(places, at, full / 2, (i) => owners.has(i))
      if (near !== null) owners.set(near, { unit, own: own + 1 })
    }
  }
  claim('first', postsOfEnd(hardware.first, full))
  claim(
    'second',
    postsOfEnd(hardware.second, full).map((at) => rail - at),
  )
  return {
    posts: places.map((at, i) => postAt(hardware, at, owners.get(i)?.unit ?? 'run', owners.get(i)?.own ?? null)),
    arePlaced: true,
  }
}

function nearest(
  places: readonly Sixteenths[],
  wanted: Sixteenths,
  most: Sixteenths,
  isTaken: (i: number) => boolean,
): number | null {
  let best: number | null = null
  for (const [i, at] of places.entries()) {
    const far = Math.abs(at - wanted)
    if (!isTaken(i) && far < most && (best === null || far < Math.abs(places[best]! - wanted))) best = i
  }
  return best
}

function postAt(
  { system, first, second }: CountedHardware,
  at: Sixteenths,
  unit: Unit,
  own: number | null,
): PlacedPost {
  const end = unit === 'first' ? first : unit === 'second' ? second : null
  if (end?.kind === 'unknown')
    return { at, kind: 'standing post', block: true, unit, ownNumber: null, state: 'standing' }
  const post = end?.kind === 'unit' ? end.sheet.posts.find(({ number }) => number === own) : undefined
  return post === undefined
    ? { at, kind: system.post.kind, block: system.post.block, unit: 'run', ownNumber: null, state: 'regular' }
    : { at, kind: post.kind, block: post.block, unit, ownNumber: own, state: 'regular' }
}
