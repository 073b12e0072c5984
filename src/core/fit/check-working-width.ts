import type { LongitudinalSheet, TestStandard, WorkingWidth } from '../hardware/hardware-sheet.ts'
import { isMashInForce } from '../hardware/tested-criteria.ts'
import { exactLength } from '../units/exact-length.ts'
import type { FitFacts } from './fit.ts'
import type { FitCheck } from './fit-check.ts'
import { fitCheck, sheetSource } from './fit-check.ts'
import type { FitChange, FitTopic, FitValue } from './fit-saying.ts'

/** Stiffening begins about this far before the hazard. Recalled: state practice. */
const beforeHazardFeet = 25

/** Working width, from the front face of the rail, against the distance to the nearest hazard. */
export function checkWorkingWidth(facts: FitFacts): FitCheck[] {
  const { system, nearest, spacing } = facts
  if (system === null || nearest === null) return []
  const standard = governing(system, facts)
  const width = widthOf(system, spacing, standard)
  const what: FitTopic = { kind: 'room behind rail', hazard: nearest.hazard, spacing }
  const value: FitValue = { kind: 'length there is', length: nearest.clear }
  if (width === null || width.inches === 'notStated')
    return [
      fitCheck({
        what,
        meets: null,
        limit: { kind: 'working width not stated', spacing, standard },
        value,
        ...sheetSource(system, width ?? system.splice),
        change: null,
      }),
    ]
  const short = exactLength(width.inches, 'in') - nearest.clear
  return [
    fitCheck({
      what,
      meets: short <= 0,
      limit: { kind: 'working width', inches: width.inches, standard },
      value,
      ...sheetSource(system, width),
      change: stiffer(system, standard, facts) ?? { kind: 'move rail away', by: short, hazard: nearest.hazard },
    }),
  ]
}

/** The standard whose tests the work rests on: where it is not known that NCHRP 350 is enough, MASH. */
const governing = ({ category }: LongitudinalSheet, facts: FitFacts): TestStandard =>
  isMashInForce(category, facts) === false ? 'NCHRP 350' : 'MASH'

/** The sheet's row; where NCHRP 350 is enough and nothing is tested to it, that of MASH. Null when there is none. */
function widthOf(
  system: LongitudinalSheet,
  spacing: WorkingWidth['spacing'],
  standard: TestStandard,
): WorkingWidth | null {
  const rows = system.workingWidths.filter((one) => one.spacing === spacing)
  const of = (wanted: TestStandard) => rows.find((row) => standardOf(row, system) === wanted) ?? null
  return of(standard) ?? (standard === 'NCHRP 350' ? of('MASH') : null)
}

function standardOf({ standard }: WorkingWidth, { criteria }: LongitudinalSheet): TestStandard | null {
  if (standard !== undefined) return standard
  const tested = new Set(criteria.map((one) => one.standard))
  return tested.size === 1 ? [...tested][0]! : null
}

/** The widest closer spacing whose working width is stated and fits, and over how much rail; null when none does. */
function stiffer(
  system: LongitudinalSheet,
  standard: TestStandard,
  { nearest, spacing, twoWay }: FitFacts,
): FitChange | null {
  const closer = ({ full: ['half', 'quarter'], half: ['quarter'], quarter: [] } as const)[spacing]
  for (const one of closer) {
    const width = widthOf(system, one, standard)
    if (width === null || width.inches === 'notStated') continue
    if (nearest!.clear < exactLength(width.inches, 'in')) continue
    const along = nearest!.length + exactLength(beforeHazardFeet, 'ft') * (twoWay ? 2 : 1)
    const { full } = system.spacings
    const overInches = Math.ceil(along / exactLength(full.inches, 'in')) * full.inches
    const { inches } = system.spacings.halfBeforeQuarter
    return {
      kind: 'space posts closer',
      ...{ spacing: one, overInches, needsInches: width.inches },
      half: one === 'quarter' ? { inches, at: twoWay ? 'both ends' : 'begin' } : null,
    }
  }
  return null
}
