import * as z from 'zod/mini'
import { seenKinds } from '../../core/hardware/hardware-sheet.ts'
import { severities } from '../../core/hardware/severity.ts'
import { devicePositionShape } from '../device-position.ts'
import { entryIdForm } from '../entry-id.ts'
import { form } from '../range/form.ts'
import { day, listOf, moment, ranged, rangedWhole } from '../range/ranged.ts'
import { pieceId } from '../run/layout-shape.ts'
import { drawnFields } from './stroke-shape.ts'

const text = z.string().check(z.minLength(1), z.maxLength(4000))
/** What names something: no control characters, and nothing that no store can hold. */
const name = z
  .string()
  .check(z.minLength(1), z.maxLength(200), z.regex(/^[^\p{Cc}\p{Cs}]*$/u, form('name without controls')))
export const sha256Text = z.string().check(z.regex(/^[0-9a-f]{64}$/, form('sha256')))
const pieceNumbers = listOf(rangedWhole('pieceNumber'), 'names')
/** Id of the version of the run that its person saw; left out where it was the first. */
const seen = z.optional(text)

/** What a camera wrote into its photo of where it was: degrees on the datum that it took, as a rule WGS 84. */
const cameraPosition = z.strictObject({
  latitude: ranged('latitude'),
  longitude: ranged('longitude'),
})

/** A photo, by what it is; its bytes travel apart and are found by their hash. */
const photoBody = z.strictObject({
  sha256: sha256Text,
  type: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  bytes: rangedWhole('photoBytes'),
  width: rangedWhole('photoEdge'),
  height: rangedWhole('photoEdge'),
  /** When it was taken, as its camera or the device says, whatever that says; null when neither does. */
  takenAt: z.nullable(z.string().check(z.minLength(16), z.maxLength(40))),
  /** Where the device that kept it was at the time. */
  position: z.nullable(devicePositionShape),
  /** Where its camera says it was taken: a second witness. */
  cameraPosition: z.optional(cameraPosition),
  /** The requirement it shows; null for the run as a whole. */
  of: z.nullable(text),
  /** The photo of which this one is a copy with marks drawn into it, as was once done; null for an original. */
  drawnOn: z.nullable(sha256Text),
  note: z.nullable(text),
})

/** What was drawn on a photo, beside it. With no strokes all of an earlier entry, which it supersedes, was taken back. */
const photoStrokesBody = z.strictObject({ photo: sha256Text, ...drawnFields })

/** Lines of a signature drawn by hand: each of points in a box 1 wide. */
const strokes = listOf(
  listOf(z.tuple([ranged('signaturePoint'), ranged('signaturePoint')]), 'strokePoints').check(z.minLength(1)),
  'signatureStrokes',
).check(z.minLength(1))

/** How many of them stood; left out for none. */
const freeFindings = z.optional(rangedWhole('pieceNumber'))

/** How a run was judged as it was signed; what was set aside is counted, with the names of those who did. */
const acceptance = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['acceptable', 'not acceptable', 'not yet known']), freeFindings }),
  z.strictObject({
    freeFindings,
    kind: z.literal('acceptable except'),
    setAside: rangedWhole('pieceNumber'),
    by: z.readonly(listOf(text, 'names').check(z.minLength(1))),
  }),
])

/** The same before anything set aside was told apart. */
const acceptanceWord = z.enum(['acceptable', 'not acceptable', 'not yet known'])

/** A person's signature under the run as it stood: what was signed is named by its hash. */
const signOffBody = z.strictObject({
  name: text,
  role: text,
  /** Drawn by hand, or given by typing the name, and then it is nothing else. */
  signature: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('drawn'), strokes }),
    z.strictObject({ kind: z.literal('typed') }),
  ]),
  /** Hash of the record signed, and the rule by which it was computed. */
  recordHash: sha256Text,
  hashRule: z.literal(2),
  /** Id of the run's version, ids of the readings and names of the photos that the record took in: it can be made again. */
  version: text,
  readings: listOf(text, 'readings'),
  photos: listOf(text, 'names'),
  /** Ids of the free findings, and of what closed them; left out where there were none. */
  findings: z.optional(listOf(text, 'names')),
  /** Ids of what was drawn on the photos; left out where there was nothing. */
  photoStrokes: z.optional(listOf(text, 'names')),
  acceptance,
  /** Requirements that were not proven when it was signed. */
  unproven: listOf(text, 'names'),
  statement: z.nullable(text),
})

