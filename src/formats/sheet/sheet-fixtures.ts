import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import { type BrokenFile, changed } from '../fixtures.ts'

const invented = { source: 'invented', confirmation: 'from memory' } as const

const common = {
  format: 'lapwise-sheet/1',
  version: '3',
  notice: 'Invented for a test.',
  sources: { invented: { title: 'Invented for a test', edition: 'none' } },
  criteria: [{ standard: 'MASH', edition: 2016, testLevel: 3, ...invented }],
  railHeight: {
    nominal: 31,
    low: 30,
    high: 32,
    unit: 'in',
    role: 'centre',
    measured: 'Top of rail above finish grade',
    ...invented,
  },
  straightness: 'notStated',
  postSpacing: {
    nominal: 1905,
    low: 1880,
    high: 1930,
    unit: 'mm',
    role: 'centre',
    measured: 'Centre to centre',
    ...invented,
  },
  lap: { rule: 'adjacent traffic', ...invented },
} as const

export const inventedSystem: LongitudinalSheet = {
  ...common,
  kind: 'longitudinal',
  id: 'invented-system',
  name: 'Invented system',
  category: 'W-beam barrier',
  parts: [
    {
      id: 'rail',
      name: 'Rail',
      rules: [
        {
          id: 'bolts',
          at: { kind: 'each splice' },
          must: 'Every bolt is tight.',
          look: { kind: 'confirm' },
          how: 'Feel every nut.',
          why: 'Loose bolts tear out.',
          remedy: 'Tighten them.',
          hold: false,
          figure: null,
          ...invented,
        },
      ],
    },
  ],
  splice: { position: 'midspan', ...invented },
  post: { kind: 'line post', block: true, ...invented },
  panels: {
    standard: [{ inches: 150, ...invented }],
    converting: [{ inches: 112.5, ...invented }],
    endOnly: [],
  },
  spacings: {
    full: { inches: 75, ...invented },
    half: { inches: 37.5, ...invented },
    quarter: { inches: 18.75, ...invented },
    halfBeforeQuarter: { inches: 0, ...invented },
  },
  omissions: [
    {
      kind: 'long span',
      most: 3,
      specialPostsEachSide: 3,
      specialPostKind: 'weak post',
      leastToEndUnit: 300,
      leastToNextGap: 'notStated',
      nestedInches: 0,
      nestedAtCurb: { inches: 450, ...invented },
      spliceOnOmittedPost: false,
      ...invented,
    },
  ],
  movedPost: {
    most: { inches: 6, ...invented },
    atSplice: false,
    mostInRun: { posts: 1, ...invented },
    newSlot: { widthInches: 0.8, lengthInches: 2, ...invented },
    ...invented,
  },
  shortestRun: { inches: 900, ...invented },
  shortestRunRedirects: { inches: 300, ...invented },
  recommendedRun: { inches: 1800, ...invented },
  workingWidths: [
    { spacing: 'full', inches: 47.24, ...invented },
    { spacing: 'full', standard: 'NCHRP 350', inches: 45, ...invented },
    { spacing: 'half', standard: 'MASH', inches: 'notStated', ...invented },
  ],
}

