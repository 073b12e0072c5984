import { exactLength, type LengthUnit, lengthIn } from '../../src/core/units/exact-length.ts'
import type { RemedyStep } from '../../src/core/verdicts/remedy.ts'
import type { Finding } from '../../src/core/verdicts/verdict.ts'
import type { PhysicalRun } from './physical-run.ts'

const inches = (value: number, unit: LengthUnit): number => lengthIn(exactLength(value, unit), 'in')

/** Does on the ground what a step says, no more. */
export function carryOut(step: RemedyStep, run: PhysicalRun, sound: PhysicalRun): void {
  switch (step.kind) {
    case 'measure first':
    case 'not provable':
      return
    case 'move posts':
      for (let post = step.from; post <= step.to; post++) run.posts[post - 1]!.along += inches(step.by, step.unit)
      return
    case 'raise post': {
      const post = run.posts[step.post - 1]!
      post.rail += inches(step.by, step.unit)
      if (post.stub !== null) post.stub += inches(step.by, step.unit)
      return
    }
    case 'reset post': {
      const { rail, stub } = sound.posts[step.post - 1]!
      Object.assign(run.posts[step.post - 1]!, { rail, stub })
      return
    }
    case 'exchange panel':
      run.panels[step.panel - 1] = { inches: step.to, isSlotted: step.name !== null }
      return
    case 'move end': {
      const id = `post-${step.post}/flare-offset`
      const thing = run.things.get(id)!
      if (thing.kind === 'length') run.things.set(id, { ...thing, value: thing.value + step.by })
      return
    }
    case 'set right': {
      const { requirement, to } = step
      const [, panel] = /^panel-(\d+)\/slotted-panel$/.exec(requirement) ?? []
      if (panel !== undefined) run.panels[Number(panel) - 1]!.isSlotted = true
      else if (to.kind === 'choice') run.things.set(requirement, to)
      else if (to.kind === 'confirmed') run.things.set(requirement, { kind: 'confirmed', yes: true })
      else {
        const [from, upTo] = [to.span.from ?? 0, to.span.to]
        const value = upTo === null ? from + 1 : Math.floor(4 * (from + upTo)) / 8
        const thing = run.things.get(requirement)!
        if (thing.kind !== 'length') throw new Error('a value of something else')
        run.things.set(requirement, { ...thing, value })
      }
      return
    }
    case 'as the rule says':
    case 'lay out again':
      throw new Error(`nothing that could be carried out: ${JSON.stringify(step)}`)
    default:
      step satisfies never
  }
}

/** What two findings of one judgement want of the same thing, where they do not want the same. */
export function contradictions(findings: readonly Finding[]): readonly string[] {
  const wanted = new Map<string, { readonly finding: string; readonly what: string }>()
  const found: string[] = []
  const want = (finding: Finding, thing: string, what: string): void => {
    const before = wanted.get(thing)
    if (before !== undefined && before.what !== what)
      found.push(`${thing}: ${before.finding} wants ${before.what}, ${finding.id} wants ${what}`)
    wanted.set(thing, { finding: finding.id, what })
  }
  for (const finding of findings) {
    for (const step of finding.steps) {
      if (step.kind === 'move posts')
        for (let post = step.from; post <= step.to; post++)
          want(finding, `post ${post} along`, `${step.by} ${step.unit}`)
      if (step.kind === 'raise post') want(finding, `post ${step.post} up`, `${step.by} ${step.unit}`)
      if (step.kind === 'reset post') want(finding, `post ${step.post} up`, 'reset')
      if (step.kind === 'exchange panel') want(finding, `panel ${step.panel}`, `${step.to} in`)
      if (step.kind === 'move end') want(finding, `end at post ${step.post}`, `${step.by} ${step.unit}`)
      if (step.kind === 'set right') want(finding, step.requirement, JSON.stringify(step.to))
    }
  }
  return found
}
