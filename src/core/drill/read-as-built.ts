import type { Instrument } from '../measurement/instruments.ts'
import { isOffset } from '../measurement/offset-side.ts'
import type { Answer, MeasuredAnswer } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { exactLength, type Nanometres, nanometresPer } from '../units/exact-length.ts'
import { isSigned, kindOf, type Steps, type Unit } from '../units/quantity-kinds.ts'
import { type AsBuilt, splicesAsBuilt } from './as-built.ts'
import { mostError, ownDoubt, stepOf } from './usual-instrument.ts'

/** A modelled run: how it ought to be, what is asked of it, and how it really is. */
export interface PracticeSite {
  readonly model: RunModel
  readonly requirements: readonly Requirement[]
  /** As the sheets ask. */
  readonly sound: AsBuilt
  readonly asBuilt: AsBuilt
}

/** What is true of a place, before anybody looks or measures. */
export type TrueAnswer =
  | { readonly kind: 'measured'; readonly value: Steps; readonly unit: Unit }
  | Extract<Answer, { readonly kind: 'choice' | 'confirmed' }>

/** The true answer to a requirement; null where the run file decides and nobody can look. An offset is positive away from traffic. */
export function trueAnswer(site: PracticeSite, requirement: Requirement): TrueAnswer | null {
  const { look, id, topic, place } = requirement
  if (look.kind === 'record') return null
  if (look.kind === 'measure') {
    const value = measuredAt(site, place.id, topic)
    return value === null ? stateOf(site, id) : { kind: 'measured', value, unit: look.limits.unit }
  }
  if (topic === 'panel-length') {
    const choice = `in-${pieceAt(site.asBuilt.panels, place.id).inches}`
    const isOffered = look.kind === 'choose' && look.choices.some((one) => one.id === choice)
    return { kind: 'choice', choice: isOffered ? choice : 'other' }
  }
  if (topic === 'splice-position') return { kind: 'choice', choice: splicePosition(site, place.id) }
  return stateOf(site, id)
}

function stateOf({ asBuilt }: PracticeSite, id: string): TrueAnswer {
  const state = asBuilt.states.get(id)
  if (state === undefined) throw new RangeError(`the modelled run has no state of ${id}`)
  return state
}

/**
 * What a length at a place truly is, also of what other values are computed from (`along`, `lateral-offset`); null for a
 * topic that is a state of its own.
 */
export function measuredAt({ model, asBuilt, sound }: PracticeSite, place: string, topic: string): Nanometres | null {
  switch (topic) {
    case 'rail-height':
      return pieceAt(asBuilt.posts, place).railHeight
    case 'stub-height':
      return pieceAt(asBuilt.posts, place).stubHeight
    case 'along':
      return pieceAt(asBuilt.posts, place).along
    case 'lateral-offset':
      return pieceAt(asBuilt.posts, place).away
    case 'flare-offset':
      return flareOffset(model, pieceAt(asBuilt.posts, place).away - pieceAt(sound.posts, place).away, place)
    case 'straightness':
      return Math.abs(pieceAt(asBuilt.panels, place).bow)
    case 'spacing': {
      const i = model.layout.spaces.findIndex(({ id }) => id === place)
      return asBuilt.posts[i + 1]!.along - asBuilt.posts[i]!.along
    }
    default:
      return null
  }
}

function pieceAt<T extends { readonly id: string }>(pieces: readonly T[], place: string): T {
  const piece = pieces.find(({ id }) => id === place)
  if (piece === undefined) throw new RangeError(`the modelled run has no piece ${place}`)
  return piece
}

/** The offset of an end post from the line of rail before its unit: what its sheet names, and how far it stands off that. */
function flareOffset({ layout, first, second }: RunModel, off: Nanometres, place: string): Nanometres {
  const post = pieceAt(layout.posts, place)
  const end = post.unit === 'first' ? first : second
  if (end.kind !== 'unit' || end.sheet.flare === 'none') throw new RangeError(`${place} stands in no flare`)
  const { nominal, low, high, unit } = end.sheet.flare.offset
  const middle = nominal !== 'notStated' ? nominal : ((low === 'notStated' ? 0 : low) + Number(high)) / 2
  return exactLength(middle, unit) + off
}

/** A splice within a foot of where it belongs is seen to lie there: posts may stand a little out of place. Our judgement. */
const near: Nanometres = 12 * nanometresPer.in

function splicePosition({ model: { layout }, asBuilt }: PracticeSite, place: string): string {
  const i = layout.splices.findIndex(({ id }) => id === place)
  const at = splicesAsBuilt(asBuilt, layout)[i]!
  const designed = layout.splices[i]!
  if (Math.abs(at - exactLength(designed.alongInches, 'in')) <= near) return designed.position
  const left = layout.omitted.map(({ alongInches }) => ({ along: exactLength(alongInches, 'in'), stands: false }))
  const posts = [...asBuilt.posts.map(({ along }) => ({ along, stands: true })), ...left].sort(
    (a, b) => a.along - b.along,
  )
  const after = posts.findIndex(({ along }) => along > at)
  const [before, next] = [posts[after - 1], posts[after]]
  if (before === undefined || next === undefined) return 'elsewhere'
  const close = Math.min(near, (next.along - before.along) / 4)
  const nearest = at - before.along < next.along - at ? before : next
  if (Math.abs(at - nearest.along) <= close) return nearest.stands ? 'post' : 'elsewhere'
  return Math.abs(at - (before.along + next.along) / 2) <= close ? 'midspan' : 'elsewhere'
}

/**
 * The reading that somebody takes of a true value: off by `error` standard uncertainties of the instrument, at most
 * `mostError` either way, and rounded to the step to which the instrument is read.
 *
 * @param of  what is read, as a reading names it; an offset is answered with its side
 */
export function readValue(of: string, value: Steps, unit: Unit, instrument: Instrument, error: number): MeasuredAnswer {
  const most = Math.min(mostError, Math.max(-mostError, error))
  const step = stepOf(instrument)
  const off = kindOf(unit) === 'count' ? 0 : most * ownDoubt(instrument, value)
  const steps = Math.round(Math.round((value + off) / step) * step)
  const read = isOffset(of) || steps >= 0 ? steps : isSigned(kindOf(unit)) ? steps : 0
  const answer = { kind: 'measured', value: read, unit, resolution: null } as const
  return isOffset(of) ? { ...answer, value: Math.abs(read), side: read < 0 ? 'toward' : 'away' } : answer
}
