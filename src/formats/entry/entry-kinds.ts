import * as z from 'zod/mini'

const text = z.string().check(z.minLength(1), z.maxLength(4000))
const day = z.iso.date({ error: 'a date such as 2017-03-15' })
const moment = z.string().check(z.minLength(16), z.maxLength(40))
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/, { error: 'a sha256 in lower-case hexadecimal' }))
const postNumbers = z.array(z.int().check(z.positive()))

/** Where a device thought it was: what the phone says, never survey grade. Degrees on WGS 84, accuracy in metres. */
const position = z.strictObject({
  latitude: z.number().check(z.minimum(-90), z.maximum(90)),
  longitude: z.number().check(z.minimum(-180), z.maximum(180)),
  accuracy: z.number().check(z.positive()),
  fixedAt: moment,
})

/** A photo, by what it is; its bytes travel apart and are found by their hash. */
const photoBody = z.strictObject({
  sha256: hash,
  type: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  bytes: z.int().check(z.positive()),
  width: z.int().check(z.positive()),
  height: z.int().check(z.positive()),
  /** When it was taken, as its camera or the device says; null when neither does. */
  takenAt: z.nullable(moment),
  position: z.nullable(position),
  /** The requirement it shows; null for the run as a whole. */
  of: z.nullable(text),
  /** The photo that this one was drawn on; null for an original. */
  drawnOn: z.nullable(hash),
  note: z.nullable(text),
})

/** One line of a signature drawn by hand: points in a box 1 wide. */
const stroke = z.array(z.tuple([z.number(), z.number()])).check(z.minLength(1))

/** A person's signature under the run as it stood: what was signed is named by its hash. */
const signOffBody = z.strictObject({
  name: text,
  role: text,
  strokes: z.array(stroke).check(z.minLength(1)),
  /** Hash of the record signed. */
  recordHash: hash,
  /** The last entry that the record took in, so that it can be made again. */
  upTo: text,
  acceptance: z.enum(['acceptable', 'not acceptable', 'not yet known']),
  /** Requirements that were not proven when it was signed. */
  unproven: z.array(text),
  statement: z.nullable(text),
})

/** What was done on one day, and how the open ends were left. */
const dayLogBody = z.strictObject({
  day,
  done: text,
  postsDriven: postNumbers,
  panelsHung: postNumbers,
  crew: z.array(text),
  openEnds: z.enum(['none', 'protected', 'exposed']),
  openEndsNote: z.nullable(text),
})

/** A utility-locate ticket: posts near a mark are warned of, and so is a day outside its dates. */
const locateTicketBody = z.strictObject({
  number: text,
  calledOn: day,
  validFrom: day,
  validThrough: day,
  /** Marks on the ground, inches along the rail from post 1. */
  marks: z.array(z.strictObject({ name: text, alongInches: z.number() })),
})

/** What the body of an entry of each kind is; readings and runs are checked by their own formats. */
export const entryBodies = {
  run: z.unknown(),
  reading: z.unknown(),
  photo: photoBody,
  'sign-off': signOffBody,
  'day-log': dayLogBody,
  'locate-ticket': locateTicketBody,
} as const

export type EntryKind = keyof typeof entryBodies
export type PhotoBody = z.output<typeof photoBody>
export type SignOffBody = z.output<typeof signOffBody>
export type DayLogBody = z.output<typeof dayLogBody>
export type LocateTicketBody = z.output<typeof locateTicketBody>

/**
 * One fact with an author and a time. Never changed: a correction is another entry that names it in `supersedes`. Ids
 * are UUIDv7 made on the device, counted on from what it had seen of the run; the order that counts is that of the ids
 * (`inLogOrder`), the same on every device.
 */
export const entryShape = z.strictObject({
  id: z.string().check(z.minLength(8), z.maxLength(64)),
  run: text,
  kind: z.enum(['run', 'reading', 'photo', 'sign-off', 'day-log', 'locate-ticket']),
  schemaVersion: z.literal(1),
  author: z.string().check(z.maxLength(200)),
  device: text,
  /** The device's own time, with its offset: a claim. */
  capturedAt: moment,
  supersedes: z.nullable(text),
  body: z.unknown(),
})

export type Entry = z.output<typeof entryShape>

/** An entry whose body is known to be of its kind. */
export interface EntryOf<Body> extends Pick<Entry, 'id' | 'author' | 'capturedAt' | 'supersedes'> {
  readonly body: Body
}
