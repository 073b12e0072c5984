import { expect, test } from 'vitest'
import { demoRun } from '../../test/fixtures/roadside.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { inspectorAgreement } from './inspector-agreement.ts'
import { type JudgedRun, judgeKnown } from './judge-readings.ts'

const { required, readings } = demoRun()
const blocks = readings.filter(({ of }) => of.endsWith('/block'))
const judgedWith = (log: readonly Reading[]): JudgedRun => judgeKnown(required, log, new Map(), null, [])
const by = (person: string, from: readonly Reading[], choice: (reading: Reading, i: number) => string): Reading[] =>
  from.map((reading, i) => ({
    ...reading,
    ...{ id: `${person} ${i}`, by: person, answer: { kind: 'choice', choice: choice(reading, i) } },
  }))
const other = (choice: string): string => (choice === 'block' ? 'no-block' : 'block')
const said = ({ answer }: Reading): string => (answer.kind === 'choice' ? answer.choice : '')

test('two who read the same agree fully; kappa is not told where both always said the same', () => {
  const log = [...by('A', blocks, said), ...by('B', blocks, said)]
  const { people, all } = inspectorAgreement(judgedWith(log))!
  expect(people).toEqual(['A', 'B'])
  expect([all.same.times, all.same.of, all.kappa]).toEqual([blocks.length, blocks.length, null])
})

test('one against the other is counted, by topic, and what only one read is not', () => {
  const alone = readings.filter(({ of }) => of.endsWith('/lap'))
  const log = [
    ...by('A', blocks, (one, i) => (i < 2 ? other(said(one)) : said(one))),
    ...by('B', blocks, (one, i) => (i === 1 ? other(said(one)) : said(one))),
    ...by('A lap', alone, said).map((one) => ({ ...one, by: 'A' })),
  ]
  const { all, byTopic } = inspectorAgreement(judgedWith(log))!
  const n = blocks.length
  expect([all.same.times, all.same.of]).toEqual([n - 1, n])
  expect(byTopic.map(({ topic }) => topic)).toEqual(['block'])
  // A called two wrong, B one of these: po = (n - 1) / n, pe = (2/n)(1/n) + (1 - 2/n)(1 - 1/n).
  const byChance = 2 / n ** 2 + (1 - 2 / n) * (1 - 1 / n)
  expect(all.kappa).toBeCloseTo(((n - 1) / n - byChance) / (1 - byChance), 12)
})

test('a run that one person read tells nothing', () => {
  expect(inspectorAgreement(judgedWith(by('A', blocks, said)))).toBeNull()
})
