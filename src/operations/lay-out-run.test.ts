import { describe, expect, it } from 'vitest'
import { problemInWords } from '../formats/input-problem.ts'
import { runFromValue } from '../formats/run/run-file.ts'
import { english } from '../words/english.ts'
import { chooseLayout } from './choose-layout.ts'
import { layOutRun } from './lay-out-run.ts'
import { meansOfToday } from './means-of-today.ts'
import { pinRun } from './pin-run.ts'

const file = {
  format: 'lapwise-run/1',
  name: 'a long run',
  system: 'w-beam-midspan-31',
  first: { sheet: 'flared-terminal-31' },
  second: { sheet: 'trailing-anchor-31' },
  need: { from: 0, to: '900 ft' },
}

function run(changes: object = {}) {
  const read = runFromValue('run.json', { ...file, ...changes })
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value
}

describe('chooseLayout', () => {
  const laid = layOutRun('run.json', run(), 300)
  if (!laid.ok) throw new Error('not laid out')
  const last = laid.value.layouts.at(-1)!
  const decision = { postOneAt: last.postOneAtInches, panels: last.panels.map(({ inches }) => inches) }

  it('finds the decided layout among millions at once, as it was laid out', () => {
    const chosen = chooseLayout('run.json', run({ decision }), meansOfToday)
    expect(chosen.ok && chosen.value.layout).toEqual(last)
  })

  it.each([
    { first: { sheet: 'flared-terminal-31' }, need: { from: 300, to: 1200 } },
    { first: { standingSplice: { at: 0, position: 'post' } }, need: null },
  ])('finds a decided layout that ends at a standing splice on a post: %o', (ends) => {
    const closed = { ...ends, second: { standingSplice: { at: 1500, position: 'post' } } }
    const best = layOutRun('run.json', run(closed), 1)
    const [layout] = best.ok ? best.value.layouts : []
    const panels = layout!.panels.map(({ inches }) => inches)
    const chosen = chooseLayout(
      'run.json',
      run({ ...closed, decision: { postOneAt: layout!.postOneAtInches, panels } }),
      meansOfToday,
    )
    expect(chosen.ok && chosen.value.layout).toEqual(layout)
  })

  it('lays out nothing that is not pinned where there is nothing to lay it out by', () => {
    const refused = chooseLayout('run.json', run(), null)
    expect(refused.ok ? [] : refused.error).toMatchObject([{ place: 'format', found: { text: '"lapwise-run/1"' } }])
    const pinned = pinRun('run.json', run(), 'version')
    const chosen = pinned.ok ? chooseLayout('run.json', pinned.value, null) : pinned
    expect(chosen.ok && chosen.value.layout).toMatchObject({ postOneAtInches: laid.value.layouts[0]!.postOneAtInches })
  })

  it('takes the best where nothing is decided', () => {
    const chosen = chooseLayout('run.json', run(), meansOfToday)
    expect(chosen.ok && chosen.value.layout).toEqual(laid.value.layouts[0])
  })

  it('says so when the decided panels are no lawful layout', () => {
    const panels = decision.panels.map((inches, i) => (i === 2 ? 150 : inches))
    const chosen = chooseLayout('run.json', run({ decision: { ...decision, panels } }), meansOfToday)
    expect(chosen.ok ? [] : chosen.error.map((one) => problemInWords(one, english(null)))).toMatchObject([
      { place: 'decision', found: expect.stringContaining('panel 3 as hung is 12 ft 6 in') },
    ])
  })
})
