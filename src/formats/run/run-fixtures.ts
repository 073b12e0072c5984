import { type BrokenFile, changed } from '../fixtures.ts'
import { inventedEnd, inventedSystem } from '../sheet/sheet-fixtures.ts'

/** The least that a run file says. */
export const shortRun = {
  format: 'lapwise-run/1',
  name: 'County Road 7, culvert',
  system: 'invented-system',
  first: { sheet: 'invented-end' },
  second: { sheet: 'invented-end' },
}

/** A run file in which everything is said. */
export const fullRun = {
  ...shortRun,
  units: 'metric',
  road: {
    route: 'CR 7',
    side: 'left',
    datumStation: '1+237.500',
    speed: 90,
    traffic: 'two-way',
    opposingReaches: true,
  },
  work: 'standing',
  letting: '2017-03-15',
  first: { standingSplice: { at: '-6 ft 3 in', position: 'midspan' } },
  second: { sheet: 'invented-end', at: '76.2 m' },
  need: { from: 0, to: "100'" },
  flare: { rate: 15, firstFrom: '-25 ft', secondFrom: 1500 },
  stock: ['12.5 ft', { length: 112.5, count: 2 }, '15 ft 7 1/2 in'],
  obstructions: [{ name: 'culvert', from: "40'", to: 540 }],
  curb: 'present',
  reduced: [
    { from: 300, to: 600, spacing: 'half' },
    { from: 600, to: 700.0625, spacing: 'quarter', nested: true },
  ],
  standing: { postOneAt: 0, panels: [150, '12 1/2 ft'], postsDriven: 5 },
  mayExtend: '25 ft',
  decision: { postOneAt: '-75', panels: [112.5, 150] },
  decisionRule: { kind: 'simple' },
  instruments: [
    {
      id: 'rod',
      name: 'rod and level',
      standardUncertainty: 2,
      unit: 'mm',
      readTo: 1,
      source: 'agency trial',
      confirmation: 'common practice',
    },
  ],
  sheets: [inventedSystem, inventedEnd],
}

export const validRuns: readonly unknown[] = [shortRun, fullRun]

