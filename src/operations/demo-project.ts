import { lengthText } from '../core/hardware/dimension-text.ts'
import { measuresLength } from '../core/hardware/measures-length.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { railLine } from '../core/staking/rail-line.ts'
import { inches } from '../core/units/quantity.ts'
import { readRun } from '../formats/run/run-file.ts'
import type { RequiredRun } from './require-by.ts'
import { requireRun } from './require-run.ts'

/** A run and its readings as files. The road, the culvert and everybody in it are invented. */
export interface DemoProject {
  readonly run: string
  readonly readings: string
}

const run = {
  format: 'lapwise-run/1',
  name: 'Alder Creek culvert, right side',
  units: 'us',
  road: {
    route: 'County Road 14',
    side: 'right',
    datumStation: '208+40',
    speed: 55,
    traffic: 'two-way',
    opposingReaches: false,
  },
  work: 'new',
  letting: '2016-03-15',
  system: 'w-beam-midspan-31',
  first: { sheet: 'flared-terminal-31' },
  second: { sheet: 'trailing-anchor-31' },
  need: { from: '-50 ft', to: '25 ft' },
  obstructions: [{ name: 'the culvert', from: '2 ft', to: '9 ft 6 in' }],
  curb: 'none',
}

/** The four planted faults: what was read instead of what ought to be. */
const faults: Readonly<Record<string, object>> = {
  'post-1/stub-height': { value: '4 3/4 in' },
  'post-1/bearing-plate': { choice: 'three-up' },
  'splice-2/lap': { choice: 'downstream-over' },
}

/**
 * The demo project: a county road, a culvert, a flared terminal, one visit on which everything was read, and four
 * faults: a stub too high, a bearing plate upside down, one splice lapped the wrong way, and standard panels hung
 * where the two odd ones belong, which puts the splices of the run at posts.
 */
export function demoProject(): DemoProject {
  const text = `${JSON.stringify(run, null, 2)}\n`
  const read = readRun('demo run', text)
  const required = read.ok ? requireRun('demo run', read.value) : read
  if (!required.ok) throw new Error(`the demo run is not sound: ${JSON.stringify(required.error)}`)
  return { run: text, readings: `${JSON.stringify(visitFile(required.value), null, 2)}\n` }
}

function visitFile(required: RequiredRun) {
  const crew = { by: 'T. Alvarez', at: '2016-05-09T08:20:00-06:00' }
  const readings = required.requirements.flatMap((requirement, i) => {
    const answer = faults[requirement.id] ?? panelFault(required, requirement) ?? soundAnswer(requirement, i)
    if (answer === null) return []
    return [
      {
        of: requirement.id,
        ...answer,
        ...(requirement.hold ? { ...crew, photos: [`covered-${requirement.place.number}`] } : {}),
      },
    ]
  })
  return {
    format: 'lapwise-readings/2',
    run: required.run.name,
    units: 'us',
    visit: {
      by: 'J. Okafor',
      at: '2016-05-12T10:05:00-06:00',
      instrument: 'tape-and-level',
      where: 'finish grade at the post',
    },
    readings: [...readings, ...offsetReadings(required)],
  }
}

/** Hung with 12 ft 6 in panels where the layout has its two adapter panels: every splice between them lands on a post. */
function panelFault({ model }: RequiredRun, { topic, place }: Requirement): object | null {
  const adapters = model.layout.panels.filter(({ role }) => role === 'adapter').map(({ number }) => number)
  if (topic === 'panel-length' && adapters.includes(place.number)) return { choice: 'in-150' }
  const between = place.number >= Math.min(...adapters) && place.number < Math.max(...adapters)
  return topic === 'splice-position' && between ? { choice: 'post' } : null
}

/** What a careful inspector reads at a sound place; null where the value comes from other readings or from the file. */
function soundAnswer({ look, topic }: Requirement, i: number): object | null {
  switch (look.kind) {
    case 'record':
      return null
    case 'confirm':
      return { confirmed: true }
    case 'choose':
      return { choice: look.choices.find(({ right }) => right)!.id }
    case 'measure': {
      if (topic === 'flare-offset' || (topic === 'straightness' && look.orFrom !== null)) return null
      if (!measuresLength(look.limits)) return null
      const { nominal, high, unit } = look.limits
      if (topic === 'rail-height')
        return {
          value: lengthText((nominal === 'notStated' ? 29 : nominal) + [0, 0.125, -0.125, 0.25, -0.25][i % 5]!, unit),
        }
      if (topic === 'spacing')
        return { value: lengthText((nominal as number) + [0, 0.125, -0.125][i % 3]!, unit), instrument: 'tape' }
      return {
        value: lengthText((high as number) * (topic === 'straightness' ? 0.25 : 0.75), unit),
        instrument: topic === 'straightness' ? 'string-line' : 'tape',
      }
    }
  }
}

/** Lateral offsets from one string, from which flare and straightness are computed. */
function offsetReadings({ model }: RequiredRun): object[] {
  const { layout } = model
  const line = railLine(model)
  if (!line.ok || line.value.farthest === 0) return []
  return layout.posts
    .filter(({ unit }) => unit !== 'second')
    .map(({ id, alongInches }) => {
      const offset = Math.round((line.value.awayAt(inches(alongInches)) / inches(1)) * 8) / 8
      return {
        of: `${id}/lateral-offset`,
        value: lengthText(offset, 'in'),
        ...(offset === 0 ? {} : { side: 'away' }),
        instrument: 'string-line',
        where: 'from a string along the line of the run',
      }
    })
}
