import type { Layout } from '../layout/layout.ts'
import type { Nanometres } from '../units/exact-length.ts'
import { exactLength } from '../units/exact-length.ts'
import type { Steps, Unit } from '../units/quantity-kinds.ts'

/**
 * A run as it really stands, piece by piece, beside the layout that says how it ought to: the one model that drawings show
 * and that readings are taken from. Posts and panels come in the order of the layout and have its ids.
 */
export interface AsBuilt {
  readonly posts: readonly PostAsBuilt[]
  readonly panels: readonly PanelAsBuilt[]
  /** What else is asked of a place and has no piece of its own here, by place and topic, as `post-1/hinge-side`. */
  readonly states: ReadonlyMap<string, StateAsBuilt>
}

export interface PostAsBuilt {
  readonly id: string
  /** Its centre along the rail, from where the centre of post 1 belongs; positive downstream. */
  readonly along: Nanometres
  /** The face of rail at it from the line of the run, extended through the flares; positive away from traffic. */
  readonly away: Nanometres
  /** Top of rail above finish grade at it. */
  readonly railHeight: Nanometres
  /** Top of its lower part above finish grade; null where nothing is asked of one. */
  readonly stubHeight: Nanometres | null
}

export interface PanelAsBuilt {
  readonly id: string
  /** By its effective length, splice centre to splice centre. */
  readonly inches: number
  /** How far its middle stands off the chord between its ends; positive away from traffic. */
  readonly bow: Nanometres
}

/** A state in the words of the requirement that asks for it: the id of a choice, a confirmation, or a value. */
export type StateAsBuilt =
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'confirmed'; readonly yes: boolean }
  | { readonly kind: 'measured'; readonly value: Steps; readonly unit: Unit }

/**
 * Where each splice really lies along the rail: a panel of another length moves every splice after it.
 *
 * @returns as many as the layout has, from where the centre of post 1 belongs
 */
export function splicesAsBuilt({ panels }: AsBuilt, layout: Layout): readonly Nanometres[] {
  let at = exactLength(layout.panels[0]?.fromInches ?? 0, 'in')
  return panels.slice(0, -1).map(({ inches }) => {
    at += exactLength(inches, 'in')
    return at
  })
}
