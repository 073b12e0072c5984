import { expect, test } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { Draft } from '../form/draft.ts'
import { isOneOf } from './sheet-drafts.ts'

const [shipped, ...others] = shippedSheets
const draft = shipped as unknown as Draft

test('a draft is over once an edition says the same under its version, in whatever order its fields stand', () => {
  const turned = Object.fromEntries(Object.entries(draft).toReversed())
  expect(isOneOf(shippedSheets, turned)).toBe(true)
  expect(isOneOf(others, draft)).toBe(false)
  expect(isOneOf(shippedSheets, { ...draft, version: '99' })).toBe(false)
  expect(isOneOf(shippedSheets, { ...draft, name: 'Another' })).toBe(false)
})
