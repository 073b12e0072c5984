import { describe, expect, test } from 'vitest'
import type { HardwareSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import type { LayoutRequest, RunEnd } from '../../../src/core/layout/layout.ts'
import { solveLayout } from '../../../src/core/layout/solve-layout.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { type RunFile, readRun, runFromValue } from '../../../src/formats/run/run-file.ts'
import { runToValue, writeRun } from '../../../src/formats/run/write-run.ts'
import { pinnedTo, pinRun } from '../../../src/operations/pin-run.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'
import { changed } from '../../fixtures/broken-files.ts'
import { mulberry32, randomReducedRun, randomRun, randomStandingRun } from '../../referee/random-runs.ts'
import { requiredRun, runFile, runFiles } from '../spanish/gather-runs.ts'

const pinned = (changes: object): RunFile => {
  const run = readRun('run', runFile(changes))
  const pin = run.ok ? pinRun('run', run.value, 'v1') : run
  if (!pin.ok) throw new Error(pin.error.map((one) => printProblem(one, english(null))).join('\n'))
  return pin.value
}
const demo = pinned({})
const raw = JSON.parse(writeRun(demo))
const problemsOf = (file: unknown): readonly string[] => {
  const read = runFromValue('run', file)
  return read.ok ? [] : read.error.map((one) => printProblem(one, english(null)))
}

describe('a pinned run', () => {
  test.each(Object.entries(runFiles))('%s is read back as it was written, and asks the same', (_, changes) => {
    const run = pinned(changes)
    expect(readRun('run', writeRun(run))).toEqual({ ok: true, value: run })
    expect(structuredClone(runToValue(run))).toStrictEqual(JSON.parse(writeRun(run)))
    const required = requireRun('run', run)
    expect(required.ok && required.value.model).toEqual(requiredRun(changes).model)
    expect(required.ok && required.value.requirements).toEqual(requiredRun(changes).requirements)
  })

  test('holds any lawful layout', () => {
    let held = 0
    for (let seed = 0; seed < 60; seed++) {
      const random = [randomRun, randomReducedRun, randomStandingRun][seed % 3]!
      const request = random(mulberry32(seed), (['none', 'first', 'second', 'both'] as const)[seed % 4]!)
      const solved = solveLayout(request)
      const [layout] = solved.ok ? solved.value.runs : []
      if (layout === undefined) continue
      const file = fileOf(request)
      const model = {
        ...requiredRun({}).model,
        layout,
        system: request.system,
        first: request.first,
        second: request.second,
      }
      const run = pinnedTo({ run: file, model }, { id: 'v1', earlier: [] })
      expect(readRun('run', writeRun(run)), `seed ${seed}`).toEqual({ ok: true, value: run })
      held++
    }
    expect(held).toBeGreaterThan(15)
  })

  test('names what is in the way of a gap one by one; a text that once named them all stays as it was written', () => {
    const obstructions = (both: readonly object[]) => pinned({ obstructions: both })
    const one = obstructions([{ name: 'the culvert', from: '2 ft', to: '9 ft 6 in' }])
    const two = obstructions([
      { name: 'pipe and valve', from: '2 ft', to: '9 ft' },
      { name: 'the culvert', from: '2 ft', to: '9 ft 6 in' },
    ])
    const inTheWay = (run: RunFile) => run.version!.layout.omitted.map((post) => post.obstructions)
    expect(inTheWay(one)).toEqual([['the culvert']])
    expect(inTheWay(two)).toEqual([['pipe and valve', 'the culvert']])
    const file = JSON.parse(writeRun(two))
    expect(runFromValue('run', file)).toEqual({ ok: true, value: two })

    const old = changed(file, ['layout', 'omitted', 0, 'obstruction'], 'pipe and valve and the culvert')
    const read = runFromValue('run', old)
    expect(read.ok && JSON.parse(writeRun(read.value))).toEqual(old)
    expect(problemsOf(changed(file, ['layout', 'omitted', 0, 'obstruction'], []))).toHaveLength(1)
  })

  test('is laid out as it was chosen, though nothing of its hardware is on the shelf, or something else is', () => {
    const renamed = JSON.parse(
      writeRun(demo).replaceAll('w-beam-midspan-31', 'no-such-system').replaceAll('-terminal-31', '-terminal-of-old'),
    )
    expect(problemsOf(renamed)).toEqual([])
    const lower = changed(raw, ['sheets', 0, 'railHeight', 'low'], 29)
    const read = runFromValue('run', lower)
    const required = read.ok ? requireRun('run', read.value) : read
    const limits = required.ok && required.value.requirements.find(({ id }) => id === 'post-9/rail-height')!.look
    expect(limits).toMatchObject({ limits: { low: 29 } })
  })

  test('stays the layout that it is where another would now be best', () => {
    const layout = demo.version!.layout
    const moved = {
      ...demo,
      version: { ...demo.version!, layout: { ...layout, postOneAtInches: layout.postOneAtInches - 75 } },
    }
    const required = requireRun('run', moved)
    expect(required.ok && required.value.model.layout).toEqual(moved.version.layout)
  })

  test.each<[string, readonly (string | number)[], unknown, readonly string[]]>([
    ['without its layout', ['layout'], undefined, ['layout: expected "layout" in lapwise-run/2']],
    [
      'that only asks and yet has a version',
      ['format'],
      'lapwise-run/1',
      ['version', 'earlier', 'layout'].map((field) => `${field}: expected nothing in lapwise-run/1, which only asks`),
    ],
    [
      'without the sheet of its end',
      ['sheets'],
      raw.sheets.filter(({ id }: HardwareSheet) => id !== 'flared-terminal-31'),
      [`first.sheet: expected the id of an end's sheet in "sheets"`],
    ],
    ['with a sheet not in use', ['sheets', 3], shippedSheets[3], ['sheets[3]: expected a sheet in use']],
    [
      'with two posts of one id',
      ['layout', 'posts', 4, 'id'],
      'post-4',
      ['layout.posts[4].id: expected something not'],
    ],
    [
      'with an id that is none',
      ['layout', 'posts', 4, 'id'],
      'post-5/block',
      ['layout.posts[4].id: expected an id of the form post-9 or post-9~0a1b2c'],
    ],
    [
      'with the id of a place that is gone',
      ['earlier'],
      [{ id: 'v0', gone: ['post-5'], askedOtherwise: [] }],
      ['layout.posts[4].id: expected an id of no place that is gone'],
    ],
    [
      'that came from itself',
      ['earlier'],
      [{ id: 'v1', gone: [], askedOtherwise: [] }],
      ['version: expected something not listed before'],
    ],
    ['whose post 1 is not at 0', ['layout', 'posts', 0, 'along'], 1, ['layout.posts[0].along: expected 0']],
    [
      'whose posts go back',
      ['layout', 'posts', 4, 'along'],
      10,
      ['layout.posts[4].along: expected more than 225 in, where the post before stands'],
    ],
    [
      'whose panels leave a hole',
      ['layout', 'panels', 2, 'to'],
      400,
      ['layout.panels[3].from: expected 400 in, where the panel', 'layout.splices[2].at: expected 400 in, where the'],
    ],
    [
      'with a panel that ends before it begins',
      ['layout', 'panels', 2, 'to'],
      170,
      ['layout.panels[2].to: expected more than 300 in', 'layout.panels[3].from: ', 'layout.splices[2].at: '],
    ],
    ['with a space too few', ['layout', 'spaces'], ['space-1'], ['layout.spaces: expected 19 in the list']],
    [
      'with a splice too few',
      ['layout', 'splices'],
      [],
      [`layout.splices: expected ${raw.layout.panels.length - 1} in the list`],
    ],
    [
      'with a post left out where one stands',
      ['layout', 'omitted', 0, 'along'],
      75,
      ['layout.omitted[0].along: expected a place where no post stands'],
    ],
    [
      'whose end begins again after the run',
      ['layout', 'posts', 12, 'unit'],
      'first',
      [
        'layout.posts[12].unit: expected nothing before "run"',
        `layout.posts: expected ${raw.sheets[1].posts.length} posts of the first end`,
        'layout.posts[12].ownNumber: expected the number of a post of flared-terminal-31',
      ],
    ],
    [
      'whose end has another post than its sheet',
      ['layout', 'posts', 0, 'kind'],
      'standard post',
      ['layout.posts[0].kind: expected "hinged breakaway post"'],
    ],
    [
      'whose end has a block that its sheet has not',
      ['layout', 'posts', 0, 'block'],
      true,
      ['layout.posts[0].block: expected false'],
    ],
    [
      'whose end has a panel of another length than its sheet',
      ['layout', 'panels', 0, 'ownNumber'],
      7,
      ['layout.panels[0].ownNumber: expected the number of a panel of flared-terminal-31 of this length'],
    ],
    [
      'whose splice at a post is said to lie between two',
      ['layout', 'splices', 0, 'position'],
      'midspan',
      ['layout.splices[0].position: expected "post", as one stands there'],
    ],
  ])('%s is refused by place', (_, path, value, problems) => {
    const found = problemsOf(changed(raw, path, value))
    expect(found).toEqual(problems.map((problem) => expect.stringContaining(`run: ${problem}`)))
  })
})

/** The least that a run file says which asks for this. */
function fileOf(request: LayoutRequest): RunFile {
  const end = (one: RunEnd): RunFile['first'] =>
    one.kind === 'unit' ? { kind: 'unit', sheet: one.sheet.id, atInches: one.atInches } : one
  const { need, stock, obstructions, reduced, standing, mayExtendInches } = request
  return {
    ...requiredRun({}).run,
    ...{ need, stock, obstructions, reduced, standing, mayExtendInches, curb: undefined },
    ...{ system: request.system.id, first: end(request.first), second: end(request.second), decision: null },
  }
}
