import { expect, test } from 'vitest'
import type { EntryAnswer } from '../../protocol/entries.ts'
import type { Saying } from '../../words/saying.ts'
import { spanish } from '../../words/spanish.ts'
import { heardAnswer, heardError } from './heard.ts'

const place = { file: 'reading', place: 'of' }
const told = {
  ...{ ...place, expected: 'the id of an earlier reading of the same thing', found: '"post 3"' },
  saying: { expected: { kind: 'earlier reading' }, found: { kind: 'theirs', text: '"post 3"' } },
} as const

test('what the server tells as data is said in the language of the page, what somebody wrote as it is', async () => {
  const { message, problems } = await heardError({
    ...{ message: 'There is no run 7.', saying: { kind: 'no run', run: '7' }, problems: [told] },
  })
  expect(spanish(null).say(message)).toBe('No hay ningún tramo 7.')
  expect(problems).toEqual([{ ...place, ...told.saying }])
})

test('what a server of an earlier version tells stands in its own words', async () => {
  const { saying: _, ...texts } = told
  const { message, problems } = await heardError({ message: 'There is no run 7.', problems: [texts] })
  expect(spanish(null).say(message)).toBe('There is no run 7.')
  expect(problems.map(({ expected }) => spanish(null).say(expected))).toEqual([told.expected])
})

test('a kind that this page has no words for stands in the words of the server, also inside another', async () => {
  const later = { kind: 'of a later version' } as unknown as Extract<Saying, { kind: 'earlier reading' }>
  const within = { kind: 'field name', that: later } as const
  for (const expected of [later, within]) {
    const { problems } = await heardError({
      ...{ message: 'x', problems: [{ ...told, expected: 'something new', saying: { expected, found: null } }] },
    })
    expect(problems[0]!.expected).toEqual({ kind: 'in these words', words: 'something new' })
    expect(problems[0]!.found).toBeNull()
  }
})

test('an entry that was refused keeps why, with the first of its problems', async () => {
  const answer: EntryAnswer = {
    ...{ id: 'r', outcome: 'rejected', reason: 'it is not a reading of this run', problems: [told] },
    saying: { kind: 'no reading of run' },
  }
  const heard = await heardAnswer(answer)
  expect(heard.outcome === 'rejected' && spanish(null).say(heard.reason)).toBe(
    'no es una lectura de este tramo (of: el id de una lectura anterior de lo mismo)',
  )
})