export const inventedEnd: EndSheet = {
  ...common,
  kind: 'terminal',
  id: 'invented-end',
  name: 'Invented end',
  category: 'W-beam terminal',
  joins: ['invented-system'],
  posts: [
    {
      number: 1,
      along: 0,
      kind: 'hinged post',
      block: false,
      railBolted: 'notStated',
      hingeSide: 'upstream',
      soilTube: true,
      slots: { set: 'upper', side: 'downstream' },
      stub: {
        nominal: 'notStated',
        low: 'notStated',
        high: 4,
        unit: 'in',
        role: 'ceiling',
        measured: 'Above finish grade',
        ...invented,
      },
      ...invented,
    },
    {
      number: 2,
      along: 75,
      kind: 'line post',
      block: true,
      railBolted: true,
      hingeSide: 'none',
      soilTube: false,
      slots: 'none',
      stub: 'none',
      ...invented,
    },
  ],
  panels: {
    own: [{ inches: 150, name: 'end panel', slotted: true, ...invented }],
    adapters: [{ inches: 112.5, name: 'short adapter', slotted: false, ...invented }],
  },
  parts: [
    {
      id: 'head',
      name: 'Head',
      rules: [
        {
          id: 'head-side',
          at: { kind: 'posts', numbers: [1, 2] },
          must: 'The head opens upstream.',
          look: {
            kind: 'choose',
            choices: [
              { id: 'up', label: 'Upstream', right: true },
              { id: 'down', label: 'Downstream', right: false },
            ],
          },
          how: 'Look along the rail.',
          why: 'It catches the car.',
          remedy: 'Turn it.',
          hold: true,
          figure: 'head-holes',
          ...invented,
        },
      ],
    },
  ],
  maySetAside: [{ topic: 'block', ...invented }],
  listedLength: { inches: 262.5, ...invented },
  lengthOfNeedFrom: { inches: 75, ...invented },
  stroke: 'notStated',
  flare: {
    shape: 'straight',
    offset: {
      nominal: 'notStated',
      low: 45,
      high: 'notStated',
      unit: 'in',
      role: 'floor',
      measured: 'At post 1',
      ...invented,
    },
    overInches: 262.5,
    ...invented,
  },
  gating: true,
  energyAbsorbing: 'notStated',
  crashworthy: true,
  grading: {
    platformSlope: { run: 10, ...invented },
    behindPostOneFeet: 5,
    recoveryLengthFeet: 'notStated',
    recoveryWidthFeet: 20,
    ...invented,
  },
}

export const validSheets: readonly HardwareSheet[] = [inventedSystem, inventedEnd]

const rule = ['parts', 0, 'rules', 0]
const [firstRule] = inventedEnd.parts[0]?.rules ?? []
const flareWithTypo = { ...(inventedEnd.flare as object), ofset: 1 }