/** One run for each thing that can be wrong with it. */
export const brokenRuns: readonly BrokenFile[] = [
  {
    title: 'a list instead of a run',
    raw: [shortRun],
    problems: ['expected an object, found a list of 1'],
    inSchema: true,
  },
  {
    title: 'no name and an empty system',
    raw: changed(changed(shortRun, ['name'], undefined), ['system'], ''),
    problems: ['name: expected a text, found nothing', 'system: expected a text that is not empty, found ""'],
    inSchema: true,
  },
  {
    title: 'a field that does not exist',
    raw: changed(fullRun, ['road', 'sped'], 55),
    problems: ['road.sped: expected no field named "sped", found 55'],
    inSchema: true,
  },
  {
    title: 'a side that a road does not have',
    raw: changed(fullRun, ['road', 'side'], 'north'),
    problems: ['road.side: expected "right" or "left", found "north"'],
    inSchema: true,
  },
  {
    title: 'a speed below zero',
    raw: changed(fullRun, ['road', 'speed'], -5),
    problems: ['road.speed: expected a value of at least 5, found -5'],
    inSchema: true,
  },
  {
    title: 'opposing traffic on a one-way road',
    raw: changed(changed(fullRun, ['road', 'traffic'], 'one-way'), ['road', 'opposingReaches'], true),
    problems: ['road.opposingReaches: expected false or nothing where traffic goes one way, found true'],
    inSchema: false,
  },
  {
    title: 'a flare of no rate',
    raw: changed(fullRun, ['flare', 'rate'], 0),
    problems: ['flare.rate: expected a value of at least 1, found 0'],
    inSchema: true,
  },
  {
    title: 'a flare at neither end',
    raw: changed(fullRun, ['flare'], { rate: 15 }),
    problems: ['flare: expected where the flare begins, as "firstFrom" or "secondFrom", found an object with rate'],
    inSchema: false,
  },
  {
    title: 'two flares that begin at one place',
    raw: changed(fullRun, ['flare', 'secondFrom'], '-25 ft'),
    problems: ['flare.secondFrom: expected more than -300 in, where the flare of the first end begins, found "-25 ft"'],
    inSchema: false,
  },
  {
    title: 'a day that does not exist',
    raw: changed(fullRun, ['letting'], '2017-02-29'),
    problems: ['letting: expected a date such as 2017-03-15, found "2017-02-29"'],
    inSchema: true,
  },
  {
    title: 'an end that is no end',
    raw: changed(shortRun, ['first'], {}),
    problems: ['first: expected an object with "sheet", or one with "standingSplice", found an empty object'],
    inSchema: true,
  },
  {
    title: 'an end as text',
    raw: changed(shortRun, ['first'], 'invented-end'),
    problems: ['first: expected an object with "sheet", or one with "standingSplice", found "invented-end"'],
    inSchema: true,
  },
  {
    title: 'an end with a misspelt field',
    raw: changed(shortRun, ['second'], { sheet: 'invented-end', att: 5 }),
    problems: ['second.att: expected no field named "att", found 5'],
    inSchema: true,
  },
  {
    title: 'a standing splice at a place that no splice has',
    raw: changed(fullRun, ['first', 'standingSplice', 'position'], 'middle'),
    problems: ['first.standingSplice.position: expected "post" or "midspan", found "middle"'],
    inSchema: true,
  },
  {
    title: 'a length of the wrong type',
    raw: changed(fullRun, ['need', 'to'], true),
    problems: ['need.to: expected a number or a text, found true'],
    inSchema: true,
  },
  {
    title: 'a number between the sixteenths',
    raw: changed(fullRun, ['mayExtend'], 600.03),
    problems: ['mayExtend: expected a whole number of 1/16 in, found 600.03'],
    inSchema: true,
  },
  {
    title: 'a number beyond every road',
    raw: changed(fullRun, ['standing', 'postOneAt'], 1e9),
    problems: ['standing.postOneAt: expected a value of at most 1267200, found 1000000000'],
    inSchema: true,
  },
  {
    title: 'a speed that no road has',
    raw: changed(fullRun, ['road', 'speed'], 9999),
    problems: ['road.speed: expected a value of at most 200, found 9999'],
    inSchema: true,
  },
  {
    title: 'a guard band that nothing can meet',
    raw: changed(fullRun, ['decisionRule'], { kind: 'guard band', multiple: 1e9 }),
    problems: ['decisionRule.multiple: expected a value of at most 10, found 1000000000'],
    inSchema: true,
  },
  {
    title: 'a letting before there was guardrail',
    raw: changed(fullRun, ['letting'], '0001-01-01'),
    problems: ['letting: expected a date in the years 1950 to 2100, found "0001-01-01"'],
    inSchema: true,
  },
  {
    title: 'a letting past all plans',
    raw: changed(fullRun, ['letting'], '9999-12-31'),
    problems: ['letting: expected a date in the years 1950 to 2100, found "9999-12-31"'],
    inSchema: true,
  },
  {
    title: 'an instrument read to a kilofoot',
    raw: changed(changed(fullRun, ['instruments', 0, 'unit'], 'ft'), ['instruments', 0, 'readTo'], 1000),
    problems: ['instruments[0].readTo: expected a length of 0.000001 m to 1 m, found 1000'],
    inSchema: false,
  },
  {
    title: 'a rail below ground on a sheet',
    raw: changed(fullRun, ['sheets', 0, 'railHeight'], {
      ...inventedSystem.railHeight,
      nominal: -31,
      low: -32,
      high: -30,
    }),
    problems: ['low', 'nominal', 'high'].map(
      (limit, i) => `sheets[0].railHeight.${limit}: expected a length of 0.1 m to 3 m, found ${[-32, -31, -30][i]}`,
    ),
    inSchema: false,
  },
  {
    title: 'a need of more than 10 miles',
    raw: changed(fullRun, ['need'], { from: 0, to: '52800 ft 1 in' }),
    problems: [
      'need.to: expected at most 633600 in (10 miles) in one run: split a longer one at a splice into runs that name it as standingSplice, found "52800 ft 1 in"',
    ],
    inSchema: false,
  },
  {
    title: 'an empty stock',
    raw: changed(fullRun, ['stock'], []),
    problems: ['stock: expected a list that is not empty, found an empty list'],
    inSchema: true,
  },
  {
    title: 'half a panel in stock',
    raw: changed(fullRun, ['stock', 1, 'count'], 0.5),
    problems: ['stock[1].count: expected a whole number, found 0.5'],
    inSchema: true,
  },
  {
    title: 'a guard band that widens the limits',
    raw: changed(fullRun, ['decisionRule'], { kind: 'guard band', multiple: -1 }),
    problems: ['decisionRule.multiple: expected a value of at least 0.01, found -1'],
    inSchema: true,
  },
  {
    title: 'a sheet that is broken in its shape',
    raw: changed(fullRun, ['sheets', 1, 'posts', 0, 'block'], 'no'),
    problems: ['sheets[1].posts[0].block: expected true or false, found "no"'],
    inSchema: true,
  },
  {
    title: 'a text that is no length',
    raw: changed(fullRun, ['need', 'from'], '27 5/4'),
    problems: [
      'need.from: expected a length (at character 4, “5/4”: the fraction is not below one, perhaps a space or a digit is missing), found "27 5/4"',
    ],
    inSchema: false,
  },
  {
    title: 'a text that is no length where an object may stand too',
    raw: changed(fullRun, ['stock', 0], '12.5 yd'),
    problems: [
      'stock[0]: expected a length (at character 6, “yd”: this is not one of the units in, ft, mm and m), found "12.5 yd"',
    ],
    inSchema: false,
  },
  {
    title: 'a text between the sixteenths',
    // 100 mm is 3.937 in; 3 15/16 in is 3.9375 in
    raw: changed(fullRun, ['mayExtend'], '100 mm'),
    problems: ['mayExtend: expected a whole number of 1/16 in (the nearest is 3 15/16 in), found "100 mm"'],
    inSchema: false,
  },
  {
    title: 'a station of the other unit system',
    raw: changed(fullRun, ['road', 'datumStation'], '12+37.50'),
    problems: [
      'road.datumStation: expected a station (at character 4, “37.50”: between + and the decimal point a station has exactly 3 digits), found "12+37.50"',
    ],
    inSchema: false,
  },
  {
    title: 'a stretch that ends where it begins',
    raw: changed(fullRun, ['obstructions', 0, 'to'], 480),
    problems: ['obstructions[0].to: expected more than 480 in, where it begins, found 480'],
    inSchema: false,
  },
  {
    title: 'a need that runs upstream',
    raw: changed(fullRun, ['need', 'to'], '-1'),
    problems: ['need.to: expected more than 0 in, where it begins, found "-1"'],
    inSchema: false,
  },
  {
    title: 'a panel of no length',
    raw: changed(fullRun, ['standing', 'panels', 0], 0),
    problems: ['standing.panels[0]: expected a value of at least 12, found 0'],
    inSchema: false,
  },
  {
    title: 'the second end upstream of the first',
    raw: changed(fullRun, ['second', 'at'], '-7 ft'),
    problems: [
      'second.at: expected more than -75 in, where the first end is; distances grow downstream, found "-7 ft"',
    ],
    inSchema: false,
  },
  {
    title: 'one length twice in stock',
    raw: changed(fullRun, ['stock', 2], 150),
    problems: ['stock[2]: expected something not listed before, found 150'],
    inSchema: false,
  },
  {
    title: 'two obstructions of one name',
    raw: changed(
      fullRun,
      ['obstructions'],
      [
        { name: 'Inlet', from: 0, to: 1 },
        { name: 'inlet ', from: 2, to: 3 },
      ],
    ),
    problems: ['obstructions[1].name: expected something not listed before, found "inlet "'],
    inSchema: false,
  },
  {
    title: 'two sheets of one id',
    raw: changed(fullRun, ['sheets'], [inventedEnd, inventedEnd]),
    problems: ['sheets[1].id: expected something not listed before, found "invented-end"'],
    inSchema: false,
  },
  {
    title: 'a sheet that contradicts itself',
    raw: changed(fullRun, ['sheets', 0, 'railHeight', 'low'], 31.5),
    problems: ['sheets[0].railHeight.nominal: expected at least the low limit, 31.5, found 31'],
    inSchema: false,
  },
]
