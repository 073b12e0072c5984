import { expect, it } from 'vitest'
import { together } from './together.ts'

it('says every kind of every part', () => {
  expect(together({ here: () => 'here' }, { there: () => 'there' }).there()).toBe('there')
})

it('refuses a kind that two parts print', () => {
  expect(() => together({ here: () => 'a', there: () => 'b' }, { there: () => 'c' })).toThrow(
    'printed by two parts: there',
  )
})