/** The third version: the hash was computed by the first rule, and the record did not count the photos. */
export const thirdSignOffBody = z.omit(signOffBody, {
  ...({ hashRule: true, version: true, photos: true, findings: true } as const),
  photoStrokes: true,
})

/** The second version: what was set aside did not show in the acceptance. */
export const secondSignOffBody = z.extend(thirdSignOffBody, { acceptance: acceptanceWord })

/** The first version: a typed name stood there as a plain line, and of the readings only the last was named. */
export const firstSignOffBody = z.strictObject({
  name: text,
  role: text,
  strokes,
  recordHash: sha256Text,
  upTo: text,
  acceptance: acceptanceWord,
  unproven: listOf(text, 'names'),
  statement: z.nullable(text),
})

/** What was done on one day, and how the open ends were left. */
const dayLogBody = z.strictObject({
  day,
  done: text,
  version: seen,
  /** Ids of places, which outlive a layout. */
  postsDriven: listOf(pieceId('post'), 'names'),
  panelsHung: listOf(pieceId('panel'), 'names'),
  crew: listOf(text, 'crew'),
  openEnds: z.enum(['none', 'protected', 'exposed']),
  openEndsNote: z.nullable(text),
})

/** The first version: posts and panels by their numbers in the run's first version. */
export const firstDayLogBody = z.extend(z.omit(dayLogBody, { version: true }), {
  postsDriven: pieceNumbers,
  panelsHung: pieceNumbers,
})

const firstMark = z.strictObject({ name: text, alongInches: ranged('alongRail') })

/** A utility-locate ticket: posts near a mark are warned of, and so is a day outside its dates. */
const locateTicketBody = z.strictObject({
  number: text,
  calledOn: day,
  validFrom: day,
  validThrough: day,
  version: seen,
  /** Marks on the ground: the post from which each was measured, and the inches along the rail from there, positive downstream. */
  marks: listOf(z.extend(firstMark, { from: pieceId('post') }), 'marks'),
})

/** The first version: every mark from post 1 of the run's first version. */
export const firstLocateTicketBody = z.extend(z.omit(locateTicketBody, { version: true }), {
  marks: listOf(firstMark, 'marks'),
})

/** That a run is put away from the list, and why; or that it is brought back. */
const archiveBody = z.discriminatedUnion('archived', [
  z.strictObject({ archived: z.literal(true), reason: text }),
  z.strictObject({ archived: z.literal(false) }),
])

/** Something seen that no requirement asks for. */
const freeFindingBody = z.strictObject({
  what: z.enum(seenKinds),
  /** Id of the place. */
  of: text,
  /** How bad it is by the word of its finder; it counts where the sheet says nothing. Left out for not said. */
  severity: z.optional(z.enum(severities)),
  note: z.nullable(text),
  photos: listOf(sha256Text, 'photosOfReading'),
  version: seen,
})

/** How a free finding ended. */
const freeFindingEndBody = z.strictObject({
  /** Id of the entry that it closes. */
  finding: text,
  as: z.enum(['put right', 'not so']),
  note: z.nullable(text),
  photos: listOf(sha256Text, 'photosOfReading'),
})

/** Who sees to a finding, and by when. Of several the last one counts. */
const assignmentBody = z.strictObject({
  /** Id of the finding: of its first requirement, or of the entry of a free one. */
  finding: text,
  owner: z.nullable(text),
  due: z.nullable(day),
})

/** What the body of a new entry of each kind is; readings and runs are checked by their own formats. */
export const entryBodies = {
  run: z.unknown(),
  reading: z.unknown(),
  photo: photoBody,
  'photo-strokes': photoStrokesBody,
  'sign-off': signOffBody,
  'day-log': dayLogBody,
  'locate-ticket': locateTicketBody,
  archive: archiveBody,
  'free-finding': freeFindingBody,
  'free-finding-end': freeFindingEndBody,
  assignment: assignmentBody,
} as const

