import { describe, expect, it } from 'vitest'
import { landedSheets } from '../../sheets/landed-sheets.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { hardwareKey, type KeyAnswer, type KeyState } from './hardware-key.ts'
import type { EndSheet, HardwareSheet } from './hardware-sheet.ts'
import { type KeyTrait, keyTraits, valuesOf } from './key-traits.ts'

const isEnd = (sheet: HardwareSheet): sheet is EndSheet => sheet.kind !== 'longitudinal'
const ends = shippedSheets.filter(isEnd)

/** The key answered by somebody who sees just what the sheet says, and is not sure of `unsure`. */
function answered(sheet: HardwareSheet, sheets: readonly HardwareSheet[], unsure: readonly KeyTrait[] = []) {
  const shelf = [...shippedSheets, ...sheets]
  const answers: KeyAnswer[] = []
  const states: KeyState<HardwareSheet>[] = []
  for (;;) {
    const state = hardwareKey(sheets, shelf, answers)
    states.push(state)
    if (state.question === null) return { left: state.left, answers, states }
    const { of } = state.question
    const [is] = valuesOf(of, sheet, shelf)
    answers.push({ of, is: is === undefined || unsure.includes(of) ? 'not sure' : is })
  }
}

const idsOf = (sheets: readonly HardwareSheet[]) => sheets.map(({ id }) => id)

describe('the key', () => {
  it.each(ends.map((sheet) => [sheet.id, sheet] as const))(
    'leads %s to itself, in at most four questions',
    (id, sheet) => {
      const { left, answers } = answered(sheet, ends)
      expect(idsOf(left)).toEqual([id])
      expect(answers.length).toBeLessThanOrEqual(4)
    },
  )

  it('tells the systems apart as well', () => {
    const systems = shippedSheets.filter((sheet) => !isEnd(sheet))
    expect(systems.length).toBeGreaterThan(1)
    for (const sheet of systems) expect(idsOf(answered(sheet, systems).left)).toEqual([sheet.id])
  })

  it('begins with what closes the rail', () => {
    expect(hardwareKey(ends, shippedSheets, []).question).toMatchObject({ of: 'end of rail' })
  })

  it('asks nothing whose answers do not divide what is left, whatever somebody is not sure of', () => {
    const traits = Object.keys(keyTraits) as KeyTrait[]
    let asked = 0
    for (const sheet of ends)
      for (const one of traits)
        for (const other of traits)
          for (const { left, question } of answered(sheet, ends, [one, other]).states) {
            if (question === null) continue
            asked++
            expect(question.options.length).toBeGreaterThan(1)
            for (const option of question.options) {
              expect(option.left.length).toBeLessThan(left.length)
              expect(option.left.length).toBeGreaterThan(0)
            }
          }
    expect(asked).toBeGreaterThan(1000)
  })

  it('keeps a sheet among what is left as long as no answer speaks against it', () => {
    for (const sheet of ends) expect(idsOf(answered(sheet, ends, ['end of rail', 'splices']).left)).toContain(sheet.id)
  })

  it('leaves nothing after "none of these", and everything after "not sure"', () => {
    const none = hardwareKey(ends, shippedSheets, [{ of: 'end of rail', is: 'none of these' }])
    expect(none).toEqual({ left: [], question: null })
    const unsure = hardwareKey(ends, shippedSheets, [{ of: 'end of rail', is: 'not sure' }])
    expect(unsure.left).toEqual(ends)
    expect(unsure.question?.of).not.toBe('end of rail')
  })
})

describe('a sheet that is added', () => {
  const flared = ends.find(({ id }) => id === 'flared-terminal-31')!
  const changes: readonly (readonly [string, Partial<EndSheet>])[] = [
    ['other posts', { posts: flared.posts.map((post) => ({ ...post, block: true })) }],
    ['no cable', { parts: flared.parts.filter(({ id }) => id !== 'anchor-cable' && id !== 'bearing-plate') }],
    ['another height', { railHeight: { ...flared.railHeight, nominal: 34, low: 33, high: 35 } }],
    [
      'a plain first panel',
      { panels: { ...flared.panels, own: flared.panels.own.map((one) => ({ ...one, slotted: false })) } },
    ],
    ['posts closer together', { posts: flared.posts.map((post) => ({ ...post, along: post.along / 2 })) }],
  ]

  it.each(changes)('is told apart by %s, without a line of code', (_, change) => {
    const added: EndSheet = { ...flared, id: 'added-terminal', ...change }
    const all = [...ends, added]
    expect(idsOf(answered(added, all).left)).toEqual(['added-terminal'])
    expect(idsOf(answered(flared, all).left)).toEqual([flared.id])
  })

  it('is left beside its twin where nothing that can be seen differs', () => {
    const twin: EndSheet = { ...flared, id: 'twin' }
    const { left, states } = answered(twin, [...ends, twin])
    expect(idsOf(left)).toEqual([flared.id, 'twin'])
    expect(states.at(-1)?.question).toBeNull()
  })

  it('that says less, as the older editions do, is left by each answer that it does not contradict', () => {
    const older = landedSheets.filter(isEnd)
    expect(older.length).toBeGreaterThan(5)
    for (const sheet of older) expect(answered(sheet, [...ends, sheet]).left).toContain(sheet)
  })
})
