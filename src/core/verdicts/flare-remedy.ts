import { lengthText } from '../hardware/dimension-text.ts'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { measuredText, sideText } from './describe-reason.ts'
import type { Measured } from './verdict.ts'

/**
 * Which way and how far the end post has to move to stand at the sheet's nominal offset; null where the sheet states
 * none.
 * @param post  name of the end post, as `post 1`
 */
export function flareRemedy(post: string, { value, unit, side }: Measured, { nominal }: Dimension): string | null {
  if (nominal === 'notStated') return null
  const wanted = `${lengthText(nominal, unit)} off the line of the run, away from traffic`
  if (side !== 'stated')
    return `Read again on which side of the line of the run ${post} stands, then move it, the other posts of the flare in proportion, so that it stands ${wanted}.`
  const move = nominal - value
  const way = sideText(move < 0 ? 'toward' : 'away')
  return `Move ${post} by ${measuredText(Math.abs(move), unit)} ${way}, the other posts of the flare in proportion; it then stands ${wanted}.`
}
