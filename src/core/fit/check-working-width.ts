import { feetInchesText } from '../hardware/dimension-text.ts'
import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { exactLength } from '../units/exact-length.ts'
import type { FitCheck, FitFacts } from './fit.ts'
import { exceedingText, fitCheck, reachingText, sheetSource } from './fit-check.ts'

/** Stiffening begins about this far before the hazard. Recalled: state practice. */
const beforeHazardFeet = 25

/** Working width, from the front face of the rail, against the distance to the nearest hazard. */
export function checkWorkingWidth(facts: FitFacts): FitCheck[] {
  const { system, nearest, spacing } = facts
  if (system === null || nearest === null) return []
  const width = system.workingWidths.find((one) => one.spacing === spacing)
  if (width === undefined) return [unstated(system, facts)]
  const short = exactLength(width.inches, 'in') - nearest.clear
  return [
    fitCheck({
      what: `room behind the rail to ${nearest.hazard}, at ${spacing} spacing`,
      meets: short <= 0,
      limit: `at least ${feetInchesText(width.inches)} from the front face of the rail`,
      value: reachingText(nearest.clear),
      ...sheetSource(system, width),
      change: stiffer(system, facts) ?? `move the rail ${exceedingText(short)} farther from ${nearest.hazard}`,
    }),
  ]
}

function unstated(system: LongitudinalSheet, { spacing, nearest }: FitFacts): FitCheck {
  return fitCheck({
    what: `room behind the rail to ${nearest!.hazard}, at ${spacing} spacing`,
    meets: null,
    limit: `not stated for ${spacing} spacing`,
    value: reachingText(nearest!.clear),
    ...sheetSource(system, system.splice),
    change: '',
  })
}

/** The widest closer spacing whose working width fits, and over how much rail; null when none does. */
function stiffer(system: LongitudinalSheet, { nearest, spacing, twoWay }: FitFacts): string | null {
  const closer = { full: ['half', 'quarter'], half: ['quarter'], quarter: [] }[spacing]
  for (const one of closer) {
    const width = system.workingWidths.find((row) => row.spacing === one)
    if (width === undefined || nearest!.clear < exactLength(width.inches, 'in')) continue
    const along = nearest!.length + exactLength(beforeHazardFeet, 'ft') * (twoWay ? 2 : 1)
    const { full } = system.spacings
    const inches = Math.ceil(along / exactLength(full.inches, 'in')) * full.inches
    const steps =
      one === 'quarter'
        ? `, with ${feetInchesText(system.spacings.halfBeforeQuarter.inches)} of half spacing before${twoWay ? ' and after' : ''} it`
        : ''
    return `${one} spacing for ${feetInchesText(inches)}: needs ${feetInchesText(width.inches)}${steps}`
  }
  return null
}
