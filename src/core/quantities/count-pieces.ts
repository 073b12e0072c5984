import { nameOf } from '../hardware/sheet-text.ts'
import { kindOfPost } from '../layout/kind-of-post.ts'
import type { LayoutPost } from '../layout/layout.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import type { Barrier } from '../staking/barrier.ts'
import { type PanelKind, panelKind } from './count-panels.ts'
import { numbered, type Quantity, type QuantityPiece, sumOf } from './quantity.ts'
import type { QuantityName } from './quantity-saying.ts'

/** End units by their sheet. */
export function countEnds({ first, second }: Barrier): readonly Quantity[] {
  const ends = (['first', 'second'] as const).flatMap((unit) => {
    const end = unit === 'first' ? first : second
    return end.kind === 'unit' ? [{ unit, sheet: end.sheet }] : []
  })
  return grouped(ends, ({ sheet }) => sheet.id).map(([id, same]) =>
    sumOf(
      `ends/${id}`,
      { kind: 'end units', sheet: nameOf(same[0].sheet) },
      'each',
      same.map(({ unit }) => ({ what: { kind: 'end of run', end: unit }, amount: 1 })),
    ),
  )
}

/** Posts by kind, those of an end unit apart from those of the run. */
export function countPosts(barrier: Barrier, postsDriven: number): readonly Quantity[] {
  const key = (post: LayoutPost): string => {
    const sheet = sheetOf(barrier, post.unit)
    const part = sheet.kind === 'longitudinal' ? 'run' : sheet.id
    return [stands(post, postsDriven) ? 'standing' : 'new', part, post.kind].join('/')
  }
  return grouped(barrier.layout.posts, key).map(([id, same]) => {
    const [post] = same
    const sheet = sheetOf(barrier, post.unit)
    const stand = stands(post, postsDriven)
    const place = post.state === 'standing' ? null : sheet.kind === 'longitudinal' ? 'run' : sheet.kind
    const note = stand ? null : ({ kind: 'length by drawing' } as const)
    const name = { kind: 'posts of kind', of: kindOfPost(post, sheet), place, stand } as const
    return sumOf(`posts/${id}`, name, 'each', same.map(pieceOf), { note })
  })
}

/** Offset blocks of the posts that do not stand yet. */
export const countBlocks = ({ layout }: Barrier, postsDriven: number): Quantity =>
  sumOf(
    'blocks',
    { kind: 'offset blocks' },
    'each',
    layout.posts.filter((post) => post.block && !stands(post, postsDriven)).map(pieceOf),
  )

/** Panels by length, name and gauge; a nested one is two. */
export function countPanels(barrier: Barrier): readonly Quantity[] {
  const all = barrier.layout.panels.map(({ number }, i) => ({
    number,
    kind: panelKind(barrier.layout.panels[i]!, barrier),
  }))
  const key = ({ kind }: { kind: PanelKind }): string =>
    [kind.hung ? 'hung' : 'new', kind.name?.own ?? 'panel', kind.inches, `${kind.gauge} gauge`].join('/')
  return grouped(all, key).map(([id, same]) =>
    sumOf(
      `panels/${id}`,
      panelName(same[0].kind),
      'each',
      same.map(({ number, kind }) => ({
        what: numbered('panel', number, kind.layers === 2 ? 'nested' : 'whole'),
        amount: kind.layers,
      })),
    ),
  )
}

const panelName = ({ name, inches, gauge, hung }: PanelKind): QuantityName => ({
  kind: 'panels of kind',
  ...{ of: name, inches, gauge, hang: hung },
})

const stands = (post: LayoutPost, postsDriven: number): boolean =>
  post.state === 'standing' || post.number <= postsDriven

const pieceOf = ({ number }: LayoutPost): QuantityPiece => ({ what: numbered('post', number), amount: 1 })

type Some<T> = readonly [T, ...T[]]

function grouped<T>(all: readonly T[], key: (one: T) => string): readonly (readonly [string, Some<T>])[] {
  const groups = new Map<string, [T, ...T[]]>()
  for (const one of all) {
    const group = groups.get(key(one))
    if (group === undefined) groups.set(key(one), [one])
    else group.push(one)
  }
  return [...groups]
}
