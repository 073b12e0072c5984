import { halfPostInches, usualClearanceInches } from '../../core/layout/post-clearance.ts'
import { toMetres } from '../../core/units/exact-length.ts'
import { longestRunInches } from '../../core/units/longest-run.ts'
import { parseStation } from '../../core/units/station.ts'
import { type Contradiction, repeated } from '../contradiction.ts'
import { doubtFault } from '../range/quantity-range.ts'
import { lengthFault, longestRun, numberFault } from '../range/range-faults.ts'
import { contradictionsInCount } from './counted-sense.ts'
import type { RunShape } from './run-shape.ts'
import { contradictionsInVersion } from './version-sense.ts'

/** What a run file of the right shape says that does not hold together; empty when all of it does. */
export function contradictionsIn(run: RunShape): readonly Contradiction[] {
  return [
    ...inStation(run),
    ...inTraffic(run),
    ...inStretches(run),
    ...inLengths(run),
    ...inLeftOut(run),
    ...inFlare(run),
    ...inEnds(run),
    ...inLongest(run),
    ...inInstruments(run),
    ...repeated((run.stock ?? []).map((entry, i) => [`${lengthOf(entry)}`, ['stock', i]])),
    ...repeated(run.obstructions.map(({ name }, i) => [name.trim().toLowerCase(), ['obstructions', i, 'name']])),
    ...repeated(run.instruments.map(({ id }, i) => [id, ['instruments', i, 'id']])),
    ...repeated(run.sheets.map(({ id }, i) => [id, ['sheets', i, 'id']])),
    ...contradictionsInCount(run),
    ...contradictionsInVersion(run),
  ]
}

function inStation({ road: { datumStation }, units }: RunShape): Contradiction[] {
  const station = datumStation === null ? null : parseStation(datumStation, units)
  if (station === null) return []
  if (station.ok) {
    const beyond = lengthFault('station', toMetres(station.value))
    return beyond === null ? [] : [{ path: ['road', 'datumStation'], expected: beyond }]
  }
  return [{ path: ['road', 'datumStation'], expected: { kind: 'a station', not: station.error } }]
}

function inTraffic({ road }: RunShape): Contradiction[] {
  if (road.traffic !== 'one-way' || road.opposingReaches !== true) return []
  return [{ path: ['road', 'opposingReaches'], expected: { kind: 'no opposing traffic' } }]
}

function inStretches({ need, obstructions, reduced }: RunShape): Contradiction[] {
  const stretches = [
    ...(need ? [{ path: ['need'], ...need }] : []),
    ...obstructions.map(({ from, to }, i) => ({ path: ['obstructions', i], from, to })),
    ...reduced.map(({ from, to }, i) => ({ path: ['reduced', i], from, to })),
  ]
  return stretches
    .filter(({ from, to }) => to <= from)
    .map(({ path, from }) => ({ path: [...path, 'to'], expected: { kind: 'beyond start', inches: from } }))
}

function inFlare({ flare }: RunShape): Contradiction[] {
  if (flare === null) return []
  const { firstFrom, secondFrom } = flare
  if (firstFrom === null && secondFrom === null) return [{ path: ['flare'], expected: { kind: 'start of flare' } }]
  return firstFrom === null || secondFrom === null || firstFrom < secondFrom
    ? []
    : [
        {
          path: ['flare', 'secondFrom'],
          expected: { kind: 'beyond first flare', inches: firstFrom },
        },
      ]
}

/** A post is left out only where something is in its way, or nearer than posts keep clear. */
function inLeftOut({ standing, obstructions, clearance }: RunShape): Contradiction[] {
  const apart = halfPostInches + (clearance ?? usualClearanceInches)
  return (standing?.leftOut ?? []).flatMap((at, i): Contradiction[] =>
    obstructions.some(({ from, to }) => at > from - apart && at < to + apart)
      ? []
      : [{ path: ['standing', 'leftOut', i], expected: { kind: 'within obstruction' } }],
  )
}

function inLengths({ stock, standing, decision, mayExtend, clearance }: RunShape): Contradiction[] {
  const panels = [
    ...(stock ?? []).map((entry, i) => ({ path: ['stock', i], inches: lengthOf(entry) })),
    ...(standing?.panels ?? []).map((inches, i) => ({ path: ['standing', 'panels', i], inches })),
    ...(decision?.panels ?? []).map((inches, i) => ({ path: ['decision', 'panels', i], inches })),
  ]
  const found: Contradiction[] = panels.flatMap(({ path, inches }) => {
    const expected = numberFault('panel', inches)
    return expected === null ? [] : [{ path, expected }]
  })
  if (clearance !== undefined && clearance < 0)
    found.push({ path: ['clearance'], expected: { kind: 'length from zero' } })
  if (mayExtend < 0) found.push({ path: ['mayExtend'], expected: { kind: 'length from zero' } })
  if (mayExtend > longestRunInches)
    found.push({ path: ['mayExtend'], expected: { kind: 'at most inches', inches: longestRunInches } })
  return found
}

function inEnds({ first, second }: RunShape): Contradiction[] {
  const [from, to] = [placeOf(first), placeOf(second)]
  if (from === null || to === null || from < to) return []
  const path = 'standingSplice' in second ? ['second', 'standingSplice', 'at'] : ['second', 'at']
  return [{ path, expected: { kind: 'beyond first end', inches: from } }]
}

const placeOf = (end: RunShape['first']): number | null => ('standingSplice' in end ? end.standingSplice.at : end.at)

/** What the run would have to be, were it laid out, longer than one run may be. */
function inLongest({ first, second, need, standing, decision }: RunShape): Contradiction[] {
  const sum = (panels: readonly number[] | undefined): number => panels?.reduce((all, inches) => all + inches, 0) ?? 0
  const [from, to] = [placeOf(first), placeOf(second)]
  const lengths: readonly (readonly [Contradiction['path'], number])[] = [
    [['need', 'to'], need === null ? 0 : need.to - need.from],
    [['second', 'standingSplice' in second ? 'standingSplice' : 'at'], from === null || to === null ? 0 : to - from],
    [['standing', 'panels'], sum(standing?.panels)],
    [['decision', 'panels'], sum(decision?.panels)],
  ]
  return lengths.filter(([, inches]) => inches > longestRunInches).map(([path]) => ({ path, expected: longestRun }))
}

function inInstruments({ instruments }: RunShape): Contradiction[] {
  return instruments.flatMap(({ standardUncertainty, relativeUncertainty, readTo, unit }, i) => {
    // All of it may grow with the reading, and what is counted may have none.
    const mayBeNothing = relativeUncertainty !== undefined || unit === 'count'
    const faults = [
      [
        'standardUncertainty',
        standardUncertainty === 0 && mayBeNothing ? null : doubtFault('uncertainty', standardUncertainty, unit),
      ],
      ['readTo', doubtFault('resolution', readTo, unit)],
    ] as const
    return faults.flatMap(([field, expected]) =>
      expected === null ? [] : [{ path: ['instruments', i, field], expected }],
    )
  })
}

const lengthOf = (entry: NonNullable<RunShape['stock']>[number]): number =>
  typeof entry === 'number' ? entry : entry.length
