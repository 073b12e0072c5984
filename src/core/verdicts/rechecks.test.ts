import { describe, expect, it } from 'vitest'
import type { Computation, Place, Requirement } from '../requirements/requirement.ts'
import { recheckedFinding } from './rechecks.ts'

function requirement(kind: Place['kind'], number: number, topic: string, orFrom: Computation | null = null) {
  const place = { id: `${kind}-${number}`, kind, number, alongInches: 0 }
  const look = { kind: 'measure', limits: {}, orFrom }
  return { id: `${kind}-${number}/${topic}`, topic, place, look } as unknown as Requirement
}

const spacing = requirement('space', 3, 'spacing', { kind: 'difference', from: 'post-3/along', to: 'post-4/along' })
/** What findings are named by below. */
const topics = {
  post: ['rail-height', 'stub-height', 'block'],
  space: ['spacing'],
  panel: ['panel-length', 'slotted-panel'],
  splice: ['lap', 'splice-position'],
} as const
const all = (['post', 'space', 'panel', 'splice'] as const).flatMap((kind) =>
  [1, 2, 3, 4, 9].flatMap((number) => topics[kind].map((topic) => requirement(kind, number, topic))),
)
const byId = new Map(all.map((one) => [one.id, one]))
const names = (one: Requirement, rechecks: string | null, of = one.id) => recheckedFinding({ of, rechecks }, one, byId)

describe('recheckedFinding', () => {
  it('is the finding on what was read, or on what is computed from it', () => {
    expect(names(spacing, spacing.id)).toBe(spacing.id)
    for (const of of ['post-3/along', 'post-4/along']) expect(names(spacing, spacing.id, of)).toBe(spacing.id)
  })

  it('is none where the reading names none, or bears on nothing of the requirement', () => {
    expect(names(spacing, null)).toBeNull()
    for (const of of ['post-2/along', 'post-5/along', 'post-3/lateral-offset', 'space-4/spacing'])
      expect(names(spacing, spacing.id, of)).toBeNull()
  })

  it('is none where it names another finding', () => {
    for (const other of ['splice-2/lap', 'post-3/rail-height', 'panel-3/panel-length', 'no-such'])
      expect(names(spacing, other)).toBeNull()
  })

  // How findings are named: by the first requirement that one cause spoils.
  it.each([
    [requirement('post', 3, 'stub-height'), ['post-3/rail-height'], ['post-2/rail-height', 'post-3/block']],
    [requirement('post', 3, 'rail-height'), [], ['post-3/stub-height', 'post-2/rail-height']],
    [spacing, ['space-2/spacing', 'space-4/spacing', 'space-1/spacing'], ['post-3/spacing', 'panel-3/panel-length']],
    [requirement('panel', 3, 'panel-length'), ['panel-1/panel-length'], ['panel-4/panel-length', 'splice-1/lap']],
    [
      requirement('splice', 3, 'splice-position'),
      ['panel-9/panel-length', 'splice-2/splice-position'],
      ['splice-4/splice-position', 'splice-3/lap'],
    ],
    [
      requirement('panel', 3, 'slotted-panel'),
      ['panel-1/panel-length'],
      ['panel-4/panel-length', 'panel-1/slotted-panel'],
    ],
  ])('takes for $id the names of what has one cause with it, and no others', (one, named, others) => {
    for (const name of [one.id, ...named]) expect(names(one, name)).toBe(name)
    for (const name of others) expect(names(one, name)).toBeNull()
  })
})
