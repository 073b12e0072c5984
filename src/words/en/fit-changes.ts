import type { FitChange } from '../../core/fit/fit-saying.ts'
import { lengthIn } from '../../core/units/exact-length.ts'
import type { Print, Printers } from '../print.ts'
import { exceedingInches } from '../reach.ts'
import { neededTestName } from './hardware.ts'

export const fitChanges: Printers<FitChange> = {
  'take tested hardware': ({ of, needed }) =>
    `a ${of === 'longitudinal' ? 'system' : of} with ${neededTestName(needed)}`,
  'take joining parts': ({ systems, chosen }, print) =>
    `the system ${systems.join(' or ')}, or an end made for ${print.say(chosen)}`,
  'meet adjoining run': ({ height, shiftingPanels }, print) =>
    [
      ...(height === null
        ? []
        : [
            `change height by ${print.length(lengthIn(height.by, 'in'), 'in')} over ${feet(height.overFeet[0], print)} to ${feet(height.overFeet[1], print)} of rail, outside the terminal and its stopping distance`,
          ]),
      ...(shiftingPanels === null
        ? []
        : [
            `one odd panel (${shiftingPanels.map((inches) => print.feetInches(inches)).join(' or ')}) shifts the splices by half a post space`,
          ]),
    ].join('; '),
  'take crashworthy terminal': () => 'a crashworthy terminal at this end',
  'add rail before transition': ({ inches }, print) =>
    `${print.feetInches(inches)} more plain rail between terminal and transition`,
  'add rail': ({ inches }, print) => `${print.feetInches(inches)} more rail`,
  'space posts closer': ({ spacing, overInches, needsInches, half }, print) => {
    const closer = `${spacing} spacing for ${print.feetInches(overInches)}: needs ${print.feetInches(needsInches)}`
    return half === null
      ? closer
      : `${closer}, with ${print.feetInches(half.inches)} of half spacing before${half.at === 'both ends' ? ' and after' : ''} it`
  },
  'move rail away': ({ by, hazard }, print) =>
    `move the rail ${print.feetInches(exceedingInches(by))} farther from ${print.theirs(hazard)}`,
  'grade platform': ({ run, orTangent }) =>
    `grade the platform to 1V:${run}H${orTangent ? `, or take ${tangent}` : ''}`,
  'widen platform behind post 1': ({ length, orTangent }, print) =>
    `${print.feetInches(lengthIn(length, 'in'))} of platform behind post 1${orTangent ? `, or ${tangent}` : ''}`,
  'clear ground': ({ behind, length }, print) =>
    `clear ${print.feetInches(lengthIn(length, 'in'))} behind the ${behind}, or move the end upstream`,
  'flatten foreslope': ({ run }) => `flatten the slope beside the platform to 1V:${run}H`,
  'take longer posts at break': ({ feet: lengths, halfSpacingFeet }, print) =>
    `${longerPosts(lengths, print)} at the break, or ${print.written(`${halfSpacingFeet}-ft`, halfSpacingFeet, 'ft')} posts at half spacing`,
  'widen ground to break': ({ inches, feet: lengths, beforeBreakFeet }, print) =>
    `widen the ground behind the posts to ${print.feetInches(inches)}, or ${longerPosts(lengths, print)} ${feet(beforeBreakFeet, print)} before the break`,
  'change curb': ({ highestInches, railFlush, face }, print) =>
    [
      ...(highestInches === null ? [] : [`a curb of ${print.feetInches(highestInches)}`]),
      ...(railFlush ? ['the rail flush with the curb'] : []),
      ...(face === null ? [] : [curbFace(face.slope)]),
    ].join(' and '),
  'take curb away': () => 'no curb before the terminal',
}

/** `a sloping face of 1V:3H or flatter` */
export const curbFace = (slope: number | null): string =>
  slope === null ? 'a sloping face' : `a sloping face of 1V:${slope}H or flatter`

const tangent = 'a tangent terminal, which needs less room'

const feet = (value: number, print: Print): string => print.written(`${value} ft`, value, 'ft')

/** `8-ft or 9-ft posts` */
const longerPosts = (lengths: readonly number[], print: Print): string =>
  `${lengths.map((one) => print.written(`${one}-ft`, one, 'ft')).join(' or ')} posts`
