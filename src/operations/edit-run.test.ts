import { describe, expect, test } from 'vitest'
import { soundReading } from '../../test/fixtures/sound-reading.ts'
import { demoAsked } from '../../test/fixtures/three-versions.ts'
import { placeFreeFindings } from '../core/verdicts/free-findings.ts'
import { runFromValue } from '../formats/run/run-file.ts'
import { runToValue } from '../formats/run/write-run.ts'
import { editChoices, editEffects } from './edit-run.ts'
import { layOutRun } from './lay-out-run.ts'
import { pinRun } from './pin-run.ts'
import { lawfulInstead, placeOfRefusal } from './place-of-refusal.ts'
import type { RequiredRun } from './require-by.ts'
import { requireRun } from './require-run.ts'
import { versionProblems } from './version-problems.ts'

const sound = <T, E>(result: { ok: true; value: T } | { ok: false; error: E }): T => {
  if (!result.ok) throw new Error('refused', { cause: result.error })
  return result.value
}

const ids = { first: '018f0000-0000-7000-8000-000000000001', next: '018f0000-0000-7000-8000-000000000002' }
const before: RequiredRun = sound(requireRun('run', sound(pinRun('run', demoAsked({}), ids.first))))
const readings = before.requirements.flatMap((one) =>
  soundReading(one).map((reading) => ({ ...reading, together: null })),
)

const lastPost = before.model.layout.posts.at(-1)!.id
/** What three photos show: the run, something at its first end and something at its last post. */
const photos = [null, 'post-1/rail-height', `${lastPost}/rail-height`]

const seen = {
  what: 'erosion',
  note: null,
  photos: [],
  by: 'R. Quist',
  at: '2026-05-04T10:00:00Z',
  closed: null,
} as const
const put = { id: 'closed', as: 'put right', note: null, photos: [], by: 'R. Quist', at: seen.at } as const
const freeFindings = placeFreeFindings(before.model, [
  { ...seen, id: 'first', of: 'post-1' },
  { ...seen, id: 'last', of: lastPost },
  { ...seen, id: 'closed', of: lastPost, closed: put },
])
const ticket = (name: string, from: string) => ({
  ...{
    number: name,
    calledOn: '2026-05-01',
    validFrom: '2026-05-04',
    validThrough: '2026-05-18',
    version: ids.first,
    marks: [{ name: 'gas', from, alongInches: 0 }],
  },
})
const tickets = [ticket('at the first post', 'post-1'), ticket('at the last post', lastPost)]

/** The edited run with the layout that it gets unless another is chosen, and what becomes of all readings. */
function edited(changes: object) {
  const asked = sound(runFromValue('asked', { ...runToValue({ ...before.run, version: undefined }), ...changes }))
  const laid = sound(layOutRun('asked', asked, 3))
  const choices = editChoices(before, laid)
  const layout = choices.layouts[choices.asIs ?? 0]!
  const version = { version: ids.next, because: 'the ditch was moved' }
  const effects = editEffects(
    { ...before, readings, photos, freeFindings, tickets },
    new Map(),
    { run: asked, request: laid.request, layout },
    version,
  )
  return { choices, effects, layout }
}

describe('an edit', () => {
  test('of name and title block moves nothing, and says so', () => {
    const { choices, effects } = edited({
      name: 'another name',
      project: 'resurfacing',
      road: { ...before.run.road, route: 'SR 9' },
    })
    expect(choices.asIs).toBe(0)
    expect(effects).toMatchObject({
      isOnlyNamed: true,
      gone: [],
      added: [],
      asked: [],
      photosAsked: 0,
      staying: readings.length,
    })
    expect(effects.run).toMatchObject({ name: 'another name', project: 'resurfacing' })
  })

  test('of the letting date changes no layout, and is not said to change nothing where requirements follow from it', () => {
    const { choices, effects } = edited({ work: 'standing' })
    expect(choices.asIs).toBe(0)
    expect(effects.gone).toEqual([])
    expect(effects.isOnlyNamed).toBe(false)
  })

  test('that makes the run longer keeps what was read at the first end and no longer judges what was read at its last post', () => {
    const { choices, effects } = edited({ need: { from: '-50 ft', to: '200 ft' } })
    expect(choices.asIs).toBeNull()
    const gone = new Set(effects.asked.map(({ reading }) => reading.of.split('/')[0]))
    // The last post of all closes the run; a longer one has another post there.
    expect(gone).toContain(lastPost)
    expect(effects.photosAsked).toBe(1)
    expect(effects.findingsLeft.map(({ finding }) => finding.id)).toEqual(['last'])
    expect(effects.ticketsLeft.map((one) => one.number)).toEqual(['at the last post'])
    expect(gone).not.toContain('post-1')
    expect(effects.asked.length + effects.staying).toBe(readings.length)
    expect(effects.asked.every(({ because }) => because === 'place gone' || because === 'no longer asked')).toBe(true)
  })

  test('makes a version that is taken in, with the reason that was given', () => {
    const { effects } = edited({ need: { from: '-50 ft', to: '200 ft' } })
    expect(versionProblems('run', effects.run, ids.next, before.run)).toEqual([])
    expect(effects.run.version?.earlier.at(-1)).toMatchObject({ id: ids.first, because: 'the ditch was moved' })
    const again = sound(runFromValue('again', runToValue(effects.run)))
    expect(again.version?.earlier).toEqual(effects.run.version?.earlier)
  })

  test('offers the layout that stands also where the search no longer finds it', () => {
    const laid = sound(layOutRun('asked', demoAsked({}), 3))
    const without = { ...laid, layouts: laid.layouts.slice(1) }
    expect(editChoices(before, laid)).toMatchObject({ asIs: 0 })
    expect(editChoices(before, without).layouts[0]).toBe(before.model.layout)
    const other = { ...without, request: { ...laid.request, mayExtendInches: 0 } }
    expect(editChoices(before, other).asIs).toBeNull()
  })
})

