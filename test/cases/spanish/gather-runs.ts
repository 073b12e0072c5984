import { limitsOf } from '../../../src/core/hardware/limits-saying.ts'
import { contentOf } from '../../../src/core/hardware/sheet-text.ts'
import { kindOfPost } from '../../../src/core/layout/kind-of-post.ts'
import { sheetOf } from '../../../src/core/layout/sheet-of.ts'
import { instruments } from '../../../src/core/measurement/instruments.ts'
import type { Requirement } from '../../../src/core/requirements/requirement.ts'
import { remedyOf } from '../../../src/core/verdicts/saying.ts'
import { crewSheetContents } from '../../../src/documents/crew-sheet-contents.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { elevationDrawing } from '../../../src/drawing/views/elevation.ts'
import { figureFacts } from '../../../src/drawing/views/figures/figure-facts.ts'
import { figureDrawing } from '../../../src/drawing/views/figures.ts'
import { stripDrawing } from '../../../src/drawing/views/strip.ts'
import { terminalDetail } from '../../../src/drawing/views/terminal-detail.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { explainLayout } from '../../../src/operations/explain-layout.ts'
import { type JudgedRun, judgeReadings } from '../../../src/operations/judge-readings.ts'
import { layOutRun } from '../../../src/operations/lay-out-run.ts'
import type { RequiredRun } from '../../../src/operations/require-by.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { sheetShelf } from '../../../src/operations/sheet-shelf.ts'
import { stripInput } from '../../../src/operations/strip-input.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import type { Print } from '../../../src/words/print.ts'
import type { Saying } from '../../../src/words/saying.ts'
import { runAllowing } from '../../fixtures/roadside.ts'

/** Runs that have the shipped sheets between them, gaps, reduced spacing, standing rail and both unit systems. */
export const runFiles: Readonly<Record<string, object>> = {
  demo: {},
  tangent: { first: { sheet: 'tangent-terminal-31' } },
  'buried and bridge': { first: { sheet: 'buried-end-31' }, second: { sheet: 'bridge-end-31', at: '62 ft 6 in' } },
  low: {
    system: 'w-beam-post-splice-27-3-4',
    first: { sheet: 'flared-terminal-27-3-4' },
    second: { sheet: 'trailing-anchor-27-3-4' },
  },
  metric: { units: 'metric', road: { side: 'left', traffic: 'divided', speed: 90 } },
  'no traffic said': { road: { side: 'left' }, need: { from: 0, to: '100 ft' }, obstructions: [] },
  'one way': { road: { side: 'right', traffic: 'one-way' }, obstructions: [] },
  'half spacing': { obstructions: [], reduced: [{ from: '0 ft', to: '12 ft', spacing: 'half' }] },
  'nested rail': { obstructions: [], reduced: [{ from: '0 ft', to: '12 ft', spacing: 'quarter', nested: true }] },
  'wide gap': {
    obstructions: [{ name: 'the culvert', from: '2 ft', to: '16 ft' }],
    need: { from: '-90 ft', to: '90 ft' },
  },
  'two gaps': {
    obstructions: [
      { name: 'the culvert', from: '2 ft', to: '9 ft 6 in' },
      { name: 'the inlet', from: '70 ft', to: '73 ft' },
    ],
    need: { from: '-90 ft', to: '90 ft' },
  },
  'moved post': { obstructions: [{ name: 'the utility', from: '2 ft', to: '2 ft 6 in' }] },
  'lawfully moved post': {
    system: 'w-beam-post-splice-27-3-4',
    first: { standingSplice: { at: 0, position: 'post' } },
    second: { standingSplice: { at: '125 ft', position: 'post' } },
    need: null,
    obstructions: [
      { name: 'the utility', from: 448, to: 452 },
      { name: 'the culvert', from: 1048, to: 1067 },
    ],
    // Half a post of 3 in beside each.
    clearance: 0,
    curb: undefined,
  },
  'gap at a curb not said': { curb: undefined },
  'gap at a curb': { curb: 'present', need: { from: '-90 ft', to: '90 ft' } },
  standing: {
    first: { standingSplice: { at: 0, position: 'midspan' } },
    need: { from: 0, to: '100 ft' },
    obstructions: [],
  },
  flared: {
    flare: { rate: 14, firstFrom: '-25 ft', secondFrom: '20 ft' },
    second: { sheet: 'flared-terminal-31' },
    need: { from: '-125 ft', to: '125 ft' },
    obstructions: [],
  },
  'flare inside the units': { flare: { rate: 14, firstFrom: '-50 ft' }, obstructions: [] },
  'flare inside the second unit': { flare: { rate: 14, secondFrom: '27 ft' }, obstructions: [] },
  'flare at a bridge': {
    flare: { rate: 14, secondFrom: '20 ft' },
    second: { sheet: 'bridge-end-31', at: '62 ft 6 in' },
    obstructions: [],
  },
  'flare at a standing run': {
    flare: { rate: 14, firstFrom: '25 ft' },
    first: { standingSplice: { at: 0, position: 'midspan' } },
    need: { from: 0, to: '100 ft' },
    obstructions: [],
  },
  'what may be set aside': JSON.parse(runAllowing(demoProject().run, ['block', 'lap', 'manual'])),
  'odd stock': { stock: [{ length: '12 ft 6 in', count: 20 }, '9 ft 4 1/2 in'] },
}

