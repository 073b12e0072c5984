import { describe, expect, test } from 'vitest'
import { withChange } from '../../src/core/drill/change.ts'
import { type Fault, faultSizes, plantableFaults } from '../../src/core/drill/faults.ts'
import { type PracticeSite, trueAnswer } from '../../src/core/drill/read-as-built.ts'
import { soundAsBuilt } from '../../src/core/drill/sound-as-built.ts'
import { instruments } from '../../src/core/measurement/instruments.ts'
import { defaultRule, judgeRequirements } from '../../src/core/verdicts/judge-requirements.ts'
import type { Verdict } from '../../src/core/verdicts/verdict.ts'
import { shippedSheets } from '../../src/sheets/shipped-sheets.ts'
import { practiceReadings } from '../fixtures/practice-reading.ts'
import { faultyRunModels, type RequiredModel } from './faulty-runs.ts'

const ends = [
  ...['flared-terminal-31', 'tangent-terminal-31', 'buried-end-31', 'trailing-anchor-31', 'bridge-end-31'],
  ...['flared-terminal-27-3-4', 'trailing-anchor-27-3-4'],
]
const sheetAt = ({ model }: RequiredModel, end: 'first' | 'second'): string => {
  const { [end]: at } = model
  return at.kind === 'unit' ? at.sheet.id : ''
}

/** Of the referee's runs one with each end sheet at the first end and the next in the list at the second. */
const runs = ends.map((first, i) => {
  const second = [...ends.slice(1, 5), ends[0], ends[6], ends[5]][i]
  return faultyRunModels().find((run) => sheetAt(run, 'first') === first && sheetAt(run, 'second') === second)!
})

test('the runs have every shipped end sheet at both ends', () => {
  const shipped = shippedSheets.filter(({ kind }) => kind !== 'longitudinal').map(({ id }) => id)
  for (const end of ['first', 'second'] as const)
    expect(new Set(runs.map((run) => sheetAt(run, end)))).toEqual(new Set(shipped))
})

/**
 * What else may fail with it, by the trade: two spaces share a post; a panel of another length takes its later splices
 * along; and a height or a flare nothing.
 */
const follows: Readonly<Record<string, RegExp>> = {
  spacing: /\/spacing$/,
  'panel-length': /\/splice-position$/,
}

describe.each(faultSizes)('a %s fault', (size) => {
  test('is found by the verdicts at its place and by nothing else, however far off a reading is', () => {
    let planted = 0
    for (const run of runs) {
      const site = soundSite(run)
      for (const error of errors) expect(found(site, error)).toEqual([])
      for (const fault of plantableFaults(run.model, run.requirements, site.sound, size)) {
        const error = errors[planted % errors.length]!
        const changed = found(withFault(site, fault), error)
        const named = changed.find(({ requirement }) => requirement === fault.requirement)
        const said = `${fault.requirement} ${JSON.stringify(fault.changes)}, error ${error}`
        if (size !== 'borderline') expect(named?.verdict, said).toBe('fails')
        else if (error === 0) expect(named?.verdict, said).toBe('too close')
        for (const { requirement } of changed)
          if (requirement !== fault.requirement)
            expect(follows[fault.kind]?.test(requirement), `${said} shows at ${requirement}`).toBe(true)
        const [change] = fault.changes
        // A post that is moved alone is wrong to both sides, all posts beyond a space to one.
        if (fault.kind === 'spacing' && size !== 'borderline' && change?.kind === 'posts along')
          expect(changed.length, said).toBe(change.from === change.to && change.to !== last(run) ? 2 : 1)
        planted++
      }
    }
    expect(planted).toBeGreaterThan(size === 'borderline' ? 500 : 1500)
  })
})

const errors = [-2, 0, 2]

const last = ({ model }: RequiredModel): string => model.layout.posts.at(-1)!.id

/** The handbook's twenty facts of a flared terminal, by their number, each by the topics that ask for it. */
const facts: Readonly<Record<number, readonly string[]>> = {
  ...{ 1: ['rail-height'], 2: ['flare-offset'], 3: ['straightness'], 4: ['spacing'], 5: ['slotted-panel'] },
  ...{
    6: ['panel-length'],
    7: ['panel-length'],
    8: ['lap'],
    9: ['rail-bolt'],
    10: ['block'],
    11: ['block', 'post-kind'],
  },
  ...{ 12: ['hinge-side'], 13: ['hinge-side'], 14: ['stub-height'], 15: ['slot-set'], 16: ['head-holes'] },
  ...{ 17: ['bearing-plate', 'plate-retainer'], 18: ['cable-play'], 19: ['bracket-seat', 'bracket-opening'] },
  20: ['manual'],
}

test.each(['flared-terminal-31', 'flared-terminal-27-3-4'])('each of the twenty facts can be planted in a %s', (id) => {
  const run = runs.find(({ model }) => model.first.kind === 'unit' && model.first.sheet.id === id)!
  const faults = plantableFaults(run.model, run.requirements, soundSite(run).sound, 'gross')
  const asked = new Map(run.requirements.map((one) => [one.id, one]))
  const kinds = new Set(faults.filter((fault) => asked.get(fault.requirement)!.sheet === id).map(({ kind }) => kind))
  for (const [fact, topics] of Object.entries(facts))
    expect(
      topics.filter((topic) => !kinds.has(topic)),
      `fact ${fact}`,
    ).toEqual([])
})

const soundSite = ({ model, requirements }: RequiredModel): PracticeSite => {
  const sound = soundAsBuilt(model, requirements)
  return { model, requirements, sound, asBuilt: sound }
}

const withFault = (site: PracticeSite, { changes }: Fault): PracticeSite => ({
  ...site,
  asBuilt: changes.reduce((built, change) => withChange(built, change, site.model), site.asBuilt),
})

/** What is not met, of all that is other than in the sound run; in the sound run of all. */
function found(site: PracticeSite, error: number): readonly Verdict[] {
  const sound = { ...site, asBuilt: site.sound }
  const looked = site.requirements.filter((requirement) => {
    if (requirement.look.kind === 'record') return false
    if (site.asBuilt === site.sound) return true
    return JSON.stringify(trueAnswer(site, requirement)) !== JSON.stringify(trueAnswer(sound, requirement))
  })
  const readings = looked.flatMap((requirement) => practiceReadings(site, requirement, () => error))
  const verdicts = judgeRequirements(looked, readings, { rule: defaultRule, instruments })
  return verdicts.filter(({ verdict }) => verdict !== 'meets')
}
