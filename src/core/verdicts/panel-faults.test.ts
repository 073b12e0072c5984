import { describe, expect, it } from 'vitest'
import { modelFrom } from '../../../test/fixtures/verdict-model.ts'
import type { EndSheet } from '../hardware/hardware-sheet.ts'
import { sheetText } from '../hardware/sheet-text.ts'
import { instruments } from '../measurement/instruments.ts'
import type { Reading } from '../measurement/reading.ts'
import { deriveRequirements } from '../requirements/derive-requirements.ts'
import { judgeRun } from './judge-run.ts'

const model = modelFrom('flared-terminal-31', 1000)
const requirements = deriveRequirements(model)

/** As they hang: two of the terminal and its adapter, four of the run, the anchor's adapter; post spaces are 75 in. */
const lengths = [150, 150, 112.5, 300, 300, 300, 150, 187.5]
/** After the panel of the same number. */
const positions = ['post', 'post', 'midspan', 'midspan', 'midspan', 'midspan', 'midspan']

interface Changed {
  /** By number, the length that hangs; null where nobody looked. */
  readonly panels?: Readonly<Record<number, number | 'other' | null>>
  /** By number, splices that lie elsewhere; null where nobody looked. */
  readonly splices?: Readonly<Record<number, 'elsewhere' | null>>
  readonly isPlain?: boolean
}

/** The findings where all of that is read, and everything else of panels and splices is right. */
function found({ panels = {}, splices = {}, isPlain = false }: Changed) {
  const chosen: [string, string | null][] = [
    ...lengths.map((inches, i): [string, string | null] => {
      const is = panels[i + 1] === undefined ? inches : panels[i + 1]!
      return [`panel-${i + 1}/panel-length`, is === null ? null : is === 'other' ? is : `in-${is}`]
    }),
    ...positions.map((position, i): [string, string | null] => [
      `splice-${i + 1}/splice-position`,
      splices[i + 1] === undefined ? position : splices[i + 1]!,
    ]),
    ['panel-1/slotted-panel', isPlain ? 'plain' : 'slotted'],
  ]
  const readings = chosen.flatMap(([of, choice]): Reading[] =>
    choice === null
      ? []
      : [
          {
            ...{ id: `of ${of}`, of, answer: { kind: 'choice', choice }, instrument: null, uncertainty: null },
            ...{ by: 'J. Okafor', at: '2016-05-12T10:05:00Z', where: null, photos: [], corrects: null },
            ...{ rechecks: null, together: null },
          },
        ],
  )
  const rules = { rule: { kind: 'guard band', multiple: 1 }, instruments } as const
  return judgeRun(model, requirements, readings, rules).findings
}

const stands = (changed: Changed) => found(changed).map((one) => one.requirements)
const panel = (number: number) => `panel-${number}/panel-length`
const splice = (number: number) => `splice-${number}/splice-position`
const exchange = (number: number, from: number | null, to: number) => ({
  ...{ kind: 'exchange panel', panel: number, from, to, name: null },
})

it('the run is the one that is reckoned with by hand', () => {
  expect(model.layout.panels.map(({ inches }) => inches)).toEqual(lengths)
  expect(model.layout.splices.map(({ position }) => position)).toEqual(positions)
  expect(found({})).toEqual([])
})

