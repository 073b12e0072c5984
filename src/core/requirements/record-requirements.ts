import { crashworthySource } from '../hardware/crashworthy-end.ts'
import { sourceSaying } from '../hardware/hardware-saying.ts'
import type { EndSheet, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { severityOfTopic } from '../hardware/severity.ts'
import { findTest, neededTest, testConfirmation, testSource } from '../hardware/tested-criteria.ts'
import type { recordTopics } from './derived-topics.ts'
import type { Place, Requirement } from './requirement.ts'
import type { RunModel } from './run-model.ts'

/** One and the same crash test covers the criteria in force for the work and the speed of the road. */
export function criteriaRequirement(model: RunModel, sheet: HardwareSheet, place: Place): Requirement {
  const hardware = { category: sheet.category, criteria: sheet.criteria }
  const at = { work: model.work, letting: model.letting, speed: model.speed }
  return {
    ...fromRecord(sheet, place, 'criteria'),
    must: { kind: 'must', of: 'criteria' },
    look: { kind: 'record', rule: { kind: 'criteria', hardware, at } },
    how: { kind: 'how to look', of: 'criteria' },
    why: { kind: 'why it matters', of: 'criteria' },
    remedy: { kind: 'if it fails', of: 'criteria', needed: neededTest(sheet.category, at) },
    source: sourceSaying(testSource),
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
    ...fromRecord(sheet, place, 'crashworthy'),
    must: { kind: 'must', of: 'crashworthy', end },
    look: {
      kind: 'record',
      rule: {
        kind: 'crashworthy',
        sheet: { crashworthy, kind },
        exposure: { end, opposingReaches: model.opposingReaches },
      },
    },
    how: { kind: 'how to look', of: 'crashworthy' },
    why: { kind: 'why it matters', of: 'crashworthy' },
    remedy: { kind: 'if it fails', of: 'crashworthy' },
    source: sourceSaying(crashworthySource),
    confirmation: 'published',
  }
}

/** What no reading decides. */
export const fromRecord = (sheet: HardwareSheet, place: Place, topic: (typeof recordTopics)[number]) =>
  ({
    ...{ id: `${place.id}/${topic}`, topic, place, hold: false, maySetAside: false, figure: null },
    ...{ severity: severityOfTopic(sheet, topic), sheet: sheet.id, sheetVersion: sheet.version },
  }) as const
