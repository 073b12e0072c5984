import { feetInchesText } from '../hardware/dimension-text.ts'
import type { EndSheet, Stated } from '../hardware/hardware-sheet.ts'
import { exactLength, type Nanometres } from '../units/exact-length.ts'
import { printLength } from '../units/print-length.ts'
import type { FitCheck, FitFacts } from './fit.ts'
import { fitCheck, reachingText, sheetSource } from './fit-check.ts'

/** Ground and slope: what the hardware was tested on. */
export function checkGround(facts: FitFacts): FitCheck[] {
  return [...(facts.approach === null ? [] : checkPlatform(facts.approach, facts)), ...checkSlopeBreak(facts)]
}

function checkPlatform(end: EndSheet, { ground }: FitFacts): FitCheck[] {
  const { grading } = end
  if (grading === 'notStated') return []
  const cited = sheetSource(end, grading)
  const tangent = 'a tangent terminal, which needs less room'
  const flared = end.flare !== 'none' && end.flare.offset.nominal !== 'notStated' && end.flare.offset.nominal > 24
  const room = (
    what: string,
    feet: Stated<number>,
    have: Nanometres | null,
    change: (length: string) => string,
  ): FitCheck[] => {
    if (feet === 'notStated') return []
    const needed = exactLength(feet, 'ft')
    const length = printLength(needed, 'feet-inches')
    return [
      fitCheck({
        what,
        meets: have === null ? null : have >= needed,
        limit: `at least ${length}`,
        value: have === null ? 'not said' : reachingText(have),
        ...cited,
        change: change(length),
      }),
    ]
  }
  const { platformSlope } = ground
  const stated = grading.platformSlope
  const run = typeof stated === 'number' ? stated : stated.run
  return [
    fitCheck({
      what: `platform before and beside the ${end.kind}`,
      meets: platformSlope === null ? null : platformSlope >= run,
      limit: `1V:${run}H or flatter`,
      value: platformSlope === null ? 'not said' : `1V:${platformSlope}H`,
      ...(typeof stated === 'number' ? cited : sheetSource(end, stated)),
      change: `grade the platform to 1V:${run}H${flared ? `, or take ${tangent}` : ''}`,
    }),
    ...room(
      'level ground behind post 1',
      grading.behindPostOneFeet,
      ground.behindPostOne,
      (length) => `${length} of platform behind post 1${flared ? `, or ${tangent}` : ''}`,
    ),
    ...room(
      'clear area behind the gating end, length',
      end.gating === false ? 'notStated' : grading.recoveryLengthFeet,
      ground.recoveryLength,
      (length) => `clear ${length} behind the end, or move the end upstream`,
    ),
    ...room(
      'clear area behind the gating end, width',
      end.gating === false ? 'notStated' : grading.recoveryWidthFeet,
      ground.recoveryWidth,
      (length) => `clear ${length} behind the rail, or move the end upstream`,
    ),
    ...besideSlope(ground.besideSlope),
  ]
}

function besideSlope(have: number | null): FitCheck[] {
  return [
    fitCheck({
      what: 'foreslope beside the platform',
      meets: have === null ? null : have >= 3,
      limit: '1V:3H or flatter; 1V:1.5H is not acceptable under any circumstance',
      value: have === null ? 'not said' : `1V:${have}H`,
      source: 'FHWA figure on grading round terminals, quoted in Midwest Roadside Safety Facility public answer 441',
      confirmation: 'published',
      change: 'flatten the slope beside the platform to 1V:3H',
    }),
  ]
}

/** @source public research report 325 and answer 1257: 1 ft to 2 ft from the back of a 6-ft post to the break, 2 ft when the slope beyond is 1V:1H */
function checkSlopeBreak({ ground, system }: FitFacts): FitCheck[] {
  const { breakBehindPost: have, slopeBehind } = ground
  if (system === null || slopeBehind === null || slopeBehind >= 10) return []
  const need = slopeBehind < 2 ? 2 : 1
  return [
    fitCheck({
      what: 'ground behind the posts to the slope break, 6-ft posts',
      meets: have === null ? null : have >= exactLength(need, 'ft'),
      limit: `at least ${feetInchesText(need * 12)} to a break to 1V:${slopeBehind}H`,
      value: have === null ? 'not said' : reachingText(have),
      source: 'Midwest Roadside Safety Facility, report on posts at slope breaks (325) and public answer 1257',
      confirmation: 'published',
      change:
        slopeBehind >= 2
          ? '8-ft or 9-ft posts at the break, or 7-ft posts at half spacing'
          : `widen the ground behind the posts to ${feetInchesText(need * 12)}, or 8-ft or 9-ft posts 1 ft before the break`,
    }),
  ]
}
