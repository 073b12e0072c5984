import { describe, expect, it } from 'vitest'
import { modelFrom } from '../../../test/fixtures/verdict-model.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import { instruments } from '../measurement/instruments.ts'
import type { Answer, Reading } from '../measurement/reading.ts'
import { deriveRequirements } from '../requirements/derive-requirements.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { exactLength } from '../units/exact-length.ts'
import { judgeRun } from './judge-run.ts'

const inches = (value: number): Answer => ({
  ...{ kind: 'measured', value: exactLength(value, 'in'), unit: 'in', resolution: null },
})

/** What is found where these are read, in order, and nothing else. */
function found(model: RunModel, read: Readonly<Record<string, Answer>>) {
  const readings = Object.entries(read).map(
    ([of, answer]): Reading => ({
      ...{ id: `of ${of}`, of, answer, instrument: 'tape', uncertainty: null, by: 'J. Okafor' },
      ...{ at: '2016-05-12T10:05:00Z', where: null, photos: [], corrects: null, rechecks: null, together: null },
    }),
  )
  const rules = { rule: { kind: 'guard band', multiple: 1 }, instruments } as const
  return judgeRun(model, deriveRequirements(model), readings, rules).findings
}

const terminal = modelFrom('flared-terminal-31', 1000)

describe('heights of a post', () => {
  const kinds = (read: Readonly<Record<string, Answer>>) =>
    found(terminal, read).map(({ id, requirements, steps }) => [id, requirements, steps.map(({ kind }) => kind)])
  const [rail, stub] = ['post-1/rail-height', 'post-1/stub-height']

  it('are one finding where both are wrong, named by the rail', () => {
    expect(kinds({ [stub]: inches(5), [rail]: inches(33) })).toEqual([[rail, [rail, stub], ['raise post']]])
  })

  it('have the other of the two measured first where nobody did, on a post that has both', () => {
    expect(kinds({ [rail]: inches(29) })).toEqual([[rail, [rail], ['measure first', 'raise post']]])
    expect(kinds({ [stub]: inches(5) })).toEqual([[stub, [stub], ['measure first', 'raise post']]])
    expect(kinds({ [stub]: { kind: 'cannot see' }, [rail]: inches(29) })[0]![2]).toEqual([
      'measure first',
      'raise post',
    ])
    expect(kinds({ [rail]: inches(29), [stub]: inches(1) })[0]![2]).toEqual(['raise post'])
    expect(kinds({ 'post-4/rail-height': inches(29) })[0]![2]).toEqual(['raise post'])
  })

  it('are a finding for each post, in walking order', () => {
    const ids = found(terminal, { 'post-9/rail-height': inches(29), 'post-4/rail-height': inches(29) }).map(
      ({ id }) => id,
    )
    expect(ids).toEqual(['post-4/rail-height', 'post-9/rail-height'])
  })
})

describe('a wrong space between posts that all stand', () => {
  // Between two standing splices 150 in apart two posts of the run stand between the two standing ones.
  const first = { kind: 'standing splice', atInches: 0, position: 'midspan' } as const
  const second = { ...first, atInches: 150 }
  const { system } = terminal
  const solved = solveLayout({
    ...{ system, first, second, need: null, stock: null, obstructions: [], reduced: [], standing: null },
    mayExtendInches: 0,
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  const model: RunModel = { ...terminal, layout: layout!, first, second }

  it('cannot be set right by moving posts where only one is wrong: the run is laid out again', () => {
    expect(layout!.posts.map(({ state }) => state)).toEqual(['standing', 'regular', 'regular', 'standing'])
    const right = { 'space-1/spacing': inches(75), 'space-3/spacing': inches(75) }
    expect(found(model, { ...right, 'space-2/spacing': inches(79) }).map(({ id, steps }) => [id, steps])).toEqual([
      ['space-2/spacing', [{ kind: 'lay out again' }]],
    ])
  })

  it('has the spaces measured first that nobody read, by their numbers', () => {
    const [one] = found(model, { 'space-2/spacing': inches(79) })
    expect(one!.steps).toEqual([
      {
        ...{ kind: 'measure first', what: 'spaces', requirements: ['space-1/spacing', 'space-3/spacing'] },
        ...{ from: 1, to: 3, using: null },
      },
      { kind: 'lay out again' },
    ])
  })

  it('says by how much the post is off, without a sign, whichever way it has to go', () => {
    const off = (first: number, second: number) => {
      const read = {
        'space-1/spacing': inches(first),
        'space-2/spacing': inches(second),
        'space-3/spacing': inches(75),
      }
      const [finding] = found(model, read)
      const [step] = finding!.steps
      return [...finding!.what.parts.map((part) => 'by' in part && part.by), step]
    }
    expect(off(79, 71)).toEqual([4, expect.objectContaining({ kind: 'move posts', by: -4 })])
    expect(off(71, 79)).toEqual([4, expect.objectContaining({ kind: 'move posts', by: 4 })])
  })

  it('is set right by the post between it and the one that makes up for it', () => {
    const read = { 'space-1/spacing': inches(79), 'space-2/spacing': inches(71), 'space-3/spacing': inches(75) }
    expect(found(model, read).map(({ id, requirements, steps }) => [id, requirements, steps])).toEqual([
      [
        'space-1/spacing',
        ['space-1/spacing', 'space-2/spacing'],
        [
          {
            ...{ kind: 'move posts', from: 2, to: 2, by: -4, unit: 'in', reaches: null, with: [], newSlotAt: null },
          },
        ],
      ],
    ])
  })
})
