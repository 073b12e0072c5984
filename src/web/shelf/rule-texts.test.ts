import { expect, test } from 'vitest'
import { choicesText, readChoices, readNumbers } from './rule-texts.ts'

const choices = [
  { id: 'tight', label: 'Tight', right: true },
  { id: 'slack', label: 'Slack', right: false },
]

test('answers come back as they were written, with the ids that readings name', () => {
  expect(choicesText(choices)).toBe('+ Tight\n- Slack')
  expect(readChoices(choicesText(choices), choices)).toEqual(choices)
  expect(readChoices('+ Taut\n- Slack', choices)).toEqual([{ ...choices[0], label: 'Taut' }, choices[1]])
  expect(readChoices('- Slack\n+ Tight', choices)).toEqual([choices[1], choices[0]])
})

test('an answer that is new gets an id that none had, and one that is taken away leaves the others theirs', () => {
  expect(readChoices('+ Tight\n- Slack\n- Missing', choices)).toEqual([
    ...choices,
    { id: 'answer-1', label: 'Missing', right: false },
  ])
  expect(readChoices('- Slack', choices)).toEqual([choices[1]])
})

test('numbers are read, and what is none is kept to be refused', () => {
  expect(readNumbers('1, 2;4')).toEqual([1, 2, 4])
  expect(readNumbers('1, two')).toEqual([1, 'two'])
  expect(readNumbers(' ')).toBe(undefined)
})
