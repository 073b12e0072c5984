import { describe, expect, it } from 'vitest'
import { isEndSafe } from './crashworthy-end.ts'
import type { EndSheet } from './hardware-sheet.ts'

const kinds: readonly EndSheet['kind'][] = ['terminal', 'trailing anchor', 'buried end', 'bridge end']
const all = [true, false, null] as const

describe('isEndSafe', () => {
  it.each(kinds)('a crashworthy %s is right at either end, whoever can reach it', (kind) => {
    for (const opposingReaches of all)
      for (const end of ['approach', 'departure'] as const)
        expect(isEndSafe({ crashworthy: true, kind }, { end, opposingReaches })).toBe(true)
  })

  it.each(kinds)('a %s that is not crashworthy is never right at the approach end', (kind) => {
    for (const opposingReaches of all)
      expect(isEndSafe({ crashworthy: false, kind }, { end: 'approach', opposingReaches })).toBe(false)
  })

  it.each(['terminal', 'trailing anchor', 'buried end'] as const)(
    'a %s that is not crashworthy is right at the departure end only where opposing traffic cannot reach it',
    (kind) => {
      const at = (opposingReaches: boolean | null) =>
        isEndSafe({ crashworthy: false, kind }, { end: 'departure', opposingReaches })
      expect([at(true), at(false), at(null)]).toEqual([false, true, null])
    },
  )

  it('a bridge end is passed by adjacent traffic at the departure end too, so it has to be crashworthy there', () => {
    for (const opposingReaches of all)
      expect(isEndSafe({ crashworthy: false, kind: 'bridge end' }, { end: 'departure', opposingReaches })).toBe(false)
  })
})
