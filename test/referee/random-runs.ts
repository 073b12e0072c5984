import type { EndSheet, LongitudinalSheet } from '../../src/core/hardware/hardware-sheet.ts'
import type { LayoutRequest, Obstruction, ReducedPart, RunEnd, StockPanel } from '../../src/core/layout/layout.ts'
import { shippedSheets } from '../../src/sheets/shipped-sheets.ts'
import { closingsOf, full, half } from './run-rules.ts'

/** Uniform on [0, 1) from a 32-bit seed, the same everywhere: Tommy Ettinger's mulberry32. */
export function mulberry32(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

export interface Dice {
  /** A multiple of `step` from `least` to `most`, both included. */
  readonly between: (least: number, most: number, step?: number) => number
  readonly oneOf: <T>(choices: readonly T[]) => T
  readonly chance: (probability: number) => boolean
}

export function dice(random: () => number): Dice {
  const between = (least: number, most: number, step = 1): number =>
    least + Math.floor(random() * (Math.floor((most - least) / step) + 1)) * step
  return {
    between,
    oneOf: (choices) => choices[between(0, choices.length - 1)]!,
    chance: (probability) => random() < probability,
  }
}

export const sheetOf = <T>(id: string): T => shippedSheets.find((sheet) => sheet.id === id) as T

interface Hardware {
  readonly system: LongitudinalSheet
  readonly terminals: readonly EndSheet[]
  readonly anchor: EndSheet
  readonly bridgeEnds: readonly EndSheet[]
}

const hardware: readonly Hardware[] = [
  {
    system: sheetOf('w-beam-midspan-31'),
    terminals: [sheetOf('flared-terminal-31'), sheetOf('flared-terminal-31'), sheetOf('tangent-terminal-31')],
    anchor: sheetOf('trailing-anchor-31'),
    bridgeEnds: [sheetOf('bridge-end-31')],
  },
  {
    system: sheetOf('w-beam-post-splice-27-3-4'),
    terminals: [sheetOf('flared-terminal-27-3-4')],
    anchor: sheetOf('trailing-anchor-27-3-4'),
    bridgeEnds: [],
  },
]

const sixteenth = 1 / 16

export type Fixed = 'first' | 'second' | 'both' | 'none'

/** A small run: need 100 to 800 in, up to three obstructions, often a short stock. */
export function randomRun(random: () => number, fixed: Fixed): LayoutRequest {
  const roll = dice(random)
  const { system, terminals, anchor, bridgeEnds } = roll.oneOf(hardware)
  const length = roll.between(100, 800)
  const unit = (sheet: EndSheet, atInches: number | null): RunEnd => ({ kind: 'unit', sheet, atInches })
  const splice = (atInches: number): RunEnd => ({
    kind: 'standing splice',
    atInches,
    position: roll.oneOf(['post', 'midspan'] as const),
  })
  const counts = (end: RunEnd): number => (end.kind === 'unit' ? end.sheet.lengthOfNeedFrom.inches : 0)

  const fixedFirst = fixed === 'first' || fixed === 'both'
  const first = fixedFirst
    ? roll.chance(0.6)
      ? splice(roll.between(-50, 50, sixteenth))
      : unit(roll.oneOf(terminals), roll.between(-50, 50, sixteenth))
    : unit(roll.oneOf(terminals), null)
  const fromInches = fixedFirst ? first.atInches! + counts(first) + roll.between(-10, 200) : roll.between(-50, 50)
  const toInches = fromInches + length
  const fixedSecond = (): RunEnd => {
    const sheet = roll.oneOf([null, null, ...bridgeEnds, ...bridgeEnds, anchor])
    const slack = roll.between(-10, 200, sixteenth)
    if (fixed === 'both') return meeting(roll, system, first, sheet, toInches + slack, splice, unit)
    return sheet === null ? splice(toInches + slack) : unit(sheet, toInches + slack + sheet.lengthOfNeedFrom.inches)
  }
  const second =
    fixed === 'second' || fixed === 'both' ? fixedSecond() : unit(roll.oneOf([...terminals, anchor, anchor]), null)
  return {
    system,
    first,
    second,
    need: fixed === 'both' && roll.chance(0.5) ? null : { fromInches, toInches },
    stock: roll.chance(0.5) ? null : randomStock(roll),
    obstructions: Array.from({ length: roll.between(0, 3) }, (_, i) =>
      randomObstruction(roll, i, fromInches, toInches, fixed === 'none' ? 1 : sixteenth),
    ),
    reduced: [],
    standing: null,
    mayExtendInches: roll.between(300, fixed === 'none' ? 450 : 600),
    curb: roll.oneOf([undefined, undefined, 'none', 'none', 'present'] as const),
  }
}

/** Both ends fixed: mostly where panels and posts of the two ends meet, else no run can lie between them. */
function meeting(
  roll: Dice,
  system: LongitudinalSheet,
  first: RunEnd,
  sheet: EndSheet | null,
  near: number,
  splice: (at: number) => RunEnd,
  unit: (sheet: EndSheet, at: number) => RunEnd,
): RunEnd {
  const end = sheet === null ? splice(0) : unit(sheet, 0)
  const posts = closingsOf(first, system)[0]!.lastPost + closingsOf(end, system)[0]!.lastPost
  const least = near + (sheet?.lengthOfNeedFrom.inches ?? 0) - first.atInches! - posts
  const rail = Math.max(1, Math.ceil(least / full)) * full + posts
  return { ...end, atInches: first.atInches! + rail + (roll.chance(0.1) ? roll.oneOf([sixteenth, half]) : 0) }
}

function randomStock(roll: Dice): readonly StockPanel[] {
  const lengths = [75, 112.5, 150, 187.5, 300].filter(() => roll.chance(0.75))
  return lengths.map((inches) => ({ inches, count: roll.chance(0.3) ? null : roll.between(0, 5) }))
}

/** Mostly a pipe or an inlet; now and then as wide as several post spaces. */
function randomObstruction(roll: Dice, i: number, from: number, to: number, step: number): Obstruction {
  const width = roll.oneOf([
    () => roll.between(1, 40, step),
    () => roll.between(20, 90, step),
    () => roll.between(80, 300, step),
  ])()
  const fromInches = roll.between(from - 200, to + 200, step)
  return { name: `obstruction ${i + 1}`, fromInches, toInches: fromInches + width }
}

/** A random run with one to three parts at reduced spacing, often one over another; now and then doubled. */
export function randomReducedRun(random: () => number, fixed: Fixed): LayoutRequest {
  const run = randomRun(random, fixed)
  const roll = dice(random)
  const from = run.need?.fromInches ?? run.first.atInches!
  const to = run.need?.toInches ?? run.second.atInches!
  const step = fixed === 'none' ? 1 : sixteenth
  const reduced: ReducedPart[] = []
  for (let more = roll.oneOf([1, 1, 1, 2, 2, 3]); more > 0; more--) {
    const before = reduced[0]
    const near =
      before !== undefined && roll.chance(0.6) ? [before.fromInches - 200, before.toInches + 100] : [from, to]
    const fromInches = roll.between(near[0]! - 50, near[1]! + 50, step)
    reduced.push({
      fromInches,
      toInches: fromInches + roll.oneOf([() => roll.between(1, 80, step), () => roll.between(60, 300, step)])(),
      spacing: roll.oneOf(['half', 'half', 'quarter', 'quarter', 'full'] as const),
      nested: roll.chance(0.25),
    })
  }
  const obstructions = run.obstructions.slice(0, roll.oneOf([0, 1, 1, 3]))
  const mayExtendInches = roll.chance(0.2) ? 0 : run.mayExtendInches
  return { ...run, reduced, obstructions, mayExtendInches }
}

/** A random run of which something stands: post 1 with a few panels, mostly rightly hung, and posts. */
export function randomStandingRun(random: () => number, fixed: Fixed): LayoutRequest {
  const roll = dice(random)
  const plain = roll.chance(0.3) ? randomReducedRun(random, fixed) : randomRun(random, fixed)
  const { system, first, need } = plain
  const closing = roll.oneOf(closingsOf(first, system))
  const origin = first.atInches ?? need!.fromInches - closing.countsFrom! - roll.between(0, 100)
  const lengths = [150, 150, 300, 300, 112.5, 187.5, 75, 225]
  const panels = [...closing.panels, ...Array.from({ length: roll.between(0, 2) }, () => roll.oneOf(lengths))]
  const slip = roll.chance(0.05) ? sixteenth : 0
  return {
    ...plain,
    standing: {
      postOneAtInches: origin + closing.posts[0]! + slip,
      panels: panels.slice(0, roll.between(0, panels.length)),
      postsDriven: roll.oneOf([0, 0, roll.between(1, 14)]),
    },
  }
}
