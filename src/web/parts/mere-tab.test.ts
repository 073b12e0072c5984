import { expect, test } from 'vitest'
import { isMereTab } from './mere-tab.ts'

test.each([
  ['a tab of an iPhone', { standalone: false }, true],
  ['the app installed on one', { standalone: true }, false],
  ['a browser in which the two share a store', {}, false],
])('%s', (_, browser, isMere) => {
  expect(isMereTab(browser)).toBe(isMere)
})
