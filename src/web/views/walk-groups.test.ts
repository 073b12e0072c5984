import { expect, test } from 'vitest'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { requireRun } from '../../operations/require-run.ts'
import { english } from '../../words/english.ts'
import { plainText } from '../data/plain-text.ts'
import { chosenGroups, groupByPlace, nextUnread, type WalkWish, worstOf } from './walk-groups.ts'

const run = readRun('run', demoProject().run)
if (!run.ok) throw new Error('the demo is not sound')
const required = requireRun('run', run.value)
if (!required.ok) throw new Error('the demo cannot be laid out')
const { requirements } = required.value
const { say } = english(null)
const textOf = ({ place, must }: Requirement): string => plainText(`${say(place)} ${say(must)}`)
const allUnread: ReadonlyMap<string, VerdictWord> = new Map(requirements.map(({ id }) => [id, 'unread']))
const groups = groupByPlace(requirements)

const found = (wish: Partial<WalkWish>, verdictOf = allUnread): readonly string[] =>
  chosenGroups(groups, { search: '', verdict: null, ...wish }, verdictOf, textOf).flatMap(({ members }) =>
    members.map(({ id }) => id),
  )

test('every requirement is in one group, in walking order, and every hold point in one of its own', () => {
  expect(groups.flatMap(({ members }) => members)).toEqual(requirements)
  const holds = groups.filter(({ place }) => place === null)
  expect(holds).toHaveLength(1)
  expect(holds[0]!.members).toEqual(requirements.filter(({ hold }) => hold))
  for (const { place, members } of groups)
    if (place !== null) expect(new Set(members.map((one) => one.place.id))).toEqual(new Set([place.id]))
  expect(new Set(groups.map(({ id }) => id)).size).toBe(groups.length)
})

test('a number is found as a whole: 8 is not found in 18, 31 1/8 or 27.8', () => {
  const places = new Set(found({ search: 'post 8' }).map((id) => id.split('/')[0]))
  expect(places).toContain('post-8')
  expect(places).not.toContain('post-18')
  const said = (text: string) => chosenGroups(groups.slice(0, 1), wish('8'), allUnread, () => text).length > 0
  expect(['post 8', '8', 'posts 7 and 8', '8: here'].map(said)).toEqual([true, true, true, true])
  expect(['post 18', '31 1/8 in', '27.8 in', '8.5 in', '80', '8/3'].map(said)).toEqual(Array(6).fill(false))
})

const wish = (search: string): WalkWish => ({ search, verdict: null })

test('all words have to be found, whatever their case and accents, and only what has that verdict', () => {
  const bolts = found({ search: 'RÁIL bolt' })
  expect(bolts.length).toBeGreaterThan(5)
  expect(bolts.length).toBeLessThan(requirements.length)
  expect(found({ search: 'rail nowhere' })).toEqual([])
  const [first, second] = bolts as [string, string]
  const verdictOf = new Map<string, VerdictWord>([...allUnread, [first, 'fails'], [second, 'too close']])
  expect(found({ verdict: 'fails' }, verdictOf)).toEqual([first])
  expect(found({ search: 'rail bolt', verdict: 'too close' }, verdictOf)).toEqual([second])
  expect(found({ search: '  ' })).toHaveLength(requirements.length)
})

test('the next to read comes after where somebody is, then from the start, and is nothing that nobody can read', () => {
  const readable = requirements.filter(({ look }) => look.kind !== 'record')
  const [first, second, third] = readable as [Requirement, Requirement, Requirement]
  const next = (verdictOf: ReadonlyMap<string, VerdictWord>, after: string | null, answered: readonly string[] = []) =>
    nextUnread(requirements, verdictOf, new Set(answered), after)?.id
  expect(next(allUnread, null)).toBe(first.id)
  expect(next(allUnread, first.id)).toBe(second.id)
  expect(next(allUnread, first.id, [second.id])).toBe(third.id)
  expect(next(allUnread, requirements.at(-1)!.id)).toBe(first.id)
  const onlyFirst = new Map(requirements.map(({ id }) => [id, id === first.id ? ('unread' as const) : 'meets']))
  expect(next(onlyFirst, third.id)).toBe(first.id)
  const onlyRecord = requirements.filter(({ look }) => look.kind === 'record').map(({ id }) => id)
  expect(onlyRecord.length).toBeGreaterThan(0)
  expect(next(new Map(onlyRecord.map((id) => [id, 'unread'])), null)).toBeUndefined()
})

test('a place is told by the worst that was found there, and of how many that apply', () => {
  expect(worstOf(['meets', 'does not apply', 'unread', 'meets'])).toEqual({ worst: 'unread', count: 1, applying: 3 })
  expect(worstOf(['too close', 'fails', 'fails'])).toEqual({ worst: 'fails', count: 2, applying: 3 })
})
