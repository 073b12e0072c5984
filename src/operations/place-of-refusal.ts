import type { Obstructed } from '../core/layout/layout.ts'
import type { Refusal } from '../core/layout/refusal.ts'
import type { RunFile } from '../formats/run/run-file.ts'

/** The place in a run file from which a refusal follows, as problems of that file name it. */
export function placeOfRefusal(refusal: Refusal, run: RunFile): string {
  switch (refusal.kind) {
    case 'unit post obstructed':
    case 'too many posts obstructed':
    case 'special posts do not fit':
    case 'too near the end unit':
    case 'too many posts moved':
    case 'splice on omitted post':
    case 'post at reduced spacing obstructed':
    case 'nested rail in unit':
      return obstructionAt(run, refusal.obstructions)
    case 'gaps too near':
      return obstructionAt(run, refusal.second)
    case 'posts keep clear':
      return 'clearance'
    case 'not stated at a curb':
      return 'curb'
    case 'reduced part in unit':
    case 'doubled part in unit':
      return 'reduced'
    case 'not in stock':
      return 'stock'
    case 'no panels fit':
      return run.stock === null ? endAt(run) : 'stock'
    case 'hung panel differs':
    case 'hung splice':
    case 'hung length':
    case 'hung too long':
      return 'standing.panels'
    case 'stands elsewhere':
      return 'standing.postOneAt'
    case 'stands otherwise':
      return `standing.${refusal.state}`
    case 'ends do not meet':
    case 'posts do not meet':
      return endAt(run)
    case 'does not cover':
      return refusal.end === 'first' ? placeOfEnd(run, 'first') : placeOfEnd(run, 'second')
    case 'splice position':
    case 'panel not of this unit':
      return 'system'
    default:
      return refusal satisfies never
  }
}

/** Of several obstructions in the way of one gap the first of the file is shown. */
function obstructionAt({ obstructions }: RunFile, inTheWay: Obstructed): string {
  const at = obstructions.findIndex(({ name }) => inTheWay.includes(name))
  return at < 0 ? 'obstructions' : `obstructions[${at}].from`
}

/** Of two ends that are both fixed, the second is the one to move. */
const endAt = (run: RunFile): string => placeOfEnd(run, run.second.atInches === null ? 'first' : 'second')

const placeOfEnd = (run: RunFile, end: 'first' | 'second'): string =>
  run[end].kind === 'standing splice' ? `${end}.standingSplice.at` : `${end}.at`

/** A value of the run file with which this refusal would not stand; null where no single one is known. */
export function lawfulInstead(
  refusal: Refusal,
  run: RunFile,
): { readonly place: string; readonly inches: readonly number[] } | null {
  switch (refusal.kind) {
    case 'ends do not meet': {
      const [from, to] = [run.first.atInches, run.second.atInches]
      if (from === null || to === null) return null
      const lengths = [refusal.nearestShorter, refusal.nearestLonger].filter((one) => one !== null)
      return { place: placeOfEnd(run, 'second'), inches: lengths.map((length) => to + length - refusal.between) }
    }
    case 'does not cover': {
      const at = run[refusal.end].atInches
      if (at === null) return null
      const inches = refusal.end === 'first' ? at - refusal.shortBy : at + refusal.shortBy
      return { place: placeOfEnd(run, refusal.end), inches: [inches] }
    }
    default:
      return null
  }
}
