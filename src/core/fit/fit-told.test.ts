import { describe, expect, it } from 'vitest'
import { check, facts, feet, inches, sheet } from '../../../test/fixtures/fit-facts.ts'
import type { EndSheet, LongitudinalSheet, WorkingWidth } from '../hardware/hardware-sheet.ts'
import { contentOf, nameOf } from '../hardware/sheet-text.ts'
import { title } from '../hardware/title.ts'
import { exactLength } from '../units/exact-length.ts'
import { checkFit } from './check-fit.ts'
import { checkGround } from './check-ground.ts'
import { checkWorkingWidth } from './check-working-width.ts'
import type { Curb, FitFacts } from './fit.ts'

/** What a designer is told beside the verdict: what there is, what is allowed, and the smallest change. */
const curbAt = (speed: number, curb: Partial<Curb>, unit: 'mi/h' | 'km/h' = 'mi/h') =>
  check(
    'curb before rail',
    {
      speed: { value: speed, unit },
      curb: { height: inches(4), face: 'sloping', faceSlope: 3, toRail: 0, ...curb },
    },
    { by: 'guide' },
  )

describe('of a curb before the rail', () => {
  // Roadside Design Guide 2011, 5.6.2.1.1: the height, the distance and the face that each speed allows.
  it.each([
    [61, { highestInches: 4, leastBehindFeet: null, faceSlope: 3 }],
    [60, { highestInches: 4, leastBehindFeet: null, faceSlope: null }],
    [50, { highestInches: 4, leastBehindFeet: 13, faceSlope: null }],
    [44, { highestInches: 6, leastBehindFeet: 8, faceSlope: null }],
  ])('what is allowed at %d mi/h', (speed, allowed) => {
    expect(curbAt(speed, {}).limit).toMatchObject({ kind: 'curb allowed', flushInches: 6, ...allowed })
  })

  it('what is to be changed, and nothing that is right already', () => {
    const change = (speed: number, curb: Partial<Curb>) => curbAt(speed, curb).smallestChange
    const nothing = { kind: 'change curb', highestInches: null, railFlush: false, face: null }
    expect(change(55, { height: inches(5) })).toEqual({ ...nothing, highestInches: 4 })
    expect(change(40, { height: inches(7) })).toEqual({ ...nothing, highestInches: 6 })
    expect(change(55, { toRail: inches(7) })).toEqual({ ...nothing, railFlush: true })
    expect(change(55, { face: 'vertical' })).toEqual({ ...nothing, face: { slope: null } })
    expect(change(65, { faceSlope: 2 })).toEqual({ ...nothing, face: { slope: 3 } })
    // 8 ft behind is as right as flush at 40 mi/h, and neither at 55.
    expect(change(40, { height: inches(7), toRail: feet(8) })).toEqual({ ...nothing, highestInches: 6 })
    expect(change(55, { height: inches(5), toRail: feet(8) })).toEqual({
      ...nothing,
      ...{ highestInches: 4, railFlush: true },
    })
  })

  it('that a test passed with a higher one, where that one stood so', () => {
    const differs = (curb: Partial<Curb>) => {
      const { limit } = curbAt(55, curb)
      return limit.kind === 'curb allowed' && limit.testDiffers
    }
    expect(differs({ height: inches(6), toRail: inches(6) })).toBe(true)
    // Low enough already, not flush, vertical: no test says anything else.
    expect(differs({ height: inches(4) })).toBe(false)
    expect(differs({ height: inches(6), toRail: inches(6.01) })).toBe(false)
    expect(differs({ height: inches(6), face: 'vertical' })).toBe(false)
  })

  it('that a vehicle may go over it, up to 7 m behind where it stands far enough by the guide', () => {
    const differs = (toRail: number) => {
      const { limit } = curbAt(45, { toRail })
      return limit.kind === 'curb allowed' && limit.textsDiffer
    }
    expect(differs(exactLength(7, 'm'))).toBe(true)
    expect(differs(exactLength(7001, 'mm'))).toBe(false)
    expect(differs(0)).toBe(false)
  })

  it('at a speed that is given as a fraction', () => {
    // 80.46721 km/h is above 50 mi/h (80.4672), by a part of a millimetre an hour it is not.
    expect(curbAt(80.46721, { toRail: feet(13) }, 'km/h').verdict).toBe('fails')
    expect(curbAt(80.467_200_4, { toRail: feet(13) }, 'km/h').verdict).toBe('meets')
  })

  it('what the site says of it', () => {
    const value = (curb: FitFacts['curb']) => check('curb before rail', { curb }).value
    expect(value(null)).toEqual({ kind: 'site does not say' })
    expect(value('none')).toEqual({ kind: 'curb there is', curb: 'none' })
    const atTerminal = (curb: FitFacts['curb']) => check('curb before terminal', { curb }).value
    expect(atTerminal(null)).toEqual({ kind: 'site does not say' })
    expect(atTerminal('none')).toEqual({ kind: 'curb there is', curb: 'none' })
    expect(check('curb before terminal', {}).limit).toEqual({
      ...{ kind: 'no curb near terminal', fromFeet: 50, highestInches: 4 },
    })
  })
})

