import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { runToValue } from '../formats/run/write-run.ts'
import { countedRun, panelsBySheet } from './counted-run.ts'
import { type Shelf, shippedShelf } from './sheet-shelf.ts'

/** A run to practise on: a terminal by itself, or a whole run between two ends. */
export type PracticeRun =
  | { readonly kind: 'terminal'; readonly first: string }
  | { readonly kind: 'run'; readonly system: string; readonly first: string; readonly second: string }

/**
 * The practice runs, each by its place in this list, which numbers of drills name: it only ever grows at its end. The road
 * of each is invented.
 */
export const practiceRuns: readonly PracticeRun[] = [
  { kind: 'terminal', first: 'flared-terminal-31' },
  { kind: 'terminal', first: 'flared-terminal-27-3-4' },
  { kind: 'terminal', first: 'tangent-terminal-31' },
  { kind: 'run', system: 'w-beam-midspan-31', first: 'flared-terminal-31', second: 'trailing-anchor-31' },
  {
    ...{ kind: 'run', system: 'w-beam-post-splice-27-3-4' },
    ...{ first: 'flared-terminal-27-3-4', second: 'trailing-anchor-27-3-4' },
  },
  { kind: 'run', system: 'w-beam-midspan-31', first: 'tangent-terminal-31', second: 'flared-terminal-31' },
  { kind: 'run', system: 'w-beam-midspan-31', first: 'buried-end-31', second: 'tangent-terminal-31' },
  {
    ...{ kind: 'run', system: 'w-beam-post-splice-27-3-4' },
    ...{ first: 'flared-terminal-27-3-4', second: 'flared-terminal-27-3-4' },
  },
]

/** The place that says a run of the device itself, which no number gives to another device. */
export const runOfDevice = 99

/** The value of the run file of a practice run, not laid out yet. */
export function practiceRunValue(
  practice: PracticeRun,
  name: string,
  units: 'us' | 'metric',
  shelf: Shelf = shippedShelf,
): object {
  const first = shelf.get(practice.first) as EndSheet
  if (practice.kind === 'run') {
    const { system, second } = practice
    return {
      ...{ format: 'lapwise-run/1', name, units, work: 'new', system },
      road: { traffic: 'two-way', side: 'right', speed: 55, opposingReaches: true },
      ...{ first: { sheet: first.id }, second: { sheet: second }, need: { from: '0 ft', to: '75 ft' } },
    }
  }
  const zero = first.posts[0]!.along
  return runToValue(
    countedRun({
      ...{ name, units, first, system: systemOf(first, shelf), second: 'not looked at' },
      counted: { panels: panelsBySheet(first), posts: first.posts.map(({ along }) => along - zero) },
      ...{ reduced: [], obstructions: [], unknownPanels: 0, opposingReaches: null, side: 'right' },
      ...{ letting: null, datumStation: null, position: null, sheets: [] },
    }),
  ) as object
}

const systemOf = ({ joins }: EndSheet, shelf: Shelf): LongitudinalSheet => shelf.get(joins[0]!) as LongitudinalSheet

/** The end sheet by which a practice run is called. */
export const sheetsOfPractice = (practice: PracticeRun, shelf: Shelf = shippedShelf): readonly HardwareSheet[] =>
  [practice.first, ...(practice.kind === 'run' ? [practice.second] : [])].map((id) => shelf.get(id)!)
