import * as z from 'zod/mini'
import { moment, ranged } from './range/ranged.ts'

/** Where a device thought it was: what the phone says, never survey grade. Degrees on WGS 84, accuracy in metres. */
export const devicePositionShape = z.strictObject({
  latitude: ranged('latitude'),
  longitude: ranged('longitude'),
  accuracy: ranged('positionAccuracy'),
  fixedAt: moment,
})

export type DevicePosition = z.output<typeof devicePositionShape>
