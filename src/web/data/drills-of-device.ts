import { ok } from '../../core/result.ts'
import type { DeviceStore } from './device-store.ts'
import type { PageEnd, StorePlace } from './page-end.ts'
import type { RunSource } from './run-source.ts'
import { orTrouble } from './store-trouble.ts'

/**
 * The drills of the store of practice.
 * @param forget  what was read of its runs
 */
export function drillsOfDevice(
  store: DeviceStore,
  page: PageEnd,
  place: StorePlace,
  forget: () => void,
): Pick<RunSource, 'drills' | 'keepDrill' | 'dropPractice'> {
  const drills: RunSource['drills'] = async () => {
    const kept = orTrouble(await store.get('drills'))
    return kept.ok ? ok(kept.value ?? []) : kept
  }
  return {
    drills,

    async keepDrill(drill) {
      const known = await drills()
      if (!known.ok) return known
      const rows = new Map([...known.value, drill].map((one) => [one.run, one]))
      return orTrouble(await store.set('drills', [...rows.values()]))
    },

    async dropPractice() {
      if (place !== 'practice') throw new RangeError('only the store of practice is emptied')
      forget()
      const done = orTrouble(await store.empty())
      page.changed({ runs: [], isOwn: true })
      return done
    },
  }
}
