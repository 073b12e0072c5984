import { describe, expect, it } from 'vitest'
import { modelFrom } from '../../../test/fixtures/verdict-model.ts'
import { instruments } from '../../core/measurement/instruments.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { deriveRequirements } from '../../core/requirements/derive-requirements.ts'
import { exactLength, type LengthUnit } from '../../core/units/exact-length.ts'
import { judgeRun } from '../../core/verdicts/judge-run.ts'
import { remedyOf } from '../../core/verdicts/saying.ts'
import { english } from '../english.ts'

const model = modelFrom('tangent-terminal-31', 900)
const requirements = deriveRequirements(model)
const posts = model.layout.posts.length

/** What is found of spaces of these widths; all others are right, or unread where the width is null. */
function found(
  widths: Readonly<Record<number, number | null>>,
  unit: LengthUnit = 'in',
  instrument: string | null = 'tape',
) {
  const readings = model.layout.posts.slice(1).flatMap(({ alongInches }, i): Reading[] => {
    const width = widths[i + 1]
    if (width === null) return []
    const value =
      width === undefined
        ? exactLength(alongInches - model.layout.posts[i]!.alongInches, 'in')
        : exactLength(width, unit)
    const about = { uncertainty: null, by: 'J. Okafor', at: '2016-05-12T10:05:00Z', where: null, photos: [] }
    const later = { corrects: null, rechecks: null, together: null }
    return [
      {
        id: `r${i + 1}`,
        of: `space-${i + 1}/spacing`,
        answer: { kind: 'measured', value, unit, resolution: null },
        instrument,
        ...about,
        ...later,
      },
    ]
  })
  const rules = {
    rule: { kind: 'guard band', multiple: 1 },
    instruments,
    work: null,
    letting: null,
    speed: null,
    flare: null,
    opposingReaches: null,
  } as const
  return judgeRun(model, requirements, readings, rules).findings.map(
    (finding) => `${finding.id}: ${english(null).say(remedyOf(finding))}`,
  )
}

const slots = 'The rail slot may not be enlarged in the field.'

describe('spaces that are wrong', () => {
  it('moves one post by the best of both spaces: 77 and 72 in by 2 1/2 in, to 74 1/2 in each', () => {
    const one = [`space-4/spacing: Move post 5 upstream by 2 1/2 in; both spaces then come right. ${slots}`]
    expect(found({ 4: 77, 5: 72 })).toEqual(one)
    expect(found({ 4: 77, 5: 72 }, 'in', null)).toEqual(one)
    expect(found({ 4: 1955.8, 5: 1828.8 }, 'mm')).toEqual(one)
  })

  it('moves it the other way where the spaces are the other way round', () => {
    expect(found({ 4: 73, 5: 77 })).toEqual([
      `space-4/spacing: Move post 5 downstream by 2 in; both spaces then come right. ${slots}`,
    ])
  })

  it('leaves posts that stay 1 in apart, as the sheet allows, and no more', () => {
    expect(found({ 4: 78, 5: 73 })[0]).toMatch(/^space-4.spacing: Move post 5 upstream by 2 1.2 in; both/)
    expect(found({ 4: 78, 5: 73 + 1 / 8 })).toEqual([
      `space-4/spacing: Move post 4 and every post before it downstream by 1 1/8 in; the space then comes right once post 5 is moved as well. ${slots} Move post 5 upstream by 1 7/8 in; both spaces then come right once post 4 is moved as well. ${slots}`,
    ])
  })

  it('moves several posts that are out together, from where they are to where they are right', () => {
    expect(found({ 4: 78, 8: 72 })).toEqual([
      `space-4/spacing: Move posts 5 to 8 upstream by 3 in; both spaces then come right. ${slots}`,
    ])
  })

  it('moves the fewer posts: those beyond near the second end, those before near the first', () => {
    const late = posts - 3
    expect(found({ [late]: 77 })).toEqual([
      `space-${late}/spacing: Move post ${late + 1} and every post beyond 2 in closer to post ${late}. ${slots}`,
    ])
    expect(found({ [late]: 73 })[0]).toContain(`beyond 2 in away from post ${late}`)
    expect(found({ 3: 77 })).toEqual([
      `space-3/spacing: Move post 3 and every post before it 2 in closer to post 4. ${slots}`,
    ])
    expect(found({ 3: 73 })[0]).toContain('before it 2 in away from post 4')
  })

  it('asks for the spaces beside that nobody read, and for no others', () => {
    expect(found({ 4: 77, 5: null })[0]).toMatch(/^space-4\/spacing: 1 of the spaces beside and beyond is unread/)
    expect(found({ 4: 77, 5: 73, 9: null })[0]).not.toContain('unread')
  })

  it('says what would prove it where the reading is too coarse for the tolerance', () => {
    expect(found({ 4: 79, 5: 71 }, 'in', 'gnss')).toEqual([expect.stringContaining('Move post 5 upstream by 4 in')])
    expect(found({ 4: 79, 5: 71 }, 'in', 'gnss')[0]).toContain(
      'a reading taken directly with steel tape would prove it',
    )
  })
})