describe('of an end on a system', () => {
  const other = sheet('w-beam-post-splice-27-3-4') as LongitudinalSheet
  const end = facts.approach!

  it('which system was chosen, and what joins another', () => {
    expect(check('end on chosen system', {}).value).toEqual({ kind: 'chosen system', id: 'w-beam-midspan-31' })
    expect(check('end on chosen system', { system: null }).value).toEqual({ kind: 'chosen system', id: null })
    expect(check('end on chosen system', { system: other }).smallestChange).toEqual({
      ...{ kind: 'take joining parts', systems: end.joins, chosen: nameOf(other) },
    })
  })

  it('of its crash test nothing, where the work or its letting decide and nobody said them', () => {
    const silent = checkFit({ ...facts, work: null, letting: null })
    // The system passed both tests that may be needed, the terminal one of them.
    expect(silent.slice(0, 2).map(({ verdict }) => verdict)).toEqual(['meets', 'unread'])
    expect(silent[1]!.smallestChange).toBeNull()
  })
})

describe('of an adjoining run', () => {
  const adjoining = (railHeight: number, splice: 'post' | 'midspan' | null, changes: Partial<FitFacts> = {}) =>
    check('against adjoining run', { adjoining: { railHeight: inches(railHeight), splice }, ...changes })

  it('nothing without a system, or where nothing adjoins', () => {
    const kinds = (changes: Partial<FitFacts>) => checkFit({ ...facts, ...changes }).map(({ what }) => what.kind)
    expect(kinds({ adjoining: null })).not.toContain('against adjoining run')
    expect(kinds({ adjoining: { railHeight: inches(31), splice: null }, system: null })).not.toContain(
      'against adjoining run',
    )
  })

  it('by how much and over what length the rail has to rise, and which panels shift its splices', () => {
    const met = { kind: 'meet adjoining run', height: null, shiftingPanels: null }
    const rise = (by: number) => ({ by: inches(by), overFeet: [25, 50] })
    expect(adjoining(27.75, 'midspan').smallestChange).toEqual({ ...met, height: rise(3.25) })
    // 1 in apart is borne: only the splices are to be shifted.
    expect(adjoining(30, 'post').smallestChange).toEqual({ ...met, shiftingPanels: [112.5, 187.5] })
    expect(adjoining(27.75, 'post').smallestChange).toEqual({
      ...{ ...met, height: rise(3.25), shiftingPanels: [112.5, 187.5] },
    })
  })

  it('that the rise has to lie before the terminal, where there is one', () => {
    expect(adjoining(27.75, null).source).toMatchObject({ beforeTerminal: true })
    expect(adjoining(27.75, null, { approach: null }).source).toMatchObject({ beforeTerminal: false })
  })
})