describe('a panel of another length', () => {
  it('is exchanged for the one of the layout; an unknown one for it as well', () => {
    expect(found({ panels: { 5: 150 } })).toMatchObject([{ requirements: [panel(5)], steps: [exchange(5, 150, 300)] }])
    expect(found({ panels: { 5: 112.5 }, splices: { 5: 'elsewhere' } })[0]!.what.parts).toMatchObject([
      {
        ...{ kind: 'panels and splices', splices: [5] },
        panels: [{ place: { number: 5 }, because: { kind: 'chosen', choice: 'in-112.5' } }],
      },
    ])
    expect(found({ panels: { 5: 'other' } })).toMatchObject([{ steps: [exchange(5, null, 300)] }])
    expect(found({ panels: { 2: 112.5 } })).toMatchObject([{ steps: [exchange(2, 112.5, 150)] }])
  })

  it('is one finding with the splices that it shifts', () => {
    // 187 1/2 in are two and a half spaces.
    const splices = { 5: 'elsewhere', 6: 'elsewhere', 7: 'elsewhere' } as const
    expect(stands({ panels: { 5: 112.5 }, splices })).toEqual([[panel(5), splice(5), splice(6), splice(7)]])
  })

  it('goes together with the next until what hangs beyond is shifted by whole spaces', () => {
    // Two and a half spaces short, and one and a half: together four.
    expect(found({ panels: { 5: 112.5, 6: 187.5 }, splices: { 5: 'elsewhere' } })).toMatchObject([
      {
        requirements: [panel(5), panel(6), splice(5)],
        steps: [exchange(5, 112.5, 300), exchange(6, 187.5, 300)],
      },
    ])
    // Half a space too long and half a space too short: none.
    expect(stands({ panels: { 3: 150, 7: 112.5 } })).toEqual([[panel(3), panel(7)]])
    // Each two whole spaces short.
    expect(stands({ panels: { 4: 150, 6: 150 } })).toEqual([[panel(4)], [panel(6)]])
    // By how much an unknown length shifts nobody knows, so that the next is one of its own.
    expect(stands({ panels: { 4: 'other', 5: 112.5, 6: 187.5 } })).toEqual([[panel(4)], [panel(5), panel(6)]])
  })

  it('takes a wrong splice as long as anything is shifted; after that it is found apart', () => {
    // Two spaces short still shift, though by whole ones.
    expect(stands({ panels: { 4: 150 }, splices: { 6: 'elsewhere' } })).toEqual([[panel(4), splice(6)]])
    expect(stands({ panels: { 4: 150, 6: 187.5 }, splices: { 7: 'elsewhere' } })).toEqual([
      ...[[panel(4)], [panel(6), splice(7)]],
    ])
    // Panel 7 two spaces too long makes up for panel 4.
    const apart = found({ panels: { 4: 150, 7: 300 }, splices: { 7: 'elsewhere' } })
    expect(apart.map((one) => one.requirements)).toEqual([[panel(4)], [panel(7)], [splice(7)]])
  })

  it('is exchanged by its name where it has to be a particular one, and for the right kind as well', () => {
    const terminal = model.first.kind === 'unit' ? (model.first.sheet as EndSheet) : null
    const name = sheetText(terminal!, terminal!.panels.own[0]!.name)
    const slotted = 'panel-1/slotted-panel'
    expect(found({ panels: { 1: 187.5 }, isPlain: true })).toMatchObject([
      { requirements: [panel(1), slotted], steps: [{ ...exchange(1, 187.5, 150), name }] },
    ])
    expect(stands({ panels: { 1: 187.5 } })).toEqual([[panel(1)]])
  })
})

describe('a splice that lies wrong for no panel that is known', () => {
  const steps = (changed: Changed) =>
    found(changed).map((one) => one.steps.map((step) => (step.kind === 'measure first' ? step : step.kind)))
  const measure = (what: 'panels' | 'splice again', from: number, to: number, ...of: readonly string[]) => ({
    ...{ kind: 'measure first', what, requirements: of, from, to, using: null },
  })

  it('has the panels before it measured, from the last right splice on, or the last that nobody looked at', () => {
    expect(steps({ panels: { 5: null }, splices: { 5: 'elsewhere' } })).toEqual([[measure('panels', 5, 5, panel(5))]])
    expect(steps({ panels: { 4: null, 5: null }, splices: { 4: null, 5: 'elsewhere' } })).toEqual([
      [measure('panels', 4, 5, panel(4), panel(5))],
    ])
    expect(steps({ panels: { 3: null }, splices: { 5: 'elsewhere' } })).toEqual([[measure('panels', 3, 5, panel(3))]])
    // Not those before, nor those beyond the splice.
    expect(steps({ panels: { 3: null, 4: null, 7: null }, splices: { 5: 'elsewhere' } })).toEqual([
      [measure('panels', 4, 5, panel(4))],
    ])
  })

  it('is looked at again where all of them were measured', () => {
    expect(steps({ splices: { 5: 'elsewhere' } })).toEqual([[measure('splice again', 5, 5, splice(5))]])
    expect(steps({ splices: { 4: null, 5: 'elsewhere' } })).toEqual([[measure('splice again', 4, 5, splice(5))]])
  })

  it('is one finding with its wrong neighbours, and another beyond a right one', () => {
    expect(stands({ splices: { 4: 'elsewhere', 5: 'elsewhere' } })).toEqual([[splice(4), splice(5)]])
    expect(stands({ splices: { 4: 'elsewhere', 6: 'elsewhere' } })).toEqual([[splice(4)], [splice(6)]])
  })
})
