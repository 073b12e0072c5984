import { crashworthySource } from '../hardware/crashworthy-end.ts'
import type { EndSheet, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { neededTestName } from '../hardware/test-text.ts'
import { findTest, testConfirmation, testSource } from '../hardware/tested-criteria.ts'
import type { Place, Requirement } from './requirement.ts'
import type { RunModel } from './run-model.ts'

/** One and the same crash test covers the criteria in force for the work and the speed of the road. */
export function criteriaRequirement(model: RunModel, sheet: HardwareSheet, place: Place): Requirement {
  const hardware = { category: sheet.category, criteria: sheet.criteria }
  const at = { work: model.work, letting: model.letting, speed: model.speed }
  return {
    ...fromRecord(sheet, place),
    id: `${place.id}/criteria`,
    topic: 'criteria',
    must: 'One crash test of the hardware covers the criteria in force for the work and the speed of the road.',
    look: { kind: 'record', rule: { kind: 'criteria', hardware, at } },
    how: 'Compare letting date, kind of work and speed with the tests on the sheet; nothing has to be measured.',
    why: 'A level reached under older criteria says nothing of the newer ones. Standing hardware may serve out its life, at the speed that its test covers.',
    remedy: `Choose hardware with ${neededTestName(hardware, at)}.`,
    source: testSource,
    confirmation: testConfirmation(hardware, at, findTest(hardware, at)),
  }
}

/**
 * The end unit is crashworthy where traffic can reach it. A run that goes on into one that stands has no end there: it is
 * the other run's.
 */
export function crashworthyRequirement(
  model: RunModel,
  sheet: EndSheet,
  place: Place,
  unit: 'first' | 'second',
): Requirement {
  const { crashworthy, kind } = sheet
  const end = unit === 'first' ? 'approach' : 'departure'
  return {
    ...fromRecord(sheet, place),
    id: `${place.id}/crashworthy`,
    topic: 'crashworthy',
    must:
      end === 'approach'
        ? 'The end that adjacent traffic meets first is crashworthy.'
        : 'The end is crashworthy, or opposing traffic cannot reach it.',
    look: {
      kind: 'record',
      rule: {
        kind: 'crashworthy',
        sheet: { crashworthy, kind },
        exposure: { end, opposingReaches: model.opposingReaches },
      },
    },
    how: 'Compare the sheet of the end with the traffic that can reach it; nothing has to be measured.',
    why: 'An end that is not made to be struck stops a vehicle, spears it or throws it over.',
    remedy: 'Put a crashworthy terminal at this end.',
    source: crashworthySource,
    confirmation: 'published',
  }
}

const fromRecord = ({ id, version }: HardwareSheet, place: Place) =>
  ({ place, hold: false, maySetAside: false, figure: null, sheet: id, sheetVersion: version }) as const
