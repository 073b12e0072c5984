import { describe, expect, test } from 'vitest'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { chooseRuns, firstOf, listOf } from './choose-runs.ts'
import { type ListWish, printWish, readWish } from './list-wish.ts'

const run = (name: string, changes: Partial<SummarisedRun> = {}, findings = 0): SummarisedRun => ({
  ...{ id: name, project: 'own', name, route: null, station: null, lastVisit: null, archived: null, problems: [] },
  judged: {
    acceptance: { kind: findings > 0 ? 'not acceptable' : 'acceptable' },
    counts: { fails: findings, 'too close': 0, unread: 0, meets: 9, 'does not apply': 0 },
    findings,
    face: { bends: { first: null, second: null }, stretches: '' },
  },
  ...changes,
})

const visit = (at: string, by: string) => ({ lastVisit: { at, by } })

const runs = [
  run('Mill road bridge', { route: 'SR 14', station: '12+10', ...visit('2026-05-04T10:00:00-06:00', 'M. Peña') }, 2),
  run('Alder Creek', { route: 'SR 9', station: '208+40', ...visit('2026-05-04T15:30:00Z', 'R. Quist') }),
  run('Long bend', { route: 'SR 9', station: '9+00', project: 'demo' }),
  run('Old yard', { archived: { at: '2026-05-01', by: 'R. Quist', reason: 'taken down' } }),
  run('Short stub', { route: 'SR 9', station: '99+50' }, 1),
]

const all: ListWish = { search: '', acceptance: null, project: null, archived: false, sort: 'route' }
const names = (changes: Partial<ListWish>) =>
  chooseRuns(runs, { ...all, ...changes }).map(({ project, runs }) => [project, ...runs.map(({ name }) => name)])

describe('the list of runs', () => {
  test('stands by project, and in it by route and station as they are counted, not as they are spelled', () => {
    expect(names({})).toEqual([
      ['demo', 'Long bend'],
      ['own', 'Short stub', 'Alder Creek', 'Mill road bridge'],
    ])
  })

  test('puts the last visit first by the clock, whatever zone it was written in, and the most findings first', () => {
    // 10:00 at six hours behind is 16:00: after 15:30.
    expect(names({ sort: 'visit', project: 'own' })).toEqual([['own', 'Mill road bridge', 'Alder Creek', 'Short stub']])
    expect(names({ sort: 'findings', project: 'own' })[0]!.slice(0, 3)).toEqual([
      'own',
      'Mill road bridge',
      'Short stub',
    ])
  })

  test('puts a run that cannot be judged before all that are', () => {
    const broken = run('Broken', { judged: null })
    expect(chooseRuns([...runs, broken], { ...all, sort: 'findings' }).at(-1)!.runs[0]).toBe(broken)
  })

  test('finds by every word, in name, route, station and who, without case and accents', () => {
    expect(names({ search: 'sr 9 QUIST' })).toEqual([['own', 'Alder Creek']])
    expect(names({ search: 'pena' })).toEqual([['own', 'Mill road bridge']])
    expect(names({ search: '208+4' })).toEqual([['own', 'Alder Creek']])
    expect(names({ search: 'quist bridge' })).toEqual([])
  })

  test('shows one state, one project, or what was put away, and nothing of that otherwise', () => {
    expect(names({ acceptance: 'not acceptable' })).toEqual([['own', 'Short stub', 'Mill road bridge']])
    expect(names({ project: 'demo' })).toEqual([['demo', 'Long bend']])
    expect(names({ archived: true })).toEqual([['own', 'Old yard']])
  })

  test('gives the first of all groups together', () => {
    const groups = chooseRuns(runs, all)
    expect(firstOf(groups, 2).map(({ runs }) => runs.map(({ name }) => name))).toEqual([['Long bend'], ['Short stub']])
    expect(firstOf(groups, 1)).toHaveLength(1)
    expect(firstOf(groups, 99)).toEqual(groups)
  })

  test('says how many there are besides those that it gives', () => {
    const list = listOf([...runs, run('Far bridge', { project: 'bridges' })], { ...all, project: 'own' }, 2)
    expect(list.groups.map(({ runs }) => runs.map(({ name }) => name))).toEqual([['Short stub', 'Alder Creek']])
    expect(list).toMatchObject({ found: 3, all: 6, projects: ['bridges', 'demo', 'own'] })
  })

  test('is wanted by an address, there and back; what the address does not know is as at the start', () => {
    const wish: ListWish = { ...all, search: 'a & b', acceptance: 'acceptable except', project: 'x', sort: 'visit' }
    for (const one of [all, wish, { ...wish, archived: true }]) expect(readWish(printWish(one))).toEqual(one)
    expect(printWish(all)).toBe('')
    expect(readWish('?sort=colour&acceptance=maybe')).toEqual(all)
  })
})
