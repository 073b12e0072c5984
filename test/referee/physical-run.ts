import type { Dimension } from '../../src/core/hardware/hardware-sheet.ts'
import { measuresLength } from '../../src/core/hardware/measures-length.ts'
import type { Instrument } from '../../src/core/measurement/instruments.ts'
import type { Answer, Reading } from '../../src/core/measurement/reading.ts'
import type { Requirement, RequirementLook } from '../../src/core/requirements/requirement.ts'
import type { RunModel } from '../../src/core/requirements/run-model.ts'
import { exactLength, type LengthUnit, lengthIn } from '../../src/core/units/exact-length.ts'
import { stepsPer } from '../../src/core/units/quantity-kinds.ts'

/**
 * A run as it stands on the ground, and what a person with a tape reads of it. Written without a look at how faults are
 * found and remedied. Lengths in inches.
 */
export interface PhysicalRun {
  readonly posts: PhysicalPost[]
  readonly panels: { inches: number; isSlotted: boolean }[]
  /** What is neither a post's place nor a panel: by the id of the requirement, as it is. */
  readonly things: Map<string, Thing>
}

export interface PhysicalPost {
  along: number
  rail: number
  stub: number | null
}

export type Thing =
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'confirmed'; readonly yes: boolean }
  | { readonly kind: 'length'; readonly value: number; readonly unit: LengthUnit }

/** Topics that follow from where posts stand and which panels hang. */
const derived = ['rail-height', 'stub-height', 'spacing', 'panel-length', 'splice-position', 'slotted-panel']

/** The limits of what is measured; the model of a run has lengths only, as the shipped sheets do. */
export function lengthLimits({ limits }: Extract<RequirementLook, { kind: 'measure' }>): Dimension {
  if (!measuresLength(limits)) throw new Error(`no length: ${limits.unit}`)
  return limits
}

/** The run as it has to be: everything in the middle of its limits. */
export function soundRun({ layout }: RunModel, requirements: readonly Requirement[]): PhysicalRun {
  const byId = new Map(requirements.map((one) => [one.id, one]))
  const middle = (id: string): number | null => {
    const look = byId.get(id)?.look
    if (look?.kind !== 'measure') return null
    const limits = lengthLimits(look)
    return lengthIn(exactLength(middleOf(limits), limits.unit), 'in')
  }
  const things = requirements.flatMap(({ id, topic, look }): [string, Thing][] => {
    if (derived.includes(topic) || look.kind === 'record') return []
    if (look.kind === 'confirm') return [[id, { kind: 'confirmed', yes: true }]]
    if (look.kind === 'choose') return [[id, { kind: 'choice', choice: look.choices.find(({ right }) => right)!.id }]]
    const limits = lengthLimits(look)
    return [[id, { kind: 'length', value: limits.low === 'notStated' ? 0 : middleOf(limits), unit: limits.unit }]]
  })
  return {
    posts: layout.posts.map(({ number, alongInches }) => ({
      along: alongInches,
      rail: middle(`post-${number}/rail-height`) ?? 0,
      stub: middle(`post-${number}/stub-height`),
    })),
    panels: layout.panels.map(({ number, inches }) => ({
      inches,
      isSlotted: byId.has(`panel-${number}/slotted-panel`),
    })),
    things: new Map(things),
  }
}

function middleOf({ nominal, low, high }: Dimension): number {
  if (nominal !== 'notStated') return nominal
  if (low === 'notStated') return high === 'notStated' ? 0 : high / 2
  return high === 'notStated' ? low + 1 : (low + high) / 2
}

/** How each requirement is read: with what instrument, or not at all. */
export interface Visit {
  readonly instrumentOf: (id: string) => Instrument
  readonly isUnread: (id: string) => boolean
  /** Where each post stands is read on one tape, instead of every space by itself. */
  readonly isOneTape: boolean
}

/** What a person reads of the run: every requirement, lengths to the nearest step of the instrument. */
export function readRun(
  run: PhysicalRun,
  model: RunModel,
  requirements: readonly Requirement[],
  visit: Visit,
): readonly Reading[] {
  const readings: Reading[] = []
  const length = (of: string, value: number, unit: LengthUnit, id = of): void => {
    const instrument = visit.instrumentOf(id)
    const step = instrument.readTo * stepsPer(instrument.unit)
    const nanometres = Math.round(exactLength(value, unit) / step) * step
    const answer = { kind: 'measured', value: nanometres, unit, resolution: null } as const
    // An offset is read as a length and the side on which it lies: in the model away from traffic is positive.
    const sided = { ...answer, value: Math.abs(nanometres), side: nanometres < 0 ? 'toward' : 'away' } as const
    readings.push(readingOf(of, of.endsWith('/flare-offset') ? sided : answer, instrument.id))
  }
  if (visit.isOneTape) for (const [i, { along }] of run.posts.entries()) length(`post-${i + 1}/along`, along, 'in')
  for (const requirement of requirements) {
    const { id, topic, look, place } = requirement
    if (look.kind === 'record' || visit.isUnread(id)) continue
    const post = run.posts[place.number - 1]
    switch (topic) {
      case 'rail-height':
        length(id, post!.rail, 'in')
        break
      case 'stub-height':
        length(id, post!.stub!, 'in')
        break
      case 'spacing':
        if (!visit.isOneTape) length(id, run.posts[place.number]!.along - post!.along, 'in')
        break
      case 'panel-length':
        readings.push(readingOf(id, { kind: 'choice', choice: lengthChoice(run, requirement) }))
        break
      case 'slotted-panel': {
        const choice = run.panels[place.number - 1]!.isSlotted ? 'slotted' : 'plain'
        readings.push(readingOf(id, { kind: 'choice', choice }))
        break
      }
      case 'splice-position':
        readings.push(readingOf(id, { kind: 'choice', choice: splicePosition(run, model, place.number) }))
        break
      default: {
        const thing = run.things.get(id)!
        if (thing.kind === 'length') length(id, thing.value, thing.unit)
        else readings.push(readingOf(id, thing))
      }
    }
  }
  return readings
}

function lengthChoice(run: PhysicalRun, { place, look }: Requirement): string {
  const choice = `in-${run.panels[place.number - 1]!.inches}`
  return look.kind === 'choose' && look.choices.some(({ id }) => id === choice) ? choice : 'other'
}

/** A splice within a foot of where it belongs is taken to lie there: posts may stand a little out of place. */
const near = 12

function splicePosition(run: PhysicalRun, { layout }: RunModel, number: number): string {
  const start = layout.panels[0]!.fromInches
  const at = run.panels.slice(0, number).reduce((sum, { inches }) => sum + inches, start)
  const splice = layout.splices[number - 1]!
  if (Math.abs(at - splice.alongInches) <= near) return splice.position
  const after = run.posts.findIndex(({ along }) => along > at)
  const [before, next] = [run.posts[after - 1]?.along, run.posts[after]?.along]
  if (before === undefined || next === undefined) return 'elsewhere'
  const close = Math.min(near, (next - before) / 4)
  if (Math.min(at - before, next - at) <= close) return 'post'
  return Math.abs(at - (before + next) / 2) <= close ? 'midspan' : 'elsewhere'
}

export const readingOf = (of: string, answer: Answer, instrument: string | null = null): Reading => ({
  id: `reading of ${of}`,
  of,
  answer,
  instrument,
  uncertainty: null,
  by: 'the referee',
  at: '2016-05-12T10:05:00Z',
  where: null,
  photos: [],
  corrects: null,
  rechecks: null,
  together: null,
})
