import { type Instrument, instruments as shipped } from '../measurement/instruments.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import type { AsBuilt } from './as-built.ts'
import { type Change, withChange } from './change.ts'
import { changesTo, type Fault, type FaultSize, faultSizes, plantableFaults } from './faults.ts'
import { type Random, randomFrom } from './random.ts'
import { type PracticeSite, trueAnswer } from './read-as-built.ts'
import { allowedValues, middleOf, soundAsBuilt } from './sound-as-built.ts'
import { truthOf } from './truth.ts'

/** What a drill is to have; with the run, that is all that it hangs on. */
export interface DrillWish {
  readonly faults: number
  readonly size: FaultSize | 'mixed'
  /** Values at the edge of what is allowed, which nobody should call wrong. */
  readonly decoys: number
  /** Whole, from 0. */
  readonly seed: number
}

/** A fault with all that it makes wrong. */
export interface PlantedFault extends Fault {
  /** Ids of the requirements that are not met because of it, its own first. */
  readonly shows: readonly string[]
}

export interface Drill {
  readonly site: PracticeSite
  readonly faults: readonly PlantedFault[]
  /** Requirements whose value lies at the edge of what is allowed. */
  readonly decoys: readonly string[]
}

/** Streams of one seed, each for one thing, so that another number of decoys leaves the faults as they are. */
const streams = { scatter: 1, faults: 2, decoys: 3 } as const

/**
 * A run with hidden faults: first the kind is drawn, then one of its faults, so that a kind with many places is not more
 * frequent than another. No two touch the same requirement or the same place. There are fewer than wished where the run has
 * no room for more.
 */
export function makeDrill(
  model: RunModel,
  requirements: readonly Requirement[],
  wish: DrillWish,
  instruments: readonly Instrument[] = shipped,
): Drill {
  const sound = soundAsBuilt(model, requirements, instruments)
  const scattered = scatter(sound, model, requirements, instruments, randomFrom(wish.seed, streams.scatter))
  const ground = new Ground({ model, requirements, sound, asBuilt: scattered })
  const faults = plantFaults(ground, wish, instruments)
  const decoys = plantDecoys(ground, wish, instruments)
  return { site: ground.site, faults, decoys }
}

/** The run while things are planted in it, one after the other, each apart from what was planted before. */
class Ground {
  site: PracticeSite
  private readonly touched = new Set<string>()
  private readonly places = new Set<string>()

  constructor(site: PracticeSite) {
    this.site = site
  }

  /** The requirements that have another answer then; null where it would meddle with something that was planted before. */
  touches(changes: readonly Change[], place: string): readonly Requirement[] | null {
    if (this.places.has(place)) return null
    const other = this.with(changes)
    const touched = this.site.requirements.filter(
      (one) => JSON.stringify(trueAnswer(this.site, one)) !== JSON.stringify(trueAnswer(other, one)),
    )
    return touched.some(({ id, place: at }) => this.touched.has(id) || this.places.has(at.id)) ? null : touched
  }

  with(changes: readonly Change[]): PracticeSite {
    const { model, asBuilt } = this.site
    return { ...this.site, asBuilt: changes.reduce((built, change) => withChange(built, change, model), asBuilt) }
  }

  plant(changes: readonly Change[], touched: readonly Requirement[]): void {
    this.site = this.with(changes)
    for (const { id, place } of touched) {
      this.touched.add(id)
      this.places.add(place.id)
    }
  }
}

/** How often a place is drawn again before a drill has fewer faults than wished. */
const mostTries = 200

function plantFaults(ground: Ground, wish: DrillWish, instruments: readonly Instrument[]): readonly PlantedFault[] {
  const { model, requirements, sound } = ground.site
  const random = randomFrom(wish.seed, streams.faults)
  const placeOf = new Map(requirements.map(({ id, place }) => [id, place.id]))
  const bySize = new Map(
    faultSizes.map((size) => [size, byKind(plantableFaults(model, requirements, sound, size, instruments))]),
  )
  const planted: PlantedFault[] = []
  for (let tries = 0; planted.length < wish.faults && tries < mostTries; tries++) {
    const kinds = bySize.get(wish.size === 'mixed' ? random.pick(faultSizes) : wish.size)!
    if (kinds.length === 0) continue
    const fault = random.pick(random.pick(kinds))
    const touched = ground.touches(fault.changes, placeOf.get(fault.requirement)!)
    if (touched === null) continue
    ground.plant(fault.changes, touched)
    const wrong = touched.filter((one) => truthOf(ground.site, one, instruments)?.isRight === false).map(({ id }) => id)
    planted.push({ ...fault, shows: [fault.requirement, ...wrong.filter((id) => id !== fault.requirement)] })
  }
  return planted
}

function byKind(faults: readonly Fault[]): readonly (readonly Fault[])[] {
  const kinds = new Map<string, Fault[]>()
  for (const fault of faults) kinds.set(fault.kind, [...(kinds.get(fault.kind) ?? []), fault])
  return [...kinds.values()]
}

function plantDecoys(ground: Ground, wish: DrillWish, instruments: readonly Instrument[]): readonly string[] {
  const { model, requirements, sound } = ground.site
  const random = randomFrom(wish.seed, streams.decoys)
  const planted: string[] = []
  for (const requirement of random.shuffled(requirements)) {
    if (planted.length >= wish.decoys) break
    const { look, id, place } = requirement
    if (look.kind !== 'measure') continue
    const { low, high, nominal } = allowedValues(requirement, look.limits, instruments)
    const isLow = random.below(2) === 0 && look.limits.low !== 'notStated'
    if (nominal === null && high <= low) continue
    const [changes] = changesTo(model, sound, requirement, look.limits, isLow ? low : high)
    const touched = changes === undefined ? null : ground.touches(changes, place.id)
    if (changes === undefined || touched === null) continue
    const after = ground.with(changes)
    if (touched.some((one) => truthOf(after, one, instruments)?.isRight === false)) continue
    ground.plant(changes, touched)
    planted.push(id)
  }
  return planted
}

/** How far sound values lie from the middle of what is allowed, at most: a third of the way to its edge. Our judgement. */
const scatterShare = 3

/** Heights and values of a run that is sound differ a little from place to place, as they do on the ground. */
function scatter(
  sound: AsBuilt,
  model: RunModel,
  requirements: readonly Requirement[],
  instruments: readonly Instrument[],
  random: Random,
): AsBuilt {
  return requirements.reduce((built, requirement) => {
    const { look, topic } = requirement
    if (look.kind !== 'measure' || ['spacing', 'straightness', 'flare-offset'].includes(topic)) return built
    const allowed = allowedValues(requirement, look.limits, instruments)
    const middle = middleOf(allowed)
    const most = Math.max(0, Math.floor(Math.min(middle - allowed.low, allowed.high - middle) / scatterShare))
    const value = middle + random.below(2 * most + 1) - most
    const [changes] = changesTo(model, sound, requirement, look.limits, value)
    return (changes ?? []).reduce((one, change) => withChange(one, change, model), built)
  }, sound)
}
