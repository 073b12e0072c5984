import { describe, expect, it } from 'vitest'
import { sampleInput } from '../../test/fixtures/record-inputs.ts'
import { takeQuantities } from '../core/quantities/take-quantities.ts'
import { english } from '../words/english.ts'
import { quantitiesContents } from './quantities-contents.ts'

describe('the list of quantities', () => {
  const { run, model } = sampleInput(() => [])
  const rule = {
    boundaries: { first: { kind: 'post', number: 7 }, second: { kind: 'splice' } },
    rounding: '12.5 ft',
  } as const
  const taken = takeQuantities(model, { ...rule, postsDriven: 0 })
  if (!taken.ok) throw new Error(taken.error.kind)
  const contents = quantitiesContents(run, model, taken.value, rule, english(null))

  it('says in words where the run begins and ends and how it is rounded', () => {
    expect(contents.boundaries).toBe(
      'The run begins at the centre of post 7 (post 7 of the terminal) and ends at the splice where the trailing anchor joins the run, measured along the face of rail.',
    )
    expect(contents.roundingText).toBe('Paid to the nearest panel of 12.5 ft, halves upward.')
  })

  it('names pieces in few words, and every total is their sum', () => {
    const lines = contents.sections.flatMap((section) => section.lines)
    expect(lines.find(({ name }) => name === 'Standard post of the terminal')?.piecesText).toBe('posts 3 to 7')
    for (const { amount, pieces } of lines)
      expect(pieces.reduce((sum, piece) => sum + piece.amount, 0)).toBeCloseTo(amount, 9)
  })

  it('leaves room for heat and coating marks at each panel, and for one mark at a bundle', () => {
    const panels = contents.materials.filter(({ marks }) => marks.includes('heat'))
    expect(panels.map(({ where }) => where)).toHaveLength(model.layout.panels.length)
    for (const { marks } of panels) expect(marks).toEqual(['heat', 'coating'])
    const posts = contents.materials.find(({ item }) => item === 'Standard post of the terminal')
    expect(posts).toEqual({ item: 'Standard post of the terminal', count: 5, where: 'posts 3 to 7', marks: ['bundle'] })
  })
})
