import type { Dimension } from '../hardware/hardware-sheet.ts'
import { measuresLength } from '../hardware/measures-length.ts'
import { type Doubt, noDoubt } from '../measurement/doubt.ts'
import { exactValue, isSigned, kindOf, type Unit, valueIn } from '../units/quantity-kinds.ts'
import { notProvable } from './height-remedy.ts'
import { againstRule, findingOf, type Judged } from './judged.ts'
import { chooseChange, type HowRead, type Proof, type Room, readableRoom, roomWithin } from './proof.ts'
import type { RemedyStep } from './remedy.ts'
import type { Finding, Measured } from './verdict.ts'

/** What is put right by itself, in the words of its rule. */
export function plainFault(one: Judged, proof: Proof): Finding {
  return findingOf([one], [againstRule(one)], stepsFor(one, proof))
}

function stepsFor({ requirement, verdict }: Judged, proof: Proof): readonly RemedyStep[] {
  const { id, look, remedy: how } = requirement
  const { because } = verdict
  switch (look.kind) {
    case 'choose':
      return [
        {
          kind: 'set right',
          requirement: id,
          how,
          to: { kind: 'choice', choice: look.choices.find(({ right }) => right)!.id },
        },
      ]
    case 'confirm':
      return [{ kind: 'set right', requirement: id, how, to: { kind: 'confirmed' } }]
    case 'record':
      return [{ kind: 'as the rule says', how }]
    case 'measure':
      return because.kind === 'measured'
        ? measuredSteps({ requirement, verdict }, because, look.limits, proof)
        : [{ kind: 'as the rule says', how }]
  }
}

/** A value brought so far inside its limits that the next reading proves it. */
function measuredSteps(
  { requirement, verdict }: Judged,
  because: Measured,
  limits: Dimension<Unit>,
  proof: Proof,
): readonly RemedyStep[] {
  const { id, topic, place, remedy: how } = requirement
  const { unit } = limits
  // It fails on either side, and which way it has to go hangs on the one that nobody said.
  if (because.side === 'not stated')
    return [
      { kind: 'measure first', what: 'side', requirements: [id], from: place.number, to: place.number, using: null },
    ]
  const value = exactValue(because.value, because.unit)
  const wanted = limits.nominal === 'notStated' ? middleOf(limits) - value : exactValue(limits.nominal, unit) - value
  const plan = ({ guard, step }: HowRead) => {
    const room = valuesWithin(limits, guard)
    const change = chooseChange({ low: room.low - value, high: room.high - value }, wanted, step, unit)
    return change === null ? null : { room, change }
  }
  const own = plan(proof.of(verdict, because))
  const would = proof.instrumentsFor(limits).filter((one) => plan(one) !== null)
  const { room, change } = own ??
    (would[0] === undefined ? null : plan(would[0])) ?? { room: valuesWithin(limits, noDoubt), change: wanted }
  const span = readableRoom(limits.low === 'notStated' ? { ...room, low: Number.NEGATIVE_INFINITY } : room, unit)
  const move: RemedyStep =
    topic === 'flare-offset' && measuresLength(limits)
      ? {
          kind: 'move end',
          post: place.number,
          by: valueIn(change, unit),
          unit: limits.unit,
          standsAt: valueIn(value + change, unit),
          holds: span,
        }
      : { kind: 'set right', requirement: id, how, to: { kind: 'value', span, unit } }
  return [move, ...(own === null ? [notProvable([id], would)] : [])]
}

/** Only slopes and angles are ever less than nothing. */
function valuesWithin(limits: Dimension<Unit>, guard: Doubt): Room {
  const room = roomWithin(limits, guard)
  return limits.low === 'notStated' && !isSigned(kindOf(limits.unit)) ? { ...room, low: 0 } : room
}

function middleOf(limits: Dimension<Unit>): number {
  const { low, high } = valuesWithin(limits, noDoubt)
  if (!Number.isFinite(low)) return high
  return Number.isFinite(high) ? (low + high) / 2 : low
}