describe('of the length of a run', () => {
  const departure = sheet('bridge-end-31') as EndSheet
  const needed = facts.approach!.listedLength.inches + 150

  it('how much rail is missing before a transition, in whole panels of 150 in', () => {
    const at = (runLength: number) => check('barrier before transition', { departure, runLength })
    const short = (by: number) => at(inches(needed + departure.listedLength.inches - by)).smallestChange
    expect(short(1)).toEqual({ kind: 'add rail before transition', inches: 150 })
    expect(short(150)).toEqual({ kind: 'add rail before transition', inches: 150 })
    expect(short(151)).toEqual({ kind: 'add rail before transition', inches: 300 })
    expect(at(inches(needed + departure.listedLength.inches)).smallestChange).toBeNull()
    expect(check('barrier before transition', { departure, approach: facts.approach }).limit).toMatchObject({
      ...{ inches: needed, leastInches: 562.5, plainInches: 150 },
    })
  })

  it('of rail before a transition nothing where the run goes on', () => {
    const kinds = checkFit({ ...facts, departure: null }).map(({ what }) => what.kind)
    expect(kinds).not.toContain('barrier before transition')
    expect(kinds).toContain('length of run')
  })

  it('how long it is, or that it is not laid out yet', () => {
    expect(check('length of run', {}).value).toEqual({ kind: 'length there is', length: feet(200) })
    expect(check('length of run', { runLength: null }).value).toEqual({ kind: 'length not laid out' })
    expect(check('length of run', { runLength: null }).smallestChange).toBeNull()
  })

  it('of one shorter than was tested how many panels are missing', () => {
    // 75 ft passed a test, 175 ft is advised.
    expect(check('length of run', { runLength: feet(75) - 1 }).smallestChange).toEqual({
      kind: 'add rail',
      inches: 150,
    })
    expect(check('length of run', { runLength: feet(50) }).smallestChange).toEqual({ kind: 'add rail', inches: 300 })
    const verdict = (runLength: number) => check('length of run', { runLength }).verdict
    expect([feet(75) - 1, feet(75), feet(175) - 1, feet(175)].map(verdict)).toEqual([
      ...['fails', 'unread', 'unread', 'meets'],
    ])
  })
})

describe('of the ground', () => {
  const ground = (changes: Partial<FitFacts['ground']>, more: Partial<FitFacts> = {}) =>
    checkGround({ ...facts, ...more, ground: { ...facts.ground, ...changes } })

  it('what there is, or that the site does not say', () => {
    const all = { platformSlope: 10, behindPostOne: feet(5), recoveryLength: feet(75), recoveryWidth: feet(20) }
    expect(ground({ ...all, besideSlope: 3 }).map(({ value }) => value)).toEqual([
      { kind: 'slope there is', run: 10 },
      { kind: 'length there is', length: feet(5) },
      { kind: 'length there is', length: feet(75) },
      { kind: 'length there is', length: feet(20) },
      { kind: 'slope there is', run: 3 },
    ])
    expect(ground({}).map(({ value }) => value.kind)).toEqual(Array(5).fill('site does not say'))
  })

  it('that a tangent terminal needs less, only where the flare is more than 2 ft', () => {
    const terminal = facts.approach!
    const orTangent = (nominal: number | 'notStated' | null) => {
      const flare = terminal.flare as Exclude<EndSheet['flare'], 'none'>
      const approach = {
        ...terminal,
        flare: nominal === null ? ('none' as const) : { ...flare, offset: { ...flare.offset, nominal } },
      }
      const change = ground({ platformSlope: 6 }, { approach })[0]!.smallestChange
      return change?.kind === 'grade platform' && change.orTangent
    }
    expect([24.01, 24, 'notStated' as const, null].map(orTangent)).toEqual([true, false, false, false])
  })

  it('of a slope that breaks, how far the ground goes on, or the posts that stand without', () => {
    const broken = (slopeBehind: number) => ground({ slopeBehind, breakBehindPost: 0 }).at(-1)!
    expect(broken(2)).toMatchObject({
      limit: { kind: 'ground at least to break', inches: 12, slope: 2 },
      value: { kind: 'length there is', length: 0 },
      smallestChange: { kind: 'take longer posts at break', feet: [8, 9], halfSpacingFeet: 7 },
    })
    expect(broken(1.5)).toMatchObject({
      limit: { kind: 'ground at least to break', inches: 24, slope: 1.5 },
      smallestChange: { kind: 'widen ground to break', inches: 24, feet: [8, 9], beforeBreakFeet: 1 },
    })
    expect(ground({ besideSlope: 2 }).at(-1)!.limit).toEqual({ kind: 'foreslope or flatter', run: 3, never: 1.5 })
  })

  it('the source of a platform that says it for itself', () => {
    const terminal = facts.approach!
    const sources = {
      ...terminal.sources,
      one: { title: 'One', edition: '1' },
      other: { title: 'Other', edition: '2' },
    }
    const source = (name: string, edition: string) =>
      contentOf({ kind: 'source', title: title(name), edition: title(edition) })
    const told = (platformSlope: unknown) => {
      const grading = { ...(terminal.grading as object), platformSlope, source: 'one' } as never
      const [first] = ground({ platformSlope: 10 }, { approach: { ...terminal, sources, grading } })
      return [contentOf(first!.source), first!.verdict]
    }
    expect(told(10)).toEqual([source('One', '1'), 'meets'])
    const own = { run: 12, source: 'other', confirmation: 'published' }
    expect(told(own)).toEqual([source('Other', '2'), 'fails'])
  })
})

