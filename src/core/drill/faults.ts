import type { Dimension } from '../hardware/hardware-sheet.ts'
import { type Instrument, instruments as shipped } from '../measurement/instruments.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { exactLength, nanometresPer } from '../units/exact-length.ts'
import { exactValue, isSigned, kindOf, type Steps, type Unit } from '../units/quantity-kinds.ts'
import type { AsBuilt } from './as-built.ts'
import type { Change } from './change.ts'
import { allowedValues, middleOf } from './sound-as-built.ts'
import { guardOf, sureOf, usualInstrument } from './usual-instrument.ts'

/**
 * How far a measured value lies outside its limit: so far that anybody sees it, so far that one reading tells it, or within
 * the doubt of a reading. What is looked at is so or is not, and has no borderline.
 */
export const faultSizes = ['gross', 'clear', 'borderline'] as const
export type FaultSize = (typeof faultSizes)[number]

/** A way in which one place can be built wrong. */
export interface Fault {
  /** The topic of the requirement that it is against: kinds of faults are what sheets and layout ask for. */
  readonly kind: string
  readonly size: FaultSize
  /** The requirement that names it, and by it its place. */
  readonly requirement: string
  readonly changes: readonly Change[]
}

/**
 * Every fault of this size that can be planted in the run, in the order of the requirements: one for every limit that a
 * value can be beyond and for every wrong answer that can be true. Splices are wrong through a panel of another length, not
 * by themselves.
 */
export function plantableFaults(
  model: RunModel,
  requirements: readonly Requirement[],
  sound: AsBuilt,
  size: FaultSize,
  instruments: readonly Instrument[] = shipped,
): readonly Fault[] {
  return requirements.flatMap((requirement): Fault[] => {
    const { id, topic, look } = requirement
    const fault = (changes: readonly Change[]): Fault => ({ kind: topic, size, requirement: id, changes })
    if (look.kind === 'measure')
      return valuesBeyond(requirement, look.limits, size, instruments).flatMap((value) =>
        changesTo(model, sound, requirement, look.limits, value).map(fault),
      )
    if (size === 'borderline' || look.kind === 'record' || topic === 'splice-position') return []
    if (look.kind === 'confirm') return [fault([{ kind: 'state', of: id, to: { kind: 'confirmed', yes: false } }])]
    if (topic === 'panel-length') return otherPanels(model, requirement, size).map((change) => fault([change]))
    return look.choices
      .filter(({ right }) => !right)
      .map((choice) => fault([{ kind: 'state', of: id, to: { kind: 'choice', choice: choice.id } }]))
  })
}

/**
 * A value outside each limit that there is. Borderline is half a guard band outside. Clear is as far as any reading needs,
 * taken with the usual instrument. Gross is a good deal more: two and a half inches of a length, ten guard bands of anything
 * else (our judgement).
 */
function valuesBeyond(
  requirement: Requirement,
  limits: Dimension<Unit>,
  size: FaultSize,
  instruments: readonly Instrument[],
): readonly Steps[] {
  const instrument = usualInstrument(requirement, limits, instruments)
  const kind = kindOf(limits.unit)
  const beyond = (limit: Steps): Steps => {
    // What is counted is not read in part.
    if (kind === 'count') return size === 'gross' ? 2 : 1
    const guard = guardOf(instrument, limit)
    if (size === 'borderline') return Math.round(guard / 2)
    // The doubt of what grows with its value is larger out there.
    const clear = sureOf(instrument, limit + sureOf(instrument, limit))
    return size === 'clear' ? clear : clear + (kind === 'length' ? 2.5 * nanometresPer.in : Math.round(10 * guard))
  }
  const at = (limit: number | 'notStated', outward: 1 | -1): readonly Steps[] => {
    if (limit === 'notStated') return []
    const exact = exactValue(limit, limits.unit)
    const value = exact + outward * beyond(exact)
    // Nothing is built at less than nothing; an offset lies on the other side there.
    return value > 0 || isSigned(kind) || requirement.topic === 'flare-offset' ? [value] : []
  }
  return [...at(limits.low, -1), ...at(limits.high, 1)]
}

/** The ways to build a place so that this value is true there; none where nothing can be moved. */
export function changesTo(
  model: RunModel,
  sound: AsBuilt,
  requirement: Requirement,
  limits: Dimension<Unit>,
  value: Steps,
): readonly (readonly Change[])[] {
  const { id, topic, place } = requirement
  switch (topic) {
    case 'rail-height':
      return [[{ kind: 'height', post: place.id, of: 'railHeight', to: value }]]
    case 'stub-height':
      return [[{ kind: 'height', post: place.id, of: 'stubHeight', to: value }]]
    case 'flare-offset': {
      const nominal = middleOf(allowedValues(requirement, limits, shipped))
      return [[{ kind: 'end away', post: place.id, by: value - nominal }]]
    }
    case 'straightness':
      return [[{ kind: 'bow', panel: place.id, to: value }]]
    case 'spacing':
      return postsMoved(model, sound, place.id, value)
    default:
      return [[{ kind: 'state', of: id, to: { kind: 'measured', value, unit: limits.unit } }]]
  }
}

/** The post after the space moved alone, and with it all posts beyond; posts of a run that stands stay. */
function postsMoved({ layout }: RunModel, sound: AsBuilt, space: string, value: Steps): readonly Change[][] {
  const i = layout.spaces.findIndex(({ id }) => id === space)
  const { fromInches, toInches } = layout.spaces[i]!
  const by = value - exactLength(toInches - fromInches, 'in')
  const [after, last] = [sound.posts[i + 1]!, sound.posts.at(-1)!]
  const move = (to: string): Change[] => [{ kind: 'posts along', from: after.id, to, by }]
  const isFree = (from: number): boolean => layout.posts.slice(from).every(({ state }) => state !== 'standing')
  const isAlone = after !== last && layout.posts[i + 1]!.state !== 'standing'
  return [...(isAlone ? [move(after.id)] : []), ...(isFree(i + 1) ? [move(last.id)] : [])]
}

/** Another panel of those that one can choose from: gross differs by the most, clear by the least. */
function otherPanels({ layout }: RunModel, { look, place }: Requirement, size: FaultSize): readonly Change[] {
  if (look.kind !== 'choose') throw new RangeError('a panel length is chosen')
  const { inches } = layout.panels.find(({ id }) => id === place.id)!
  const others = look.choices
    .filter(({ right, id }) => !right && id !== 'other')
    .map(({ id }) => Number(id.replace('in-', '')))
    .sort((a, b) => Math.abs(a - inches) - Math.abs(b - inches) || a - b)
  const other = size === 'gross' ? others.at(-1) : others[0]
  return other === undefined ? [] : [{ kind: 'panel', panel: place.id, inches: other }]
}
