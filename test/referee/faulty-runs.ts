import type { EndSheet, LongitudinalSheet } from '../../src/core/hardware/hardware-sheet.ts'
import type { Layout, LayoutRequest, RunEnd } from '../../src/core/layout/layout.ts'
import { solveLayout } from '../../src/core/layout/solve-layout.ts'
import { deriveRequirements } from '../../src/core/requirements/derive-requirements.ts'
import type { Requirement } from '../../src/core/requirements/requirement.ts'
import type { RunModel } from '../../src/core/requirements/run-model.ts'
import { type Fixed, mulberry32, randomRun, sheetOf } from './random-runs.ts'

export interface RequiredModel {
  readonly model: RunModel
  readonly requirements: readonly Requirement[]
}

const unit = (id: string, atInches: number | null = null): RunEnd => ({
  kind: 'unit',
  sheet: sheetOf<EndSheet>(id),
  atInches,
})

const splice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'midspan' })

/** Every shipped end at either end of its system, where the random runs do not have it. */
const ends31 = ['flared-terminal-31', 'tangent-terminal-31', 'buried-end-31', 'trailing-anchor-31', 'bridge-end-31']
const ends27 = ['flared-terminal-27-3-4', 'trailing-anchor-27-3-4']

function everyPair(system: string, ends: readonly string[]): readonly LayoutRequest[] {
  return ends.flatMap((first) =>
    ends.flatMap((second): LayoutRequest[] => {
      if (first === 'bridge-end-31' && second === 'bridge-end-31') return []
      return [
        request(
          system,
          unit(first, first === 'bridge-end-31' ? 0 : null),
          unit(second, second === 'bridge-end-31' ? 2400 : null),
        ),
      ]
    }),
  )
}

const request = (system: string, first: RunEnd, second: RunEnd): LayoutRequest => ({
  system: sheetOf<LongitudinalSheet>(system),
  first,
  second,
  need: { fromInches: 600, toInches: 1500 },
  stock: null,
  obstructions: [{ name: 'culvert', fromInches: 1000, toInches: 1030 }],
  reduced: [],
  standing: null,
  mayExtendInches: 1200,
})

/** Runs over all shipped sheets, at both ends, with gaps, special and moved posts, and rail that stands. */
export function faultyRunModels(): readonly RequiredModel[] {
  const random = mulberry32(1205)
  const fixed: readonly Fixed[] = ['first', 'second', 'both', 'none']
  const requests = [
    ...everyPair('w-beam-midspan-31', ends31),
    ...everyPair('w-beam-post-splice-27-3-4', ends27),
    request('w-beam-midspan-31', unit('tangent-terminal-31'), splice(2400)),
    { ...request('w-beam-midspan-31', splice(0), splice(1500)), need: null },
    ...Array.from({ length: 60 }, (_, i) => randomRun(random, fixed[i % 4]!)),
  ]
  return requests.flatMap((one) => {
    const layout = bestLayout(one)
    if (layout === null) return []
    const model: RunModel = {
      layout,
      system: one.system,
      first: fitForTraffic(one.first),
      second: fitForTraffic(one.second),
      work: 'new',
      letting: '2016-01-01',
      speed: null,
      flare: null,
      opposingReaches: false,
    }
    return [{ model, requirements: deriveRequirements(model) }]
  })
}

/** Whether an end may face traffic is decided from the run file: no fault on the ground, and nothing here hangs on it. */
const fitForTraffic = (end: RunEnd): RunEnd =>
  end.kind === 'unit' ? { ...end, sheet: { ...end.sheet, crashworthy: true } } : end

function bestLayout(one: LayoutRequest): Layout | null {
  const solved = solveLayout(one)
  if (!solved.ok) return null
  for (const layout of solved.value.runs) return layout
  return null
}
