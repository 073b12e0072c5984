import { describe, expect, it } from 'vitest'
import { plainRequirement } from '../../../test/fixtures/plain-requirement.ts'
import type { Dimension } from '../../core/hardware/hardware-sheet.ts'
import { instruments } from '../../core/measurement/instruments.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { exactLength } from '../../core/units/exact-length.ts'
import { judgeRequirements } from '../../core/verdicts/judge-requirements.ts'
import { plainFault } from '../../core/verdicts/plain-faults.ts'
import { proofOf } from '../../core/verdicts/proof.ts'
import { remedyOf } from '../../core/verdicts/saying.ts'
import { english } from '../english.ts'

const cited = { measured: '', source: 'test', confirmation: 'published', unit: 'in' } as const
const flare: Dimension = { nominal: 48, low: 45, high: 51, role: 'centre', ...cited }
const play: Dimension = { nominal: 'notStated', low: 'notStated', high: 1, role: 'ceiling', ...cited }

function remedy(topic: string, limits: Dimension, inches: number, instrument = 'tape'): string {
  const requirement = plainRequirement(topic, { kind: 'measure', limits, orFrom: null })
  const reading: Reading = {
    ...{ id: 'r1', of: requirement.id, instrument, uncertainty: null, by: 'J. Okafor', at: '2016-05-12T10:05:00Z' },
    // A length and the side on which it lies: away from traffic is positive here.
    answer: {
      kind: 'measured',
      value: exactLength(Math.abs(inches), 'in'),
      unit: 'in',
      resolution: null,
      ...(topic === 'flare-offset' ? { side: inches < 0 ? 'toward' : 'away' } : {}),
    },
    ...{ where: null, photos: [], corrects: null, rechecks: null, together: null },
  }
  const rules = { rule: { kind: 'guard band', multiple: 1 }, instruments } as const
  const verdict = judgeRequirements([requirement], [reading], rules)[0]!
  return english(null).say(remedyOf(plainFault({ requirement, verdict }, proofOf([reading], rules))))
}

// A tape: u = sqrt(1 mm^2 + (3.175 mm)^2 / 12) = 1.357 mm, U = 2.713 mm = 0.107 in; so 45 to 51 in are proven from 45 1/8 in to 50 7/8 in.
describe('what is measured and put right by itself', () => {
  it('moves the end away from traffic where it stands too near the line, toward it where too far off', () => {
    const proves = 'A reading of 45 1/8 in to 50 7/8 in then proves it.'
    expect(remedy('flare-offset', flare, 43.5)).toBe(
      `Move post 1 by 4 1/2 in away from traffic, the other posts of the flare in proportion; it then stands 48 in off the line of the run, away from traffic. ${proves}`,
    )
    expect(remedy('flare-offset', flare, 52.5)).toBe(
      `Move post 1 by 4 1/2 in toward traffic, the other posts of the flare in proportion; it then stands 48 in off the line of the run, away from traffic. ${proves}`,
    )
    expect(remedy('flare-offset', flare, -12)).toContain('Move post 1 by 60 in away from traffic')
  })

  it('says what the next reading may be at most where there is only a ceiling', () => {
    expect(remedy('cable-play', play, 2)).toBe('Tighten it. A reading of at most 7/8 in then proves it.')
  })

  it('says that a coarse instrument proves nothing under a ceiling lower than its doubt, and which would', () => {
    expect(remedy('cable-play', play, 4, 'gnss')).toContain('a reading taken directly with steel tape would prove it')
  })
})
