import { describe, expect, it } from 'vitest'
import type { Unit } from '../../src/core/layout/layout.ts'
import { withFirstIds } from '../../src/core/layout/place-ids.ts'
import { instruments } from '../../src/core/measurement/instruments.ts'
import { deriveRequirements } from '../../src/core/requirements/derive-requirements.ts'
import type { RunModel } from '../../src/core/requirements/run-model.ts'
import { judgeRun } from '../../src/core/verdicts/judge-run.ts'
import type { Finding } from '../../src/core/verdicts/verdict.ts'
import { faultyRunModels } from './faulty-runs.ts'
import { type PhysicalRun, readRun, soundRun } from './physical-run.ts'
import { plantsInPlace } from './plant-faults.ts'
import { dice, mulberry32 } from './random-runs.ts'

const models = faultyRunModels()
const tape = instruments.find(({ id }) => id === 'tape')!

/** The same run walked from its other end. */
function mirrored(model: RunModel): RunModel {
  const { layout } = model
  const end = layout.posts[layout.posts.length - 1]!.alongInches
  const other = (unit: Unit): Unit => (unit === 'first' ? 'second' : unit === 'second' ? 'first' : 'run')
  const turned = withFirstIds({
    ...layout,
    posts: layout.posts
      .toReversed()
      .map((post, i) => ({ ...post, number: i + 1, alongInches: end - post.alongInches, unit: other(post.unit) })),
    panels: layout.panels.toReversed().map((panel, i) => ({
      ...panel,
      number: i + 1,
      fromInches: end - panel.toInches,
      toInches: end - panel.fromInches,
      unit: other(panel.unit),
    })),
    splices: layout.splices.toReversed().map((splice, i) => ({
      ...splice,
      number: i + 1,
      alongInches: end - splice.alongInches,
      unit: other(splice.unit),
    })),
    omitted: layout.omitted.map((one) => ({ ...one, alongInches: end - one.alongInches })),
  })
  return { ...model, layout: turned, first: model.second, second: model.first }
}

function judge(model: RunModel, run: PhysicalRun): readonly Finding[] {
  const requirements = deriveRequirements(model)
  const visit = { instrumentOf: () => tape, isUnread: () => false, isOneTape: false }
  const readings = readRun(run, model, requirements, visit)
  const rules = { rule: { kind: 'guard band', multiple: 1 }, instruments, work: 'new', letting: '2016-01-01' } as const
  return judgeRun(model, requirements, readings, rules).findings
}

/** What is done to each post and panel, with the numbers of the run or, turned round, of the mirrored one. */
function deeds(findings: readonly Finding[], model: RunModel, isTurned: boolean): readonly string[] {
  const { posts, panels } = model.layout
  const post = (number: number): number => (isTurned ? posts.length + 1 - number : number)
  const panel = (number: number): number => (isTurned ? panels.length + 1 - number : number)
  const said = findings.flatMap(({ steps }) =>
    steps.flatMap((step): string[] => {
      if (step.kind === 'move posts') {
        const by = isTurned ? -step.by : step.by
        return Array.from({ length: step.to - step.from + 1 }, (_, i) => `post ${post(step.from + i)} along ${by}`)
      }
      if (step.kind === 'raise post') return [`post ${post(step.post)} up ${step.by}`]
      if (step.kind === 'reset post') return [`post ${post(step.post)} reset`]
      if (step.kind === 'exchange panel') return [`panel ${panel(step.panel)} for ${step.to}`]
      return [step.kind]
    }),
  )
  return said.toSorted()
}

describe('a mirrored run', () => {
  it('gives mirrored remedies, except where as many posts can be moved either way', () => {
    let ties = 0
    let remedies = 0
    for (let seed = 1; seed <= 600; seed++) {
      const roll = dice(mulberry32(seed))
      const { model, requirements } = roll.oneOf(models)
      const run = soundRun(model, requirements)
      for (let n = roll.between(1, 2); n > 0; n--) roll.oneOf(plantsInPlace)(run, model, requirements, roll, 0.25)
      const turned = mirrored(model)
      const end = model.layout.posts[model.layout.posts.length - 1]!.alongInches
      const seen: PhysicalRun = {
        posts: run.posts.toReversed().map((post) => ({ ...post, along: end - post.along })),
        panels: run.panels.toReversed(),
        things: soundRun(turned, deriveRequirements(turned)).things,
      }
      const one = deeds(judge(model, run), model, false)
      const other = deeds(judge(turned, seen), turned, true)
      remedies += one.length
      if (one.join() !== other.join() && one.length === other.length && one.some((deed) => deed.includes('along')))
        ties++
      else expect(other, `seed ${seed}`).toEqual(one)
    }
    expect(ties).toBeLessThan(15)
    expect(remedies).toBeGreaterThan(1000)
  })
})
