import { sheetOf } from '../layout/sheet-of.ts'
import { endSheetOf, type RunModel } from '../requirements/run-model.ts'

/**
 * What every place of the run is, by its id: its kind, the hardware that it belongs to and where it lies from the run's
 * datum, whatever its number. Two versions have the same place where this is the same.
 */
export function placesIn(model: RunModel): ReadonlyMap<string, string> {
  const { layout } = model
  const zero = layout.postOneAtInches
  const sheets = { first: sheetOf(model, 'first').id, run: model.system.id, second: sheetOf(model, 'second').id }
  const key = (...parts: readonly (string | number)[]): string => parts.join(' ')
  const units = layout.posts.map(({ unit }) => unit)
  return new Map([
    ...layout.posts.map(({ id, unit, alongInches }): [string, string] => [
      id,
      key('post', unit, sheets[unit], zero + alongInches),
    ]),
    ...layout.spaces.map(({ id, fromInches, toInches }, i): [string, string] => {
      const [before, after] = [units[i]!, units[i + 1]!]
      const unit = before === after ? before : 'run'
      return [id, key('space', unit, sheets[before], sheets[after], zero + fromInches, zero + toInches)]
    }),
    ...layout.panels.map(({ id, unit, fromInches, toInches }): [string, string] => [
      id,
      key('panel', unit, sheets[unit], zero + fromInches, zero + toInches),
    ]),
    ...layout.splices.map(({ id, unit, alongInches }): [string, string] => [
      id,
      key('splice', unit, sheets[unit], zero + alongInches),
    ]),
    ...(['first', 'second'] as const).map((unit): [string, string] => [
      layout.endIds[unit],
      key('unit', unit, endSheetOf(model, unit)?.id ?? 'standing run'),
    ]),
  ])
}
