import * as z from 'zod/mini'
import { units } from '../../core/units/quantity-kinds.ts'
import { devicePositionShape } from '../device-position.ts'
import { railLength, stretchFrom, stretchTo } from '../length-field.ts'
import { form } from '../range/form.ts'
import { day, listOf, ranged, rangedWhole } from '../range/ranged.ts'
import { sheetSchema } from '../sheet/sheet-file.ts'
import { earlierShape, layoutShape } from './layout-shape.ts'
import { madeOfShape } from './made-of.ts'

const text = z.string().check(z.minLength(1))
const sheetId = text

const end = z
  .union(
    [
      z.strictObject({ sheet: sheetId, at: z._default(z.nullable(railLength), null) }),
      z.strictObject({
        standingSplice: z.strictObject({ at: railLength, position: z.enum(['post', 'midspan']) }),
      }),
      z.strictObject({
        unknown: z.enum(['no sheet fits', 'not looked at']),
        at: z._default(z.nullable(railLength), null),
        posts: z._default(rangedWhole('pieceCount'), 0),
        panels: z._default(rangedWhole('pieceCount'), 0),
      }),
    ],
    form('sheet or standing splice'),
  )
  .check(z.meta({ id: 'RunEnd' }))

const road = z.strictObject({
  route: z._default(z.nullable(text), null),
  side: z._default(z.nullable(z.enum(['right', 'left'])), null),
  datumStation: z._default(z.nullable(text), null),
  speed: z._default(z.nullable(ranged('speed')), null),
  traffic: z._default(z.nullable(z.enum(['two-way', 'one-way', 'divided'])), null),
  opposingReaches: z._default(z.nullable(z.boolean()), null),
  position: z.optional(devicePositionShape),
})

const flare = z.strictObject({
  rate: ranged('flareRate'),
  firstFrom: z._default(z.nullable(railLength), null),
  secondFrom: z._default(z.nullable(railLength), null),
})

const panels = listOf(railLength, 'panels')

const titleBlock = z.strictObject({
  agency: z.optional(text),
  contract: z.optional(text),
  drawn: z.optional(text),
  checked: z.optional(text),
  approved: z.optional(text),
  seal: z.optional(z.boolean()),
  revisions: z.optional(
    listOf(
      z.strictObject({
        date: day,
        what: text,
        replacedDate: z.optional(day),
        replacedHash: z.optional(text),
      }),
      'revisions',
    ),
  ),
})

/** A run file as it is written, with defaults filled in and lengths as inches. */
export const runShape = z
  .strictObject({
    format: z.enum(['lapwise-run/1', 'lapwise-run/2']),
    version: z.optional(text),
    earlier: z.optional(earlierShape),
    layout: z.optional(layoutShape),
    name: text,
    project: z.optional(text),
    titleBlock: z.optional(titleBlock),
    units: z._default(z.enum(['us', 'metric']), 'us'),
    road: z.prefault(road, {}),
    work: z._default(z.nullable(z.enum(['new', 'standing'])), null),
    letting: z._default(z.nullable(day), null),
    system: sheetId,
    first: end,
    second: end,
    need: z._default(z.nullable(z.strictObject({ from: stretchFrom, to: stretchTo })), null),
    flare: z._default(z.nullable(flare), null),
    stock: z._default(
      z.nullable(
        listOf(
          z.union([railLength, z.strictObject({ length: railLength, count: rangedWhole('panelCount') })]),
          'stock',
        ).check(z.minLength(1)),
      ),
      null,
    ),
    obstructions: z._default(
      listOf(z.strictObject({ name: text, from: stretchFrom, to: stretchTo }), 'obstructions'),
      [],
    ),
    clearance: z.optional(railLength),
    curb: z.optional(z.enum(['present', 'none'])),
    reduced: z._default(
      listOf(
        z.strictObject({
          from: stretchFrom,
          to: stretchTo,
          spacing: z.enum(['full', 'half', 'quarter']),
          nested: z._default(z.boolean(), false),
        }),
        'reduced',
      ),
      [],
    ),
    standing: z._default(
      z.nullable(
        z.strictObject({
          postOneAt: railLength,
          panels,
          postsDriven: rangedWhole('pieceCount'),
          leftOut: z.optional(listOf(railLength, 'posts')),
          moved: z.optional(listOf(railLength, 'posts')),
          special: z.optional(listOf(railLength, 'posts')),
        }),
      ),
      null,
    ),
    counted: z.optional(
      z.strictObject({
        panels: panels.check(z.minLength(1)),
        posts: z.union([
          rangedWhole('pieceCount').check(z.minimum(2)),
          listOf(railLength, 'posts').check(z.minLength(2)),
        ]),
      }),
    ),
    mayExtend: z._default(railLength, 600),
    decision: z._default(
      z.nullable(z.strictObject({ postOneAt: railLength, panels: panels.check(z.minLength(1)) })),
      null,
    ),
    decisionRule: z._default(
      z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('guard band'), multiple: ranged('guardBand') }),
        z.strictObject({ kind: z.literal('simple') }),
      ]),
      { kind: 'guard band', multiple: 1 },
    ),
    instruments: z._default(
      listOf(
        z.strictObject({
          id: text,
          name: text,
          standardUncertainty: ranged('instrumentUncertainty'),
          relativeUncertainty: z.optional(ranged('relativeUncertainty')),
          unit: z.enum(units),
          readTo: ranged('instrumentStep'),
          source: text,
          confirmation: z.enum(['published', 'common practice', 'from memory']),
        }),
        'instruments',
      ),
      [],
    ),
    sheets: z._default(listOf(z.lazy(sheetSchema), 'sheets'), []),
    madeOf: z.optional(madeOfShape),
  })
  .check(
    z.meta({
      oneOf: [
        { properties: { format: { const: 'lapwise-run/1' }, version: false, earlier: false, layout: false } },
        { properties: { format: { const: 'lapwise-run/2' } }, required: ['version', 'earlier', 'layout', 'sheets'] },
      ],
    }),
  )

export type RunShape = z.output<typeof runShape>