describe('of the room behind the rail', () => {
  // NCHRP 350, full spacing 60 in, half 44, quarter 36: invented, so that each row is told apart.
  const row = (spacing: WorkingWidth['spacing'], standard: WorkingWidth['standard'], wide: number): WorkingWidth =>
    ({ spacing, standard, inches: wide, source: 'test', confirmation: 'published' }) as WorkingWidth
  const system = (...rows: readonly WorkingWidth[]): LongitudinalSheet => ({ ...facts.system!, workingWidths: rows })
  const nearest = (clear: number) => ({ hazard: 'the pier', clear: inches(clear), length: feet(6.25) })
  const told = (of: LongitudinalSheet, clear: number, changes: Partial<FitFacts> = {}) =>
    checkWorkingWidth({ ...facts, system: of, nearest: nearest(clear), ...changes })[0]!
  const three = system(row('full', 'MASH', 60), row('half', 'MASH', 44), row('quarter', 'MASH', 36))
  const mash = { letting: '2026-01-15' }

  it('the widest closer spacing that fits, over the hazard and 25 ft before it, on both sides of two-way traffic', () => {
    // 75 in and 25 ft before: 375 in, five spaces of 75 and no more; both ways 675 in, nine.
    expect(told(three, 44, { ...mash, twoWay: false }).smallestChange).toEqual({
      ...{ kind: 'space posts closer', spacing: 'half', overInches: 375, needsInches: 44, half: null },
    })
    expect(told(three, 44, { ...mash, twoWay: true }).smallestChange).toMatchObject({ overInches: 675 })
    const before = facts.system!.spacings.halfBeforeQuarter.inches
    expect(told(three, 43, { ...mash, twoWay: true }).smallestChange).toMatchObject({
      ...{ spacing: 'quarter', needsInches: 36, half: { inches: before, at: 'both ends' } },
    })
    expect(told(three, 43, { ...mash, twoWay: false }).smallestChange).toMatchObject({
      half: { inches: before, at: 'begin' },
    })
  })

  it('by how much the rail has to move where no spacing fits', () => {
    expect(told(three, 35, mash).smallestChange).toEqual({ kind: 'move rail away', by: inches(25), hazard: 'the pier' })
    expect(told(three, 60, mash)).toMatchObject({ verdict: 'meets', smallestChange: null })
    const hair = { ...mash, nearest: { ...nearest(60), clear: inches(60) - 1 } }
    expect(told(three, 60, hair).verdict).toBe('fails')
  })

  it('the row of MASH where NCHRP 350 is enough and none is tested to it, and never the other way round', () => {
    const old = { work: 'new', letting: '2010-01-15' } as const
    const both = system(row('full', 'MASH', 60), row('full', 'NCHRP 350', 49))
    expect(told(both, 50, old).limit).toMatchObject({ inches: 49, standard: 'NCHRP 350' })
    expect(told(both, 50, mash).limit).toMatchObject({ inches: 60, standard: 'MASH' })
    expect(told(three, 50, old).limit).toMatchObject({ inches: 60 })
    expect(told(system(row('full', 'NCHRP 350', 49)), 50, mash)).toMatchObject({
      ...{ verdict: 'unread', limit: { kind: 'working width not stated', standard: 'MASH' } },
    })
  })
})
