import { exactLength, lengthIn } from '../units/exact-length.ts'
import type { Beam, EndSheet, HardwareSheet, LongitudinalSheet, PostMake, SplicePosition } from './hardware-sheet.ts'
import { beamOf, makeOf } from './make.ts'

/** What of hardware can be seen by somebody who stands before it and does not know what it is. Heights and lengths in inches. */
export interface KeyValues {
  readonly 'end of rail': EndSheet['kind']
  readonly 'line of rail': 'leaves the line' | 'in line'
  readonly splices: SplicePosition
  readonly 'rail height': number
  readonly 'block at post 2': boolean
  readonly 'block at post 1': boolean
  readonly cable: 'bearing plate' | 'cable' | 'no cable'
  readonly 'foot of post 1': PostMake['breakaway']
  readonly 'slots in panel 1': boolean
  readonly 'beam of panel 1': Beam['profile']
  readonly 'material of post 1': 'steel' | 'wood'
  readonly 'first space': number
  readonly 'length of panel 1': number
}

export type KeyTrait = keyof KeyValues
export type KeyValue = KeyValues[KeyTrait]

type Trait<T extends KeyTrait> = (sheet: HardwareSheet, shelf: readonly HardwareSheet[]) => readonly KeyValues[T][]

/** Each from what a sheet says; nothing where it does not say. What is easiest to see comes first. */
export const keyTraits: { readonly [T in KeyTrait]: Trait<T> } = {
  'end of rail': ofEnd(({ kind }) => [kind]),
  'line of rail': ofEnd(({ flare }) => (flare === 'none' ? ['in line'] : lineOf(flare.offset))),
  splices: (sheet, shelf) => systemsOf(sheet, shelf).map(({ splice }) => splice.position),
  'rail height': ({ railHeight: { nominal, low, unit } }) => {
    const height = nominal === 'notStated' ? low : nominal
    return height === 'notStated' ? [] : [lengthIn(exactLength(height, unit), 'in')]
  },
  'block at post 2': ofEnd(({ posts }) => posts.slice(1, 2).map(({ block }) => block)),
  'block at post 1': ofEnd(({ posts }) => posts.slice(0, 1).map(({ block }) => block)),
  cable: ofEnd((sheet) => [
    hasFigure(sheet, 'bearing-plate') ? 'bearing plate' : hasFigure(sheet, 'cable-play') ? 'cable' : 'no cable',
  ]),
  'foot of post 1': ofEnd(({ posts }) => posts.slice(0, 1).map((post) => makeOf(post).breakaway)),
  'slots in panel 1': ofEnd(({ panels }) => outermost(panels).map(({ slotted }) => slotted)),
  'beam of panel 1': ofEnd(({ panels }) => outermost(panels).map((panel) => beamOf(panel).profile)),
  'material of post 1': (sheet) => {
    const post = sheet.kind === 'longitudinal' ? sheet.post : sheet.posts[0]
    const material = post === undefined ? 'notStated' : makeOf(post).material
    return material === 'notStated' ? [] : [material]
  },
  'first space': ofEnd(({ posts: [one, two] }) =>
    one === undefined || two === undefined ? [] : [two.along - one.along],
  ),
  'length of panel 1': ofEnd(({ panels }) => outermost(panels).map(({ inches }) => inches)),
}

/** What a trait may be by a sheet, each value once. */
export const valuesOf = (
  trait: KeyTrait,
  sheet: HardwareSheet,
  shelf: readonly HardwareSheet[],
): readonly KeyValue[] => [...new Set<KeyValue>(keyTraits[trait](sheet, shelf))]

function ofEnd<V>(of: (sheet: EndSheet) => readonly V[]): (sheet: HardwareSheet) => readonly V[] {
  return (sheet) => (sheet.kind === 'longitudinal' ? [] : of(sheet))
}

/** From how much on the eye sees that the rail leaves the line of the run: 2 ft, our judgement. */
const seenOffset = exactLength(2, 'ft')

function lineOf({
  nominal,
  low,
  high,
  unit,
}: Extract<EndSheet['flare'], object>['offset']): KeyValues['line of rail'][] {
  const known = [nominal, low, high].find((one) => one !== 'notStated')
  if (known === undefined) return []
  return [exactLength(known, unit) < seenOffset ? 'in line' : 'leaves the line']
}

/** The systems that the sheet is, or joins. */
const systemsOf = (sheet: HardwareSheet, shelf: readonly HardwareSheet[]): readonly LongitudinalSheet[] =>
  sheet.kind === 'longitudinal'
    ? [sheet]
    : shelf.filter((one): one is LongitudinalSheet => one.kind === 'longitudinal' && sheet.joins.includes(one.id))

const hasFigure = ({ parts }: EndSheet, figure: 'bearing-plate' | 'cable-play'): boolean =>
  parts.some(({ rules }) => rules.some((rule) => rule.figure === figure))

/** The panel at the very end: of its own, or the one of several that takes that place. */
const outermost = ({ own, adapters }: EndSheet['panels']) => (own.length > 0 ? own.slice(0, 1) : adapters)
