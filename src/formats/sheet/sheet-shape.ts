import * as z from 'zod/mini'
import { figureKinds, seenKinds } from '../../core/hardware/hardware-sheet.ts'
import { severities } from '../../core/hardware/severity.ts'
import { languages } from '../../core/language.ts'
import { lengthUnits, units } from '../../core/units/quantity-kinds.ts'
import { sheetInchNumber } from '../length-field.ts'
import { once } from '../once.ts'
import { form } from '../range/form.ts'
import { day, listOf, ranged, rangedWhole } from '../range/ranged.ts'

/**
 * The shape of a hardware sheet; what fits together inside it is checked by `sheetSchema`. It is large, and most files
 * hold no sheet of their own.
 */
export const sheetShape = once(() => {
  const text = z.string().check(z.minLength(1))
  const slug = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, form('slug')))
  const whole = rangedWhole('sheetNumber')
  const notStated = z.literal('notStated')
  const inchesFromZero = sheetInchNumber.check(z.nonnegative())
  const someInches = sheetInchNumber.check(z.positive())

  const cited = {
    source: text,
    confirmation: z.enum(['published', 'common practice', 'from memory']).check(z.meta({ id: 'Confirmation' })),
    checked: z.optional(z.strictObject({ by: text, page: text, on: day }).check(z.meta({ id: 'Checked' }))),
  }

  const stated = z.union([ranged('dimension'), notStated])

  const limits = {
    nominal: stated,
    low: stated,
    high: stated,
    role: z.enum(['floor', 'ceiling', 'centre']),
    measured: text,
    ...cited,
  }
  const dimension = z.strictObject({ ...limits, unit: z.enum(lengthUnits) }).check(z.meta({ id: 'Dimension' }))
  const measured = z.strictObject({ ...limits, unit: z.enum(units) }).check(z.meta({ id: 'Limits' }))

  const citedInches = z.strictObject({ inches: someInches, ...cited }).check(z.meta({ id: 'CitedInches' }))
  const citedInchesFromZero = z
    .strictObject({ inches: inchesFromZero, ...cited })
    .check(z.meta({ id: 'CitedInchesFromZero' }))

  const numbers = listOf(whole, 'sheetParts').check(z.minLength(1))
  const placeSelector = z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('posts'), numbers }),
      z.strictObject({ kind: z.literal('panels'), numbers }),
      z.strictObject({ kind: z.literal('each post') }),
      z.strictObject({ kind: z.literal('each splice') }),
      z.strictObject({ kind: z.literal('unit') }),
    ])
    .check(z.meta({ id: 'PlaceSelector' }))

  const look = z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('measure'), limits: measured }),
      z.strictObject({
        kind: z.literal('choose'),
        choices: listOf(z.strictObject({ id: slug, label: text, right: z.boolean() }), 'sheetParts').check(
          z.minLength(2),
        ),
      }),
      z.strictObject({ kind: z.literal('confirm') }),
    ])
    .check(z.meta({ id: 'Look' }))

  const shows = z
    .strictObject({
      present: z.optional(z.boolean()),
      wrongWasher: z.optional(z.boolean()),
      set: z.optional(z.enum(['upper', 'lower'])),
      toward: z.optional(z.enum(['head', 'away'])),
      over: z.optional(z.enum(['upstream', 'downstream'])),
      splice: z.optional(z.enum(['post', 'midspan'])),
      plate: z.optional(z.strictObject({ upInches: someInches, downInches: someInches })),
      fixing: z.optional(z.enum(['retainer', 'seat'])),
      breakaway: z.optional(z.enum(['hinge', 'other', 'none'])),
    })
    .check(z.meta({ id: 'Shown' }))

  const picture = z
    .strictObject({
      type: z.enum(['image/jpeg', 'image/png', 'image/webp']),
      // What is none is not looked at further.
      base64: z.base64({ ...form('base64'), abort: true }),
      alt: text,
    })
    .check(z.meta({ id: 'RulePicture' }))

  const rule = z
    .strictObject({
      id: slug,
      at: placeSelector,
      must: text,
      look,
      how: text,
      why: text,
      remedy: text,
      hold: z.boolean(),
      figure: z.nullable(z.enum(figureKinds)),
      shows: z.optional(shows),
      picture: z.optional(picture),
      ...cited,
    })
    .check(z.meta({ id: 'SheetRule' }))

  const make = z
    .strictObject({ material: z.enum(['steel', 'wood', 'notStated']), breakaway: z.enum(['hinge', 'other', 'none']) })
    .check(z.meta({ id: 'PostMake' }))
  const beam = z
    .strictObject({
      profile: z.enum(['W', 'thrie', 'W to thrie']),
      gauge: z.literal([10, 12]),
      layers: z.literal([1, 2]),
    })
    .check(z.meta({ id: 'Beam' }))

  const post = z
    .strictObject({
      number: whole,
      along: inchesFromZero,
      kind: text,
      make: z.optional(make),
      block: z.boolean(),
      railBolted: z.union([z.boolean(), notStated]),
      hingeSide: z.enum(['upstream', 'downstream', 'none', 'notStated']),
      soilTube: z.union([z.boolean(), notStated]),
      slots: z.union([
        z.strictObject({ set: z.enum(['upper', 'lower']), side: z.enum(['upstream', 'downstream']) }),
        z.enum(['none', 'notStated']),
      ]),
      stub: z.union([dimension, z.literal('none')]),
      ...cited,
    })
    .check(z.meta({ id: 'SheetPost' }))

  const panel = z
    .strictObject({ inches: someInches, name: text, beam: z.optional(beam), slotted: z.boolean(), ...cited })
    .check(z.meta({ id: 'SheetPanel' }))

  const severity = z
    .strictObject({
      severity: z.enum(severities),
      topics: listOf(slug, 'sheetParts'),
      seen: listOf(z.enum(seenKinds), 'sheetParts'),
      ...cited,
    })
    .check(z.meta({ id: 'SeverityRule' }))

  const common = {
    format: z.literal('lapwise-sheet/1'),
    id: slug,
    version: text,
    basedOn: z.optional(z.strictObject({ id: slug, version: text })),
    language: z.optional(z.enum(languages)),
    translations: z.optional(z.partialRecord(z.enum(languages), z.record(text, text))),
    earlierTranslations: z.optional(
      z.partialRecord(z.enum(languages), z.record(text, z.strictObject({ text, said: text }))),
    ),
    name: text,
    notice: text,
    sources: z.record(text, z.strictObject({ title: text, edition: text })),
    category: z.enum(['W-beam barrier', 'W-beam terminal', 'transition', 'other longitudinal barrier']),
    criteria: listOf(
      z.strictObject({
        standard: z.enum(['NCHRP 350', 'MASH']),
        edition: z.int().check(z.minimum(1900), z.maximum(2100)),
        testLevel: z.int().check(z.minimum(1), z.maximum(6)),
        ...cited,
      }),
      'sheetParts',
    ),
    railHeight: dimension,
    straightness: z.union([dimension, notStated]),
    postSpacing: dimension,
    lap: z.strictObject({ rule: z.enum(['adjacent traffic', 'terminal end-on']), ...cited }),
    parts: listOf(z.strictObject({ id: slug, name: text, rules: listOf(rule, 'sheetParts') }), 'sheetParts'),
    maySetAside: z.optional(listOf(z.strictObject({ topic: slug, ...cited }), 'sheetParts')),
    severities: z.optional(listOf(severity, 'sheetParts')),
  }

  const omission = z
    .strictObject({
      kind: z.enum(['single', 'long span', 'nested span']),
      most: whole,
      specialPostsEachSide: rangedWhole('sheetCount'),
      specialPostKind: z.nullable(text),
      specialPostMake: z.optional(make),
      leastToEndUnit: z.union([inchesFromZero, notStated]),
      leastToNextGap: z.union([inchesFromZero, citedInchesFromZero, notStated]),
      nestedInches: inchesFromZero,
      nestedAtCurb: z.optional(z.union([citedInchesFromZero, notStated])),
      spliceOnOmittedPost: z.boolean(),
      ...cited,
    })
    .check(z.meta({ id: 'OmissionRule' }))

  const longitudinalShape = z
    .strictObject({
      ...common,
      kind: z.literal('longitudinal'),
      splice: z.strictObject({ position: z.enum(['post', 'midspan']), ...cited }),
      post: z.strictObject({ kind: text, make: z.optional(make), block: z.boolean(), ...cited }),
      panels: z.strictObject({
        standard: listOf(citedInches, 'sheetParts').check(z.minLength(1)),
        converting: listOf(citedInches, 'sheetParts'),
        endOnly: listOf(citedInches, 'sheetParts'),
      }),
      spacings: z.strictObject({
        full: citedInches,
        half: citedInches,
        quarter: citedInches,
        halfBeforeQuarter: citedInchesFromZero,
      }),
      omissions: listOf(omission, 'sheetParts'),
      movedPost: z.union([
        z.strictObject({
          most: citedInches,
          atSplice: z.boolean(),
          mostInRun: z.optional(z.union([z.strictObject({ posts: whole, ...cited }), notStated])),
          newSlot: z.optional(
            z.union([
              z.strictObject({
                widthInches: ranged('boltSlot'),
                lengthInches: ranged('boltSlot'),
                ...cited,
              }),
              notStated,
            ]),
          ),
          ...cited,
        }),
        notStated,
      ]),
      shortestRun: z.union([citedInches, notStated]),
      shortestRunRedirects: z.optional(z.union([citedInches, notStated])),
      recommendedRun: z.optional(z.union([citedInches, notStated])),
      workingWidths: listOf(
        // Across the rail and often published in metres: not held to sixteenths.
        z.strictObject({
          spacing: z.enum(['full', 'half', 'quarter']),
          standard: z.optional(z.enum(['NCHRP 350', 'MASH'])),
          inches: z.union([ranged('workingWidth'), notStated]),
          ...cited,
        }),
        'sheetParts',
      ),
    })
    .check(z.meta({ id: 'LongitudinalSheet' }))

  const statedFeet = z.union([ranged('groundLength'), notStated])

  const endShape = z
    .strictObject({
      ...common,
      kind: z.enum(['terminal', 'trailing anchor', 'buried end', 'bridge end']),
      joins: listOf(text, 'sheetParts').check(z.minLength(1)),
      posts: listOf(post, 'sheetParts'),
      panels: z.strictObject({ own: listOf(panel, 'sheetParts'), adapters: listOf(panel, 'sheetParts') }),
      listedLength: citedInches,
      lengthOfNeedFrom: citedInchesFromZero,
      stroke: z.union([citedInches, notStated]),
      flare: z.union([
        z.strictObject({
          shape: z.enum(['straight', 'parabola']),
          offset: dimension,
          overInches: someInches,
          ...cited,
        }),
        z.literal('none'),
      ]),
      gating: z.union([z.boolean(), notStated]),
      energyAbsorbing: z.union([z.boolean(), notStated]),
      crashworthy: z.boolean(),
      grading: z.union([
        z.strictObject({
          platformSlope: z.union([ranged('slopeRun'), z.strictObject({ run: ranged('slopeRun'), ...cited })]),
          behindPostOneFeet: statedFeet,
          recoveryLengthFeet: statedFeet,
          recoveryWidthFeet: statedFeet,
          ...cited,
        }),
        notStated,
      ]),
    })
    .check(z.meta({ id: 'EndSheet' }))

  return z.discriminatedUnion('kind', [longitudinalShape, endShape])
})