/** One sheet for each thing that can be wrong with it. */
export const brokenSheets: readonly BrokenFile[] = [
  {
    title: 'a format of another version',
    raw: changed(inventedEnd, ['format'], 'lapwise-sheet/2'),
    problems: ['format: expected "lapwise-sheet/1", found "lapwise-sheet/2"'],
    inSchema: true,
  },
  {
    title: 'no kind',
    raw: changed(inventedEnd, ['kind'], undefined),
    problems: [
      'kind: expected "longitudinal" or "terminal" or "trailing anchor" or "buried end" or "bridge end", found nothing',
    ],
    inSchema: true,
  },
  {
    title: 'a field that does not exist',
    raw: changed(inventedEnd, ['railHight'], 31),
    problems: ['railHight: expected no field named "railHight", found 31'],
    inSchema: true,
  },
  {
    title: 'a missing field',
    raw: changed(inventedEnd, ['crashworthy'], undefined),
    problems: ['crashworthy: expected true or false, found nothing'],
    inSchema: true,
  },
  {
    title: 'a limit as text',
    raw: changed(inventedEnd, ['railHeight', 'low'], '30'),
    problems: ['railHeight.low: expected a number or "notStated", found "30"'],
    inSchema: true,
  },
  {
    title: 'a unit that is not read',
    raw: changed(inventedEnd, ['posts', 0, 'stub', 'unit'], 'cm'),
    problems: ['posts[0].stub.unit: expected "in" or "ft" or "mm" or "m", found "cm"'],
    inSchema: true,
  },
  {
    title: 'a misspelt field inside an alternative',
    raw: changed(inventedEnd, ['flare'], flareWithTypo),
    problems: ['flare.ofset: expected no field named "ofset", found 1'],
    inSchema: true,
  },
  {
    title: 'a length that is no whole number of sixteenths',
    raw: changed(inventedEnd, ['panels', 'own', 0, 'inches'], 150.03),
    problems: ['panels.own[0].inches: expected a whole number of 1/16 in, found 150.03'],
    inSchema: true,
  },
  {
    title: 'a look that does not exist',
    raw: changed(inventedSystem, [...rule, 'look'], { kind: 'guess' }),
    problems: ['parts[0].rules[0].look.kind: expected "measure" or "choose" or "confirm", found "guess"'],
    inSchema: true,
  },
  {
    title: 'an id that would not do in the name of a requirement',
    raw: changed(inventedSystem, [...rule, 'id'], 'Bolts/tight'),
    problems: ['parts[0].rules[0].id: expected lower-case letters and digits, joined by hyphens, found "Bolts/tight"'],
    inSchema: true,
  },
  {
    title: 'a source that is not listed',
    raw: changed(inventedEnd, ['posts', 1, 'source'], 'manual'),
    problems: ['posts[1].source: expected a key of sources (invented), found "manual"'],
    inSchema: false,
  },
  {
    title: 'a nominal below the low limit',
    raw: changed(inventedEnd, ['railHeight', 'nominal'], 29.9),
    problems: ['railHeight.nominal: expected at least the low limit, 30, found 29.9'],
    inSchema: false,
  },
  {
    title: 'a high limit below the nominal',
    raw: changed(inventedEnd, ['railHeight', 'high'], 30.5),
    problems: ['railHeight.high: expected at least the nominal, 31, found 30.5'],
    inSchema: false,
  },
  {
    title: 'a floor without its low limit',
    raw: changed(inventedEnd, ['flare', 'offset', 'low'], 'notStated'),
    problems: ['flare.offset.low: expected a number, because the role is floor, found "notStated"'],
    inSchema: false,
  },
  {
    title: 'a ceiling without its high limit',
    raw: changed(inventedEnd, ['posts', 0, 'stub', 'high'], 'notStated'),
    problems: ['posts[0].stub.high: expected a number, because the role is ceiling, found "notStated"'],
    inSchema: false,
  },
  {
    title: 'a centre without its nominal',
    raw: changed(inventedSystem, ['postSpacing', 'nominal'], 'notStated'),
    problems: ['postSpacing.nominal: expected a number, because the role is centre, found "notStated"'],
    inSchema: false,
  },
  {
    title: 'a gap in the post numbers',
    raw: changed(inventedEnd, ['posts', 1, 'number'], 3),
    problems: ['posts[1].number: expected 2, posts are listed in order from 1, found 3'],
    inSchema: false,
  },
  {
    title: 'a post where the one before stands',
    raw: changed(inventedEnd, ['posts', 1, 'along'], 0),
    problems: ['posts[1].along: expected more than 0, where the post before stands, found 0'],
    inSchema: false,
  },
  {
    title: 'a post 1 away from the origin',
    raw: changed(inventedEnd, ['posts', 0, 'along'], 6),
    problems: ['posts[0].along: expected 0, because post 1 is the origin, found 6'],
    inSchema: false,
  },
  {
    title: 'a rule for a post that does not exist',
    raw: changed(inventedEnd, [...rule, 'at', 'numbers', 1], 3),
    problems: ['parts[0].rules[0].at.numbers[1]: expected one of the 2 posts of the sheet, found 3'],
    inSchema: false,
  },
  {
    title: 'a rule for a panel that does not exist, an adapter counted',
    raw: changed(inventedEnd, [...rule, 'at'], { kind: 'panels', numbers: [2, 3] }),
    problems: ['parts[0].rules[0].at.numbers[1]: expected one of the 2 panels of the sheet, found 3'],
    inSchema: false,
  },
  {
    title: 'numbered posts in a longitudinal sheet',
    raw: changed(inventedSystem, [...rule, 'at'], { kind: 'posts', numbers: [1] }),
    problems: ['parts[0].rules[0].at.kind: expected "each post", "each splice" or "unit" for a run, found "posts"'],
    inSchema: false,
  },
  {
    title: 'a choice with nothing right',
    raw: changed(inventedEnd, [...rule, 'look', 'choices', 0, 'right'], false),
    problems: ['parts[0].rules[0].look.choices: expected at least one right choice, found a list of 2'],
    inSchema: false,
  },
  {
    title: 'a choice with nothing wrong',
    raw: changed(inventedEnd, [...rule, 'look', 'choices', 1, 'right'], true),
    problems: ['parts[0].rules[0].look.choices: expected at least one wrong choice, found a list of 2'],
    inSchema: false,
  },
  {
    title: 'two rules of one id',
    raw: changed(inventedEnd, ['parts', 0, 'rules'], [firstRule, firstRule]),
    problems: ['parts[0].rules[1].id: expected something not listed before, found "head-side"'],
    inSchema: false,
  },
  {
    title: 'a rule with the id of what is derived',
    raw: changed(inventedEnd, [...rule, 'id'], 'rail-height'),
    problems: [
      'parts[0].rules[0].id: expected an id of its own, not one that is derived from layout and sheet, found "rail-height"',
    ],
    inSchema: false,
  },
  {
    title: 'a rule with the id of what is decided from the run file',
    raw: changed(inventedEnd, [...rule, 'id'], 'criteria'),
    problems: [
      'parts[0].rules[0].id: expected an id of its own, not one that is derived from layout and sheet, found "criteria"',
    ],
    inSchema: false,
  },
  {
    title: 'a rule with the id of what others are computed from',
    raw: changed(inventedSystem, [...rule, 'id'], 'lateral-offset'),
    problems: [
      'parts[0].rules[0].id: expected an id of its own, not one that is derived from layout and sheet, found "lateral-offset"',
    ],
    inSchema: false,
  },
  {
    title: 'that what the run file decides may be set aside',
    raw: changed(inventedEnd, ['maySetAside'], [{ topic: 'criteria', ...invented }]),
    problems: [
      'maySetAside[0].topic: expected a derived topic that is read, or the id of a rule of this sheet, found "criteria"',
    ],
    inSchema: false,
  },
  {
    title: 'that what nothing requires may be set aside',
    raw: changed(inventedEnd, ['maySetAside'], [{ topic: 'along', ...invented }]),
    problems: [
      'maySetAside[0].topic: expected a derived topic that is read, or the id of a rule of this sheet, found "along"',
    ],
    inSchema: false,
  },
  {
    title: 'twice that the same may be set aside',
    raw: changed(inventedEnd, ['maySetAside', 1], { topic: 'block', ...invented }),
    problems: ['maySetAside[1].topic: expected something not listed before, found "block"'],
    inSchema: false,
  },
  {
    title: 'that something may be set aside, on no word of anybody',
    raw: changed(inventedEnd, ['maySetAside'], [{ topic: 'head-side' }]),
    problems: [
      'maySetAside[0].source: expected a text, found nothing',
      'maySetAside[0].confirmation: expected "published" or "common practice" or "from memory", found nothing',
    ],
    inSchema: true,
  },
  {
    title: 'one panel length in two lists',
    raw: changed(inventedSystem, ['panels', 'endOnly'], [{ inches: 150, ...invented }]),
    problems: ['panels.endOnly[0].inches: expected something not listed before, found 150'],
    inSchema: false,
  },
  {
    title: 'half spacing wider than full spacing',
    raw: changed(inventedSystem, ['spacings', 'half', 'inches'], 75),
    problems: ['spacings.half.inches: expected less than full spacing, 75, found 75'],
    inSchema: false,
  },
  {
    title: 'special posts that nobody names',
    raw: changed(inventedSystem, ['omissions', 0, 'specialPostKind'], null),
    problems: ['omissions[0].specialPostKind: expected what the special posts are, found null'],
    inSchema: false,
  },
]