export function runFile(changes: object): string {
  return JSON.stringify({ ...(JSON.parse(demoProject().run) as object), ...changes })
}

export function requiredRun(changes: object): RequiredRun {
  const read = readRun('run', runFile(changes))
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const required = requireRun('run', read.value)
  if (!required.ok) throw new Error(JSON.stringify(required.error))
  return required.value
}

export const sayingsOfRequirements = ({ requirements }: RequiredRun): Saying[] =>
  requirements.flatMap(({ must, how, why, remedy, place, look }) => [
    ...[must, how, why, remedy, place],
    ...(look.kind === 'choose' ? look.choices.map(({ label }) => label) : []),
    ...(look.kind === 'measure' ? [limitsOf(look.limits)] : []),
  ])

export const sourcesOf = ({ requirements }: RequiredRun): Saying[] =>
  requirements.flatMap(({ source }): Saying[] => {
    if (source.kind !== 'source') return [source]
    return source.edition === null ? [source.title] : [source.title, source.edition]
  })

/** A figure for each thing that is required with one, alike ones once. */
export function figuresOf({ requirements, run }: RequiredRun, print: Print): Drawing[] {
  const shelf = sheetShelf(run.sheets)
  const alike = new Map(requirements.map((one) => [`${one.figure} ${contentOf(one.must)}`, one]))
  return [...alike.values()].flatMap((requirement) => {
    const { figure, sheet } = requirement
    return figure === null ? [] : [figureDrawing(figure, figureFacts(requirement, shelf.get(sheet)!, print))]
  })
}

export function sayingsOfLayout({ run, request, model }: RequiredRun): Saying[] {
  const laid = layOutRun(run.name, run, 5)
  return [
    ...explainLayout(model.layout, request),
    ...model.layout.posts.map((post) => kindOfPost(post, sheetOf(model, post.unit))),
    ...(laid.ok ? laid.value.refused : []),
  ]
}

/** Answers by which everything on the run fails, or is too close, or cannot be judged. */
const answers: readonly ((requirement: Requirement) => object | null)[] = [
  ({ look }) => (look.kind === 'measure' ? far(look.limits, 1.5) : wrongChoice(look)),
  ({ look }) => (look.kind === 'measure' ? far(look.limits, -1.5) : null),
  ({ look }) => (look.kind === 'measure' ? far(look.limits, 0.01) : { cannotSee: true }),
  ({ look, maySetAside }) =>
    look.kind === 'measure' ? far(look.limits, 0) : maySetAside ? { doesNotApply: 'it is another kind' } : null,
  ({ look }, i = 0) => (look.kind === 'choose' ? { choice: look.choices.at(-1 - (i % 2))!.id } : { cannotSee: true }),
]

function far(
  { low, high, nominal, unit }: { low: unknown; high: unknown; nominal: unknown; unit: string },
  over: number,
) {
  const limit =
    over < 0 && typeof low === 'number'
      ? low
      : typeof high === 'number'
        ? high
        : typeof low === 'number'
          ? low
          : nominal
  return typeof limit === 'number' ? { value: `${limit + over} ${unit}` } : { cannotSee: true }
}

const wrongChoice = (look: Requirement['look']): object | null =>
  look.kind === 'choose'
    ? { choice: look.choices.find(({ right }) => !right)!.id }
    : look.kind === 'confirm'
      ? { confirmed: false }
      : null

/** One planted fault of every topic for itself, high and low; then all at once in each way. */
export function judgedRuns(required: RequiredRun): JudgedRun[] {
  const { requirements } = required
  const readingsOf = (some: readonly Requirement[], answer: (typeof answers)[number]): readonly object[] =>
    some.flatMap((requirement) => {
      const given = answer(requirement)
      return given === null ? [] : [{ of: requirement.id, ...given }]
    })
  const everyTopic = [...new Map(requirements.map((one) => [one.topic, one])).values()]
  const single = everyTopic.flatMap((one) => answers.slice(0, 2).map((answer) => readingsOf([one], answer)))
  const whole = answers.map((answer) => readingsOf(requirements, answer))
  const more = [...misplacedPosts(requirements), ...shiftedSplices(requirements)]
  return [...more, ...single, ...whole, ...heights(requirements)].map((readings) => judged(required, readings))
}

