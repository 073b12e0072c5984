import type { SiteHardware } from '../../core/site/site.ts'
import { toMetres } from '../../core/units/exact-length.ts'
import type { Metres } from '../../core/units/quantity.ts'
import { written } from '../input-problem.ts'
import { lengthFault } from '../range/range-faults.ts'
import type { LengthRangeName } from '../range/ranges.ts'
import { writtenLength } from '../written-length.ts'
import type { SiteFile } from './site-file.ts'
import type { Fault } from './station-text.ts'

/** What the site file says of its hardware, in metres. */
export function hardwareOf(from: SiteFile, long: (n: number) => Metres, faults: Fault[]): SiteHardware {
  const { hardware } = from
  const { ground, adjoining, curb } = hardware
  const small = (stated: number | string, place: string, range: LengthRangeName): Metres => {
    const length = writtenLength(stated, from.units === 'us' ? 'in' : 'mm')
    const expected = length.ok ? lengthFault(range, toMetres(length.value.nanometres)) : length.error
    if (length.ok && expected === null) return toMetres(length.value.nanometres)
    faults.push({ place: `hardware.${place}`, expected: expected!, found: written(stated) })
    return 0
  }
  const orNull = (value: number | null): Metres | null => (value === null ? null : long(value))
  return {
    ...hardware,
    adjoining: adjoining && {
      railHeight: small(adjoining.railHeight, 'adjoining.railHeight', 'railHeight'),
      splice: adjoining.splice,
    },
    ground: {
      platformSlope: ground.platformSlope,
      behindPostOne: orNull(ground.behindPostOne),
      recoveryLength: orNull(ground.recoveryLength),
      recoveryWidth: orNull(ground.recoveryWidth),
      besideSlope: ground.besideSlope,
      breakBehindPost: orNull(ground.breakBehindPost),
      slopeBehind: ground.slopeBehind,
    },
    curb:
      curb === null || curb === 'none'
        ? curb
        : {
            height: small(curb.height, 'curb.height', 'curbHeight'),
            face: curb.face,
            faceSlope: curb.faceSlope,
            toRail: small(curb.toRail, 'curb.toRail', 'curbToRail'),
          },
  }
}
