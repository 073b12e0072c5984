import * as z from 'zod/mini'
import { railLength } from '../length-field.ts'
import { placeIdForm } from '../range/form.ts'
import { listOf, rangedWhole } from '../range/ranged.ts'

const text = z.string().check(z.minLength(1))
const unit = z.enum(['first', 'run', 'second'])
const obstructed = z.union([text, listOf(text, 'names').check(z.minLength(2))])
const omissionRule = z.enum(['single', 'long span', 'nested span'])

/** The id of a place: kind and number of the version that first had it, and after a tilde the mark of a later version. */
const placeId = (kind: string) =>
  z.string().check(z.regex(new RegExp(`^${kind}(~[0-9a-z]+)?$`), placeIdForm(kind.replace('-\\d+', '-9'))))

/** The same of a post, space, panel or splice. */
export const pieceId = (kind: string) => placeId(`${kind}-\\d+`)

/** A chosen layout, complete. Lengths are inches along the rail from the centre of post 1. */
export const layoutShape = z.strictObject({
  postOneAt: railLength,
  countsFrom: z.nullable(railLength),
  countsTo: z.nullable(railLength),
  firstEnd: placeId('first'),
  secondEnd: placeId('second'),
  posts: listOf(
    z.strictObject({
      id: pieceId('post'),
      along: railLength,
      kind: text,
      block: z.boolean(),
      unit,
      ownNumber: z.nullable(rangedWhole('sheetNumber')),
      state: z.enum(['regular', 'moved', 'special', 'standing']),
    }),
    'posts',
  ).check(z.minLength(2)),
  spaces: listOf(pieceId('space'), 'posts'),
  panels: listOf(
    z.strictObject({
      id: pieceId('panel'),
      from: railLength,
      to: railLength,
      unit,
      role: z.enum(['own', 'adapter', 'standard', 'converting', 'end only', 'hung']),
      ownNumber: z.nullable(rangedWhole('sheetNumber')),
      nested: z.boolean(),
    }),
    'panels',
  ).check(z.minLength(1)),
  splices: listOf(
    z.strictObject({ id: pieceId('splice'), at: railLength, position: z.enum(['post', 'midspan']), unit }),
    'panels',
  ),
  omitted: listOf(z.strictObject({ along: railLength, obstruction: obstructed, rule: omissionRule }), 'posts'),
  asCounted: z.optional(z.enum(['posts placed', 'posts only counted'])),
})

export type LayoutShape = z.output<typeof layoutShape>

/** A version, and what became of it in the next. */
export const earlierShape = listOf(
  z.strictObject({
    id: text,
    gone: listOf(text, 'names'),
    askedOtherwise: listOf(text, 'names'),
    because: z.optional(text),
  }),
  'versions',
)
