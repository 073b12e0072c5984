import * as z from 'zod/mini'
import { languages } from '../../core/language.ts'
import { once } from '../once.ts'
import { day, listOf, ranged, rangedWhole } from '../range/ranged.ts'

const text = z.string().check(z.minLength(1))
const number = ranged('siteCheckNumber')
const length = rangedWhole('siteCheckLength')
const yes = z.boolean()
const spacing = z.enum(['full', 'half', 'quarter'])
const position = z.enum(['post', 'midspan'])
const standard = z.enum(['NCHRP 350', 'MASH'])
const work = z.nullable(z.enum(['new', 'standing']))
const endKind = z.enum(['terminal', 'trailing anchor', 'buried end', 'bridge end'])
const sheetKind = z.enum(['longitudinal', ...endKind.options])
const end = z.enum(['approach', 'departure'])
const confirmation = z.enum(['published', 'common practice', 'from memory'])
const testLevel = z.nullable(z.literal([1, 2, 3]))
const mash = z.nullable(yes)
const twoNumbers = z.tuple([number, number])
const systems = listOf(text, 'sheets')

/** One kind of a saying, with its values. */
const said = <K extends string, S extends z.core.$ZodShape>(kind: K, values: S) =>
  z.strictObject({ kind: z.literal(kind), ...values })

/**
 * A check of a site as it came out: what is said of it stands as kinds and values, so that it is said in any language.
 * Most runs were made of no site.
 */
export const siteCheckShape = once(() => {
  const sheetText = said('sheet text', {
    ...{ sheet: text, version: text, own: text, language: z.enum(languages) },
    others: z.partialRecord(z.enum(languages), text),
  }).check(z.meta({ id: 'SheetText' }))

  const what = z
    .discriminatedUnion('kind', [
      said('crash test of sheet', { sheet: sheetText }),
      said('end on chosen system', { sheet: sheetText }),
      said('against adjoining run', {}),
      said('sheet at end', { sheet: sheetText, end }),
      said('barrier before transition', {}),
      said('length of run', {}),
      said('room behind rail', { hazard: text, spacing }),
      said('platform of end', { of: sheetKind }),
      said('level ground behind post 1', {}),
      said('clear area', { extent: z.enum(['length', 'width']) }),
      said('foreslope beside platform', {}),
      said('ground to slope break', {}),
      said('curb before rail', { by: z.enum(['guide', 'study']) }),
      said('curb before terminal', { terminal: sheetText }),
    ])
    .check(z.meta({ id: 'SiteCheckTopic' }))

  const speed = z.strictObject({ value: ranged('speed'), unit: z.enum(['mi/h', 'km/h']) })
  const limit = z
    .discriminatedUnion('kind', [
      said('joins systems', { systems }),
      said('height within', { height: length, within: length, splices: position }),
      said('barrier before transition at least', { inches: number, leastInches: number, plainInches: number }),
      said('run at least', { shortest: number, redirects: z.nullable(number), recommended: z.nullable(number) }),
      said('room at least', { length }),
      said('working width', { inches: number, standard }),
      said('working width not stated', { spacing, standard }),
      said('slope or flatter', { run: number }),
      said('foreslope or flatter', { run: number, never: number }),
      said('ground at least to break', { inches: number, slope: number }),
      said('curb allowed', {
        ...{ flushInches: number, leastBehindFeet: z.nullable(number), highestInches: number },
        ...{ faceSlope: z.nullable(number), testDiffers: yes, textsDiffer: yes },
      }),
      said('no curb or one for the speed', {}),
      said('no curb near terminal', { fromFeet: number, highestInches: number }),
      said('needed crash test', {
        ...{ mash, testLevel, lastLetting: day },
        at: z.strictObject({ work, letting: z.nullable(day), speed: z.nullable(speed) }),
        category: z.enum(['W-beam barrier', 'W-beam terminal', 'transition', 'other longitudinal barrier']),
      }),
      said('needed end', { end }),
    ])
    .check(z.meta({ id: 'SiteCheckLimit' }))

  const checked = z.optional(z.strictObject({ by: text, page: text, on: day }))
  const test = z.strictObject({ standard, edition: number, testLevel: number, source: text, confirmation, checked })
  const curb = z.strictObject({
    ...{ height: length, face: z.enum(['vertical', 'sloping']), faceSlope: z.nullable(number), toRail: length },
  })
  const value = z
    .discriminatedUnion('kind', [
      said('crash tests and work', {
        tests: said('crash tests', { tests: listOf(test, 'sheetParts') }),
        ...{ work, letting: z.nullable(day) },
      }),
      said('chosen system', { id: z.nullable(text) }),
      said('adjoining rail', { height: length, splices: z.nullable(position) }),
      said('length not laid out', {}),
      said('site does not say', {}),
      said('length there is', { length }),
      said('slope there is', { run: number }),
      said('curb there is', { curb: z.union([z.literal('none'), curb]) }),
      said('exposed end', { end, opposingReaches: z.nullable(yes), crashworthy: yes, of: endKind }),
    ])
    .check(z.meta({ id: 'SiteCheckValue' }))

  const change = z
    .discriminatedUnion('kind', [
      said('take tested hardware', { of: sheetKind, needed: z.strictObject({ mash, testLevel }) }),
      said('take joining parts', { systems, chosen: sheetText }),
      said('meet adjoining run', {
        height: z.nullable(z.strictObject({ by: length, overFeet: twoNumbers })),
        shiftingPanels: z.nullable(twoNumbers),
      }),
      said('take crashworthy terminal', {}),
      said('add rail before transition', { inches: number }),
      said('add rail', { inches: number }),
      said('space posts closer', {
        ...{ spacing, overInches: number, needsInches: number },
        half: z.nullable(z.strictObject({ inches: number, at: z.enum(['begin', 'both ends']) })),
      }),
      said('move rail away', { by: length, hazard: text }),
      said('grade platform', { run: number, orTangent: yes }),
      said('widen platform behind post 1', { length, orTangent: yes }),
      said('clear ground', { behind: z.enum(['end', 'rail']), length }),
      said('flatten foreslope', { run: number }),
      said('take longer posts at break', { feet: twoNumbers, halfSpacingFeet: number }),
      said('widen ground to break', { inches: number, feet: twoNumbers, beforeBreakFeet: number }),
      said('change curb', {
        ...{ highestInches: z.nullable(number), railFlush: yes },
        face: z.nullable(z.strictObject({ slope: z.nullable(number) })),
      }),
      said('take curb away', {}),
    ])
    .check(z.meta({ id: 'SiteCheckChange' }))

  const title = said('title', { of: z.union([text, sheetText]) })
  const source = z
    .discriminatedUnion('kind', [
      said('recalled height transitions', { beforeTerminal: yes }),
      said('answer on transitions', {}),
      said('guide on curbs', {}),
      said('study on curbs', {}),
      said('recalled curbs before terminals', {}),
      said('figure on grading', {}),
      said('reports on slope breaks', {}),
      said('source', { title, edition: z.nullable(title) }),
    ])
    .check(z.meta({ id: 'SiteCheckSource' }))

  return z
    .strictObject({
      ...{ what, verdict: z.enum(['meets', 'fails', 'unread']), limit, value, source, confirmation },
      smallestChange: z.nullable(change),
    })
    .check(z.meta({ id: 'SiteCheck' }))
})
