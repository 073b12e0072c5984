import * as z from 'zod/mini'
import { sha256Text } from '../entry/entry-kinds.ts'
import { photoEndings } from '../entry/photo-endings.ts'
import { listOf, moment, rangedWhole } from '../range/ranged.ts'

/** Number in the format that this program writes and reads; a file of a later one says by it what it needs. */
export const handoverVersion = 1

const named = z.string().check(z.minLength(1), z.maxLength(4000))
const photoType = z.enum(['image/jpeg', 'image/png', 'image/webp'])

/** What a handover says of itself: the part `manifest.json`. */
export const manifestShape = z.strictObject({
  format: z.literal(`lapwise-handover/${handoverVersion}`),
  device: named,
  /** ISO 8601, by the device's clock. */
  writtenAt: moment,
  /** The runs that it carries; an entry of any other is not taken in. */
  runs: listOf(z.strictObject({ id: named, name: named }), 'names'),
  /** Hash of the part `entries.jsonl`. */
  entriesSha256: sha256Text,
  /** The parts `photos/HASH.ENDING`. */
  photos: listOf(
    z.strictObject({ sha256: sha256Text, type: photoType, bytes: rangedWhole('photoBytes') }),
    'photosOfDevice',
  ),
  /** Photos that entries name and whose bytes the device did not have. */
  elsewhere: listOf(sha256Text, 'photosOfDevice'),
})

export type HandoverManifest = z.output<typeof manifestShape>
export type HandoverPhoto = HandoverManifest['photos'][number]

export const manifestName = 'manifest.json'
export const entriesName = 'entries.jsonl'
export const photoName = ({ sha256, type }: Pick<HandoverPhoto, 'sha256' | 'type'>): string =>
  `photos/${sha256}.${photoEndings[type]}`
