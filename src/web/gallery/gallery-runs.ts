import type { SummarisedRun } from '../../operations/summarise-run.ts'

const sound: SummarisedRun = {
  ...{ id: 'gallery-1', project: 'own', name: 'Alder Creek culvert, right side', route: 'County Road 14' },
  ...{ station: '208+40', archived: null, problems: [] },
  lastVisit: { at: '2026-05-12T10:05-06:00', by: 'R. Quist' },
  judged: {
    acceptance: { kind: 'acceptable' },
    counts: { fails: 0, 'too close': 0, unread: 0, meets: 155, 'does not apply': 2 },
    findings: 0,
    face: { bends: { first: 0.26, second: null }, stretches: '3'.repeat(18) },
  },
}

const judged = (changes: Partial<NonNullable<SummarisedRun['judged']>>): Pick<SummarisedRun, 'judged'> => ({
  judged: { ...sound.judged!, ...changes },
})

/** A run in each state in which the list can show one; names as long as they get. */
export const galleryRuns: readonly SummarisedRun[] = [
  sound,
  {
    ...sound,
    ...{
      id: 'gallery-2',
      name: 'Mill road bridge, north-east quadrant, from the rail of the bridge to the end of the curve',
    },
    ...judged({
      acceptance: { kind: 'not acceptable' },
      counts: { fails: 9, 'too close': 4, unread: 61, meets: 120, 'does not apply': 3 },
      findings: 4,
      face: { bends: { first: 0.2, second: 0.82 }, stretches: '03310332233222223303222220' },
    }),
  },
  {
    ...sound,
    ...{ id: 'gallery-3', route: null, station: null, lastVisit: null },
    ...judged({
      acceptance: { kind: 'not yet known' },
      counts: { fails: 0, 'too close': 0, unread: 155, meets: 0, 'does not apply': 0 },
      face: { bends: { first: null, second: null }, stretches: '2'.repeat(32) },
    }),
  },
  {
    ...sound,
    ...{ id: 'gallery-4', ...judged({ acceptance: { kind: 'acceptable except', setAside: 2, by: ['M. Peña'] } }) },
    archived: { at: '2026-06-01T08:00-06:00', by: 'M. Peña', reason: 'taken down with the old bridge' },
  },
  {
    ...sound,
    ...{ id: 'gallery-5', judged: null, lastVisit: null },
    problems: [{ file: 'run', place: 'system', expected: { kind: 'version of run' }, found: null }],
  },
]
