import { expect, test } from 'vitest'
import { runFromValue } from '../../formats/run/run-file.ts'
import { layOutRun } from '../../operations/lay-out-run.ts'
import { type Draft, withValue } from '../form/draft.ts'
import { anewDraft } from './anew-draft.ts'
import { emptyDraft } from './run-draft.ts'

const draft = { ...emptyDraft('run', 'us'), need: { from: 0, to: 2400 } }

function laidOut(asked: Draft) {
  const run = runFromValue('draft', asked)
  const laid = run.ok ? layOutRun('draft', run.value, 4) : run
  if (!laid.ok) throw new Error('refused', { cause: laid.error })
  return laid.value.layouts
}

const first = laidOut(draft)[0]!
const along = (list: readonly { readonly alongInches: number }[]): readonly number[] =>
  list.map((one) => one.alongInches)

test('what is driven stays where it is, and a longer run goes on from it', () => {
  const from = first.posts[11]!
  const anew = anewDraft(draft, first, from.id, false)!
  expect(anew.draft.standing).toMatchObject({ postOneAt: first.postOneAtInches, postsDriven: 12, panels: [] })
  const longer = laidOut(withValue(anew.draft, 'need.to', 3000))
  expect(longer.length).toBeGreaterThan(0)
  for (const layout of longer) {
    expect(layout.postOneAtInches).toBe(first.postOneAtInches)
    expect(along(layout.posts).slice(0, 12)).toEqual(along(first.posts).slice(0, 12))
  }
})

test('panels that hang stay as they are, with the posts that carry them', () => {
  const hung = first.panels[3]!
  const anew = anewDraft(draft, first, hung.id, false)!
  const inches = first.panels.slice(0, 4).map((panel) => panel.inches)
  const driven = first.posts.filter(({ alongInches }) => alongInches <= hung.toInches).length
  expect(anew.draft.standing).toMatchObject({ panels: inches, postsDriven: driven })
  for (const layout of laidOut(anew.draft))
    expect(layout.panels.slice(0, 4).map((panel) => panel.inches)).toEqual(inches)
})

test('no layout has a post where one could not go', () => {
  const blocked = first.posts[16]!
  const anew = anewDraft(draft, first, blocked.id, true)!
  expect(anew.draft.standing).toMatchObject({ postsDriven: 16 })
  const layouts = laidOut(anew.draft)
  expect(layouts.length).toBeGreaterThan(0)
  for (const layout of layouts) {
    expect(layout.postOneAtInches).toBe(first.postOneAtInches)
    expect(along(layout.posts)).not.toContain(blocked.alongInches)
    expect(along(layout.posts).slice(0, 16)).toEqual(along(first.posts).slice(0, 16))
  }
})

test('a place that is no post or panel of the run is none to go on from', () => {
  expect(anewDraft(draft, first, 'run', false)).toBeNull()
})

test('a gap in what stands stays where it is, and no post is drawn in it', () => {
  const withGap = { ...draft, obstructions: [{ name: 'pipe', from: 1190, to: 1270 }] }
  const layout = laidOut(withGap)[0]!
  const gap = layout.omitted[0]!.alongInches
  const last = layout.posts.find(({ alongInches }) => alongInches > gap + 300)!
  const anew = anewDraft(withGap, layout, last.id, false)!
  expect(anew.draft.standing).toMatchObject({ leftOut: [layout.postOneAtInches + gap], postsDriven: last.number })
  const longer = laidOut(withValue(anew.draft, 'need.to', 3000))
  expect(longer.length).toBeGreaterThan(0)
  for (const one of longer) {
    expect(along(one.posts).slice(0, last.number)).toEqual(along(layout.posts).slice(0, last.number))
    expect(along(one.omitted)).toEqual([gap])
  }
  // Said to be driven without the gap, the search takes a post to stand in it.
  const { leftOut: _, ...gapless } = anew.draft.standing as Record<string, unknown>
  expect(along(laidOut({ ...anew.draft, standing: gapless })[0]!.omitted)).toEqual([])
})

test('a post that was driven beside its place stays there, and one that could not go may lie beyond it', () => {
  const older = { ...draft, system: 'w-beam-post-splice-27-3-4' }
  const ends = { first: { standingSplice: { at: 0, position: 'post' } }, second: { sheet: 'trailing-anchor-27-3-4' } }
  const withPipe = { ...older, ...ends, obstructions: [{ name: 'pipe', from: 892, to: 897 }] }
  const layout = laidOut(withPipe)[0]!
  const moved = layout.posts.find(({ state }) => state === 'moved')!
  // The plain spacing has a post at 900 in; 3 in of half a post and 6 in of clearance from the pipe's edge lie 6 in beyond it.
  expect(moved.alongInches).toBe(906)
  const blocked = layout.posts[moved.number + 5]!
  const anew = anewDraft(withPipe, layout, blocked.id, true)!
  expect(anew.draft.standing).toMatchObject({ moved: [layout.postOneAtInches + 906] })
  const layouts = laidOut(anew.draft)
  expect(layouts.length).toBeGreaterThan(0)
  for (const one of layouts) {
    expect(one.posts.slice(0, blocked.number - 1)).toEqual(layout.posts.slice(0, blocked.number - 1))
    expect(along(one.posts)).not.toContain(blocked.alongInches)
  }
  // Said to be driven and not to be moved, the search takes it to stand in its own place.
  const { moved: _, ...unmoved } = anew.draft.standing as Record<string, unknown>
  expect(along(laidOut({ ...anew.draft, standing: unmoved })[0]!.posts)).toContain(900)
})

test('special posts stay special, on either side of the gap that they stand at', () => {
  const culvert = { ...draft, obstructions: [{ name: 'culvert', from: 1130, to: 1330 }] }
  const layout = laidOut(culvert)[0]!
  const special = layout.posts.filter(({ state }) => state === 'special')
  expect(special).toHaveLength(6)
  for (const from of [special[1]!, special[2]!, special[3]!, layout.posts[special[5]!.number + 1]!]) {
    const anew = anewDraft(culvert, layout, from.id, false)!
    const driven = layout.posts.slice(0, from.number)
    const layouts = laidOut(withValue(anew.draft, 'need.to', 3000))
    expect(layouts.length).toBeGreaterThan(0)
    for (const one of layouts) expect(one.posts.slice(0, from.number)).toEqual(driven)
  }
})