/** Rail and stub of one post, each too low, right and too high. */
function heights(requirements: readonly Requirement[]): (readonly object[])[] {
  const stub = requirements.find(({ topic }) => topic === 'stub-height')
  if (stub === undefined) return []
  const rail = `${stub.id.split('/')[0]}/rail-height`
  return [25, 28, 31, 34].flatMap((height) =>
    [1, 3.5, 6].map((over) => [
      { of: rail, value: `${height} in` },
      { of: stub.id, value: `${over} in` },
    ]),
  )
}

/** Spaces that are off by so many inches, of one post, of several, up to an end of the run, beside one not read. */
function misplacedPosts(requirements: readonly Requirement[]): readonly (readonly object[])[] {
  const spaces = requirements.filter(({ topic, look }) => topic === 'spacing' && look.kind === 'measure')
  const off: readonly Readonly<Record<number, number>>[] = [
    { 2: 3, 3: -3 },
    { 2: -3, 3: 3 },
    { 2: 3, 5: -3 },
    { 2: -3, 5: 3 },
    { 1: 3 },
    { 1: -3 },
    { [-2]: 3 },
    { [-2]: -3 },
    { [-1]: -3 },
    { 1: 3, 2: -1.75 },
    { 1: -3, 2: 1.75 },
    { [-2]: 3, [-3]: -1.75 },
    { [-2]: -3, [-3]: 1.75 },
  ]
  const readings = (excess: Readonly<Record<number, number>>, isWhole: boolean, instrument: string) =>
    spaces.flatMap(({ id, look }, i) => {
      const over = excess[i] ?? excess[i - spaces.length] ?? (isWhole ? 0 : null)
      if (over === null || look.kind !== 'measure') return []
      return [{ of: id, value: `${(look.limits.nominal as number) + over} in`, instrument }]
    })
  return off.flatMap((excess) => [
    readings(excess, true, 'tape'),
    readings(excess, true, 'gnss'),
    readings(excess, false, 'tape'),
  ])
}

/** Splices out of place, where panels before them were not read, or were and are right. */
function shiftedSplices(requirements: readonly Requirement[]): readonly (readonly object[])[] {
  const splices = requirements.filter(({ topic }) => topic === 'splice-position').slice(2, 4)
  const wrong = splices.map(({ id }) => ({ of: id, choice: 'elsewhere' }))
  const panels = requirements.flatMap(({ id, topic, look }) =>
    topic === 'panel-length' && look.kind === 'choose'
      ? [{ of: id, choice: look.choices.find(({ right }) => right)!.id }]
      : [],
  )
  return [wrong, [...wrong, ...panels], [...wrong, ...panels.slice(0, 2)]]
}

function judged(required: RequiredRun, readings: readonly object[]): JudgedRun {
  const visit = {
    by: 'J. Okafor',
    at: '2016-05-12T10:05:00-06:00',
    instrument: 'tape-and-level',
    where: 'finish grade',
  }
  const text = JSON.stringify({ format: 'lapwise-readings/1', run: 'run', units: required.run.units, visit, readings })
  const read = readReadings('readings', text)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const found = judgeReadings('readings', required, read.value.readings)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

export const sayingsOfJudgement = ({ judgement }: JudgedRun): Saying[] => [
  ...judgement.findings.flatMap((finding) => [finding.what, remedyOf(finding)]),
  ...judgement.verdicts.map(({ because }) => because),
  ...judgement.unproven.map(({ because }) => because),
  judgement.acceptance,
]

export const stripOf = (run: RequiredRun | JudgedRun, print: Print): Drawing => stripDrawing(stripInput(run, print))

export const elevationOf = (run: RequiredRun, print: Print): Drawing => elevationDrawing(stripInput(run, print))

/** Each end unit of the run in detail. */
export const detailsOf = (run: RequiredRun, print: Print): readonly Drawing[] =>
  (['first', 'second'] as const).flatMap((end) => terminalDetail(stripInput(run, print), end, 'letter') ?? [])

export const everywhere: readonly Saying[] = instruments.flatMap(({ name, source }) =>
  source.kind === 'title' ? [name] : [name, source],
)

/** What a crew sheet says besides its requirements, without the names and tickets that a person wrote. */
export function textsOfCrewSheet(judged: JudgedRun, print: Print): string[] {
  const { title, facts, posts, flare, panels, departures, ...rules } = crewSheetContents(
    recordInput(judged, print),
    null,
  )
  const told = [rules.laps, rules.heights, rules.holes, rules.holds].flat()
  return [
    ...[title, flare, ...departures, ...rules.cautions],
    ...facts.filter(({ id }) => id !== 'route').flatMap(({ name, value }) => [name, value]),
    ...posts.map(({ kind }) => kind),
    ...panels.flatMap(({ numbers, name }) => [numbers, name]),
    ...told.map(({ places }) => places),
  ]
}
