import { type NumberedDrill, printDrillNumber } from '../../core/drill/drill-number.ts'
import type { RunFile } from '../../formats/run/run-file.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { practiceRuns, practiceRunValue, runOfDevice } from '../../operations/practice-runs.ts'
import { newId, now, rememberedVisit } from '../data/device.ts'
import type { DrillRow } from '../data/drill-row.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { preferences } from '../fieldwork/preferences.ts'
import { m } from '../messages.ts'
import { goTo, practicePath } from '../route.ts'
import { words } from './words.ts'

/** Seeds that a number has room for. */
const seeds = 10_000

export const randomSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0]! % seeds

/** One terminal with one gross fault: what a first drill is. */
export const firstDrill = (): NumberedDrill => ({ site: 0, faults: 1, size: 'gross', decoys: 0, seed: randomSeed() })

/**
 * Begins a drill in the store of practice and opens its walk; or what kept it from beginning.
 * @param minutes  of an exam; null of a drill
 */
export async function beginDrill(
  source: RunSource,
  drill: NumberedDrill,
  minutes: number | null,
): Promise<Trouble | null> {
  const number = printDrillNumber(drill)
  const name = `${words().bar} ${number}`
  const value = practiceRunValue(practiceRuns[drill.site]!, name, preferences().units)
  return begin(source, name, value, { number, wish: drill, minutes })
}

/** The same on a copy of a run of this device, which no number gives elsewhere. What failed of its site is no fault to find. */
export async function practiseOn(source: RunSource, run: RunFile): Promise<Trouble | null> {
  const name = `${words().bar}: ${run.name}`
  const wish = { site: runOfDevice, faults: 4, size: 'mixed', decoys: 2, seed: randomSeed() } as const
  return begin(source, name, runToValue({ ...run, name, madeOf: undefined }) as object, {
    number: null,
    wish,
    minutes: null,
  })
}

async function begin(
  source: RunSource,
  name: string,
  value: object,
  drill: Pick<DrillRow, 'number' | 'minutes'> & { readonly wish: NumberedDrill },
): Promise<Trouble | null> {
  const id = newId()
  const added = await source.addRun(id, name, value, rememberedVisit().by || m.runs.authorNotSaid)
  if (!added.ok) return added.error
  const { faults, size, decoys, seed } = drill.wish
  const kept = await source.keepDrill({
    ...{ run: id, number: drill.number, wish: { faults, size, decoys, seed }, minutes: drill.minutes },
    ...{ beganAt: now(), endedAt: null, said: {}, result: null },
  })
  if (!kept.ok) return kept.error
  goTo(practicePath(id))
  return null
}