export type EntryKind = keyof typeof entryBodies
export type PhotoBody = z.output<typeof photoBody>
export type PhotoStrokesBody = z.output<typeof photoStrokesBody>
export type SignOffBody = z.output<typeof signOffBody>
export type FirstSignOffBody = z.output<typeof firstSignOffBody>
export type SecondSignOffBody = z.output<typeof secondSignOffBody>
export type ThirdSignOffBody = z.output<typeof thirdSignOffBody>
export type DayLogBody = z.output<typeof dayLogBody>
export type FirstDayLogBody = z.output<typeof firstDayLogBody>
export type LocateTicketBody = z.output<typeof locateTicketBody>
export type ArchiveBody = z.output<typeof archiveBody>
export type FreeFindingBody = z.output<typeof freeFindingBody>
export type FreeFindingEndBody = z.output<typeof freeFindingEndBody>
export type AssignmentBody = z.output<typeof assignmentBody>
export type FirstLocateTicketBody = z.output<typeof firstLocateTicketBody>

/**
 * One fact with an author and a time. Never changed: a correction is another entry that names it in `supersedes`. Ids
 * are UUIDv7 made on the device, counted on from what it had seen of the run; the order that counts is that of the ids
 * (`inLogOrder`), the same on every device.
 */
export interface Entry {
  readonly id: string
  readonly run: string
  readonly kind: EntryKind
  readonly schemaVersion: number
  readonly author: string
  readonly device: string
  /** The device's own time, with its offset: a claim. */
  readonly capturedAt: string
  readonly supersedes: string | null
  readonly body: unknown
}

/** An entry whose body is known to be of its kind. */
export interface EntryOf<Body> extends Pick<Entry, 'id' | 'author' | 'capturedAt' | 'supersedes'> {
  readonly body: Body
}

const shapeOf = <const K extends EntryKind, const V extends number, B extends z.ZodMiniType>(
  kind: K,
  schemaVersion: V,
  body: B,
) =>
  z.strictObject({
    id: z.string().check(z.regex(entryIdForm, form('UUID'))),
    run: name,
    kind: z.literal(kind),
    schemaVersion: z.literal(schemaVersion),
    author: z.string().check(z.maxLength(200)),
    device: name,
    capturedAt: moment,
    supersedes: z.nullable(name),
    body,
  })

/** An entry with its body, in every version that was ever written: what was recorded opens for ever. */
export const entryShape = z.discriminatedUnion('kind', [
  z.discriminatedUnion('schemaVersion', [shapeOf('run', 1, entryBodies.run), shapeOf('run', 2, entryBodies.run)]),
  z.discriminatedUnion('schemaVersion', [
    shapeOf('reading', 1, entryBodies.reading),
    shapeOf('reading', 2, entryBodies.reading),
    shapeOf('reading', 3, entryBodies.reading),
  ]),
  shapeOf('photo', 1, entryBodies.photo),
  shapeOf('photo-strokes', 1, entryBodies['photo-strokes']),
  z.discriminatedUnion('schemaVersion', [
    shapeOf('sign-off', 1, firstSignOffBody),
    shapeOf('sign-off', 2, secondSignOffBody),
    shapeOf('sign-off', 3, thirdSignOffBody),
    shapeOf('sign-off', 4, entryBodies['sign-off']),
  ]),
  z.discriminatedUnion('schemaVersion', [
    shapeOf('day-log', 1, firstDayLogBody),
    shapeOf('day-log', 2, entryBodies['day-log']),
  ]),
  z.discriminatedUnion('schemaVersion', [
    shapeOf('locate-ticket', 1, firstLocateTicketBody),
    shapeOf('locate-ticket', 2, entryBodies['locate-ticket']),
  ]),
  shapeOf('archive', 1, entryBodies.archive),
  shapeOf('free-finding', 1, entryBodies['free-finding']),
  shapeOf('free-finding-end', 1, entryBodies['free-finding-end']),
  shapeOf('assignment', 1, entryBodies.assignment),
])
