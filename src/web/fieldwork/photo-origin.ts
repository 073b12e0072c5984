import { parse } from 'exifr/dist/lite.esm.mjs'
import type { PhotoBody } from '../../formats/entry/entry-kinds.ts'
import { moment } from '../../formats/range/ranged.ts'

/** What a camera wrote into its photo of when and where it was taken; null for what it did not write. */
export interface PhotoOrigin {
  /** ISO 8601, with the camera's offset from UTC where it wrote one too, in its local time where it did not. */
  readonly takenAt: string | null
  readonly position: NonNullable<PhotoBody['cameraPosition']> | null
}

/** Of a file that is cut off, or that no camera wrote, nothing is known. */
export async function photoOrigin(bytes: ArrayBuffer): Promise<PhotoOrigin> {
  const wanted = { exif: { pick: ['DateTimeOriginal', 'OffsetTimeOriginal'] }, gps: true, reviveValues: false }
  // The library throws on what it cannot read, and there is no other way to ask it.
  const read: unknown = await parse(bytes, wanted).catch(() => undefined)
  const tags = (read ?? {}) as Readonly<Record<string, unknown>>
  return { takenAt: timeOf(tags), position: positionOf(tags) }
}

/** @source Exif 2.32 (CIPA DC-008-2019), 4.6.5: DateTimeOriginal as "YYYY:MM:DD HH:MM:SS", OffsetTimeOriginal as "+HH:MM" */
function timeOf({ DateTimeOriginal, OffsetTimeOriginal }: Readonly<Record<string, unknown>>): string | null {
  const found = /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)/.exec(String(DateTimeOriginal))
  if (found === null) return null
  const offset = /^[+-]\d\d:\d\d/.exec(String(OffsetTimeOriginal))?.[0] ?? ''
  const written = moment.safeParse(`${found[1]}-${found[2]}-${found[3]}T${found[4]}${offset}`)
  return written.success ? written.data : null
}

function positionOf({ latitude, longitude }: Readonly<Record<string, unknown>>): PhotoOrigin['position'] {
  if (typeof latitude !== 'number' || typeof longitude !== 'number') return null
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null
}
