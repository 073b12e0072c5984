import * as z from 'zod/mini'

const text = z.string()
const orNull = z.nullable(z.string())
const ids = z.array(text)
const number = z.int()
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/))

const verdict = z.enum(['meets', 'fails', 'too close', 'unread', 'does not apply'])
const confirmation = z.enum(['published', 'common practice', 'from memory'])

const place = z.strictObject({ name: text, along: text, onRoad: orNull }).check(z.meta({ id: 'PlaceLine' }))

const reading = z
  .strictObject({
    ...{ id: text, of: text, answer: text, instrument: orNull, uncertainty: orNull, by: text, at: text, where: orNull },
    ...{
      note: orNull,
      photos: ids,
      corrects: orNull,
      rechecks: orNull,
      withoutEffect: z.array(text),
      together: orNull,
    },
  })
  .check(z.meta({ id: 'ReadingLine' }))

const requirement = z
  .strictObject({
    ...{ number, id: text, place, must: text, limit: text, readings: z.array(reading) },
    derived: z.nullable(z.strictObject({ value: text, from: orNull })),
    ...{ verdict, reason: text, sheet: text, source: number, confirmation },
  })
  .check(z.meta({ id: 'RequirementLine' }))

/** All that an inspection record says, in the order in which it says it: for who fills a form of their own. */
export const recordFileShape = z.strictObject({
  format: z.literal('lapwise-record-contents/1'),
  language: z.enum(['en', 'es']),
  units: z.nullable(z.enum(['us', 'metric'])),
  hashRule: number,
  title: text,
  run: text,
  titleBlock: z.nullable(
    z.strictObject({
      cells: z.array(z.strictObject({ name: text, value: text })),
      ...{ revisions: z.array(text), seal: orNull },
    }),
  ),
  facts: z.array(z.strictObject({ id: text, name: text, value: text })),
  acceptance: z.strictObject({
    kind: z.enum(['acceptable', 'acceptable except', 'not acceptable', 'not yet known']),
    ...{ text, means: text },
  }),
  setAside: z.array(z.strictObject({ places: text, must: text, because: text, by: text, requirements: ids })),
  counts: z.array(z.strictObject({ verdict, count: number })),
  decisionRule: text,
  sheets: z.array(z.strictObject({ role: text, name: text, id: text, version: text, criteria: text, notice: text })),
  findings: z.array(
    z.strictObject({
      ...{
        number,
        place,
        found: text,
        mustBe: text,
        remedy: text,
        severity: text,
        assigned: orNull,
        requirements: ids,
      },
    }),
  ),
  freeFindings: z.array(
    z.strictObject({
      ...{
        what: text,
        place: z.nullable(place),
        severity: text,
        note: orNull,
        by: text,
        closed: orNull,
        assigned: orNull,
      },
    }),
  ),
  rechecks: z.array(z.strictObject({ finding: text, reading, verdict })),
  unproven: z.array(z.strictObject({ places: text, must: text, why: text, requirements: ids })),
  onMemory: orNull,
  holdPoints: z.array(requirement),
  requirements: z.array(requirement),
  measured: z.array(reading),
  replaced: z.array(z.strictObject({ reading, by: orNull })),
  withoutEffect: z.array(z.strictObject({ reading, what: text })),
  versionReasons: z.array(text),
  askedEarlier: z.strictObject({
    readings: z.array(z.strictObject({ reading, version: text, why: text })),
    photos: z.array(z.strictObject({ photo: text, of: text, by: text, at: orNull, note: orNull, why: text })),
  }),
  unconfirmed: z.array(z.strictObject({ must: text, places: text, sheet: text, source: number, requirements: ids })),
  sources: z.array(z.strictObject({ number, title: text, edition: text })),
  unusual: z.array(text),
  cautions: z.array(text),
  photos: z.array(
    z.strictObject({
      ...{
        number,
        name: text,
        requirement: orNull,
        shows: text,
        taken: text,
        note: orNull,
        drawn: orNull,
        hash: orNull,
      },
      ...{ isHere: z.boolean(), photo: text },
    }),
  ),
  signed: z.array(
    z.strictObject({
      ...{ version: number, name: text, role: text, at: text, acceptance: text, unproven: number, statement: orNull },
      ...{ isTyped: z.boolean(), hash, standing: text },
    }),
  ),
  signatures: z.array(text),
  photosHash: hash,
  hash,
  hashOf: text,
  printed: text,
  printedAt: text,
  author: text,
})

export type RecordFile = z.output<typeof recordFileShape>