describe('a reason against every layout', () => {
  const terminal = (at: string) => ({ sheet: 'flared-terminal-31', at })
  const anchor = (at: string) => ({ sheet: 'trailing-anchor-31', at })
  const refusedOf = (changes: object) => {
    const run = demoAsked({ need: null, obstructions: [], decision: null, ...changes })
    const laid = sound(layOutRun('run', run, 1))
    return { run, laid, kinds: laid.refused.map(({ kind }) => kind) }
  }

  test('stands at the field that it follows from', () => {
    const places = (changes: object): readonly string[] => {
      const { run, laid } = refusedOf(changes)
      expect(laid.layouts).toEqual([])
      return laid.refused.map((refusal) => placeOfRefusal(refusal, run))
    }
    const need = { from: 0, to: '100 ft' }
    expect(places({ need, stock: ['9 ft 4 1/2 in'] })).toContain('stock')
    expect(places({ first: terminal('0 in'), second: anchor('84 ft 2 in') })).toContain('second.at')
    expect(places({ need, first: terminal('10 ft') })).toContain('first.at')
    expect(places({ need, obstructions: [{ name: 'pit', from: '20 ft', to: '60 ft' }], mayExtend: 0 })).toContain(
      'obstructions[0].from',
    )
    expect(
      places({ need, first: terminal('0 in'), standing: { postOneAt: '5 ft', panels: [], postsDriven: 1 } }),
    ).toContain('standing.postOneAt')
  })

  test('goes away with the value that is offered instead', () => {
    const { run, laid } = refusedOf({ first: terminal('0 in'), second: anchor('84 ft 2 in') })
    const refusal = laid.refused.find(({ kind }) => kind === 'ends do not meet')!
    const { place, inches } = lawfulInstead(refusal, run)!
    expect(place).toBe('second.at')
    expect(inches.length).toBeGreaterThan(0)
    for (const at of inches)
      expect(refusedOf({ first: terminal('0 in'), second: anchor(`${at} in`) }).kinds).not.toContain('ends do not meet')
  })

  test('that an end leaves part of the need without rail goes away with the place that is offered for it', () => {
    const need = { from: 0, to: '100 ft' }
    const { run, laid } = refusedOf({ need, first: terminal('10 ft') })
    const { inches } = lawfulInstead(laid.refused.find(({ kind }) => kind === 'does not cover')!, run)!
    expect(refusedOf({ need, first: terminal(`${inches[0]} in`) }).kinds).not.toContain('does not cover')
    expect(refusedOf({ need, first: terminal(`${inches[0]! + 1 / 16} in`) }).kinds).toContain('does not cover')
  })
})

test('a counted run keeps its places when only its name is edited, and its count can be edited', () => {
  const counted = {
    ...{ format: 'lapwise-run/1', name: 'counted', work: 'standing', system: 'w-beam-midspan-31' },
    ...{ first: { sheet: 'flared-terminal-31' }, second: { unknown: 'not looked at' } },
    counted: { panels: [150, 150, 112.5, 150], posts: 8 },
  }
  const was = sound(requireRun('run', sound(pinRun('run', sound(runFromValue('run', counted)), ids.first))))
  const edit = (changes: object) => {
    const run = sound(runFromValue('asked', { ...runToValue({ ...was.run, version: undefined }), ...changes }))
    const { request, layouts } = sound(layOutRun('asked', run, 3))
    const { asIs } = editChoices(was, { request, layouts })
    const nothing = { ...was, readings: [], photos: [], freeFindings: [], tickets: [] }
    const asked = { run, request, layout: layouts[0]! }
    return { asIs, effects: editEffects(nothing, new Map(), asked, { version: ids.next, because: null }) }
  }
  expect(edit({ name: 'another' })).toMatchObject({ asIs: 0, effects: { isOnlyNamed: true } })
  const longer = edit({ counted: { panels: [150, 150, 112.5, 150, 150], posts: 10 } })
  expect(longer).toMatchObject({ asIs: null, effects: { isOnlyNamed: false } })
  expect(longer.effects.added).toContainEqual(expect.stringMatching(/^panel-5~/))
})
