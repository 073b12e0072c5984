import type { EndSheet, Stated } from '../hardware/hardware-sheet.ts'
import { exactLength, type Nanometres } from '../units/exact-length.ts'
import type { FitFacts } from './fit.ts'
import type { FitCheck } from './fit-check.ts'
import { fitCheck, sheetSource } from './fit-check.ts'
import type { FitChange, FitTopic, FitValue } from './fit-saying.ts'

/** Ground and slope: what the hardware was tested on. */
export function checkGround(facts: FitFacts): FitCheck[] {
  return [...(facts.approach === null ? [] : checkPlatform(facts.approach, facts)), ...checkSlopeBreak(facts)]
}

function checkPlatform(end: EndSheet, { ground }: FitFacts): FitCheck[] {
  const { grading } = end
  if (grading === 'notStated') return []
  const cited = sheetSource(end, grading)
  const orTangent = end.flare !== 'none' && end.flare.offset.nominal !== 'notStated' && end.flare.offset.nominal > 24
  const room = (
    what: FitTopic,
    feet: Stated<number>,
    have: Nanometres | null,
    change: (length: Nanometres) => FitChange,
  ): FitCheck[] => {
    if (feet === 'notStated') return []
    const needed = exactLength(feet, 'ft')
    return [
      fitCheck({
        what,
        meets: have === null ? null : have >= needed,
        limit: { kind: 'room at least', length: needed },
        value: lengthThere(have),
        ...cited,
        change: change(needed),
      }),
    ]
  }
  const { platformSlope } = ground
  const stated = grading.platformSlope
  const run = typeof stated === 'number' ? stated : stated.run
  return [
    fitCheck({
      what: { kind: 'platform of end', of: end.kind },
      meets: platformSlope === null ? null : platformSlope >= run,
      limit: { kind: 'slope or flatter', run },
      value: slopeThere(platformSlope),
      ...(typeof stated === 'number' ? cited : sheetSource(end, stated)),
      change: { kind: 'grade platform', run, orTangent },
    }),
    ...room({ kind: 'level ground behind post 1' }, grading.behindPostOneFeet, ground.behindPostOne, (length) => ({
      kind: 'widen platform behind post 1',
      length,
      orTangent,
    })),
    ...room(
      { kind: 'clear area', extent: 'length' },
      end.gating === false ? 'notStated' : grading.recoveryLengthFeet,
      ground.recoveryLength,
      (length) => ({ kind: 'clear ground', behind: 'end', length }),
    ),
    ...room(
      { kind: 'clear area', extent: 'width' },
      end.gating === false ? 'notStated' : grading.recoveryWidthFeet,
      ground.recoveryWidth,
      (length) => ({ kind: 'clear ground', behind: 'rail', length }),
    ),
    ...besideSlope(ground.besideSlope),
  ]
}

const lengthThere = (have: Nanometres | null): FitValue =>
  have === null ? { kind: 'site does not say' } : { kind: 'length there is', length: have }

const slopeThere = (run: number | null): FitValue =>
  run === null ? { kind: 'site does not say' } : { kind: 'slope there is', run }

/** @source FHWA figure on grading round terminals, quoted in Midwest Roadside Safety Facility public answer 441 */
function besideSlope(have: number | null): FitCheck[] {
  const [run, never] = [3, 1.5]
  return [
    fitCheck({
      what: { kind: 'foreslope beside platform' },
      meets: have === null ? null : have >= run,
      limit: { kind: 'foreslope or flatter', run, never },
      value: slopeThere(have),
      source: { kind: 'figure on grading' },
      confirmation: 'published',
      change: { kind: 'flatten foreslope', run },
    }),
  ]
}

const longerPosts = [8, 9] as const

/** @source public research report 325 and answer 1257: 1 ft to 2 ft from the back of a 6-ft post to the break, 2 ft when the slope beyond is 1V:1H */
function checkSlopeBreak({ ground, system }: FitFacts): FitCheck[] {
  const { breakBehindPost: have, slopeBehind } = ground
  if (system === null || slopeBehind === null || slopeBehind >= 10) return []
  const need = slopeBehind < 2 ? 2 : 1
  return [
    fitCheck({
      what: { kind: 'ground to slope break' },
      meets: have === null ? null : have >= exactLength(need, 'ft'),
      limit: { kind: 'ground at least to break', inches: need * 12, slope: slopeBehind },
      value: lengthThere(have),
      source: { kind: 'reports on slope breaks' },
      confirmation: 'published',
      change:
        slopeBehind >= 2
          ? { kind: 'take longer posts at break', feet: longerPosts, halfSpacingFeet: 7 }
          : { kind: 'widen ground to break', inches: need * 12, feet: longerPosts, beforeBreakFeet: 1 },
    }),
  ]
}
