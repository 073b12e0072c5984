import { describeStationProblem, parseStation } from '../../core/units/station.ts'
import { type Contradiction, repeated } from '../contradiction.ts'
import type { RunShape } from './run-shape.ts'

/** What a run file of the right shape says that does not hold together; empty when all of it does. */
export function contradictionsIn(run: RunShape): readonly Contradiction[] {
  return [
    ...inStation(run),
    ...inStretches(run),
    ...inLengths(run),
    ...inEnds(run),
    ...repeated((run.stock ?? []).map((entry, i) => [`${lengthOf(entry)}`, ['stock', i]])),
    ...repeated(run.obstructions.map(({ name }, i) => [name.trim().toLowerCase(), ['obstructions', i, 'name']])),
    ...repeated(run.instruments.map(({ id }, i) => [id, ['instruments', i, 'id']])),
    ...repeated(run.sheets.map(({ id }, i) => [id, ['sheets', i, 'id']])),
  ]
}

function inStation({ road: { datumStation }, units }: RunShape): Contradiction[] {
  const station = datumStation === null ? null : parseStation(datumStation, units)
  if (station === null || station.ok) return []
  const reason = describeStationProblem(station.error).replace(/^At/, 'at').replace(/\.$/, '')
  return [{ path: ['road', 'datumStation'], expected: `a station (${reason})` }]
}

function inStretches({ need, obstructions, reduced }: RunShape): Contradiction[] {
  const stretches = [
    ...(need ? [{ path: ['need'], ...need }] : []),
    ...obstructions.map(({ from, to }, i) => ({ path: ['obstructions', i], from, to })),
    ...reduced.map(({ from, to }, i) => ({ path: ['reduced', i], from, to })),
  ]
  return stretches
    .filter(({ from, to }) => to <= from)
    .map(({ path, from }) => ({ path: [...path, 'to'], expected: `more than ${from} in, where it begins` }))
}

function inLengths({ stock, standing, decision, mayExtend }: RunShape): Contradiction[] {
  const panels = [
    ...(stock ?? []).map((entry, i) => ({ path: ['stock', i], inches: lengthOf(entry) })),
    ...(standing?.panels ?? []).map((inches, i) => ({ path: ['standing', 'panels', i], inches })),
    ...(decision?.panels ?? []).map((inches, i) => ({ path: ['decision', 'panels', i], inches })),
  ]
  const found: Contradiction[] = panels
    .filter(({ inches }) => inches <= 0)
    .map(({ path }) => ({ path, expected: 'a length of more than 0' }))
  if (mayExtend < 0) found.push({ path: ['mayExtend'], expected: 'a length of at least 0' })
  return found
}

function inEnds({ first, second }: RunShape): Contradiction[] {
  const from = 'sheet' in first ? first.at : first.standingSplice.at
  const to = 'sheet' in second ? second.at : second.standingSplice.at
  if (from === null || to === null || from < to) return []
  const path = 'sheet' in second ? ['second', 'at'] : ['second', 'standingSplice', 'at']
  return [{ path, expected: `more than ${from} in, where the first end is; distances grow downstream` }]
}

const lengthOf = (entry: NonNullable<RunShape['stock']>[number]): number =>
  typeof entry === 'number' ? entry : entry.length
