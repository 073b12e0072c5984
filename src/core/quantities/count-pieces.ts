import { feetInchesText } from '../hardware/dimension-text.ts'
import type { EndSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutPost, Unit } from '../layout/layout.ts'
import type { Barrier } from '../staking/barrier.ts'
import { type PanelKind, panelKind } from './count-panels.ts'
import { type Quantity, type QuantityPiece, sumOf } from './quantity.ts'

/** End units by their sheet. */
export function countEnds({ first, second }: Barrier): readonly Quantity[] {
  const ends = (['first', 'second'] as const).flatMap((unit) => {
    const end = unit === 'first' ? first : second
    return end.kind === 'unit' ? [{ unit, sheet: end.sheet }] : []
  })
  return grouped(ends, ({ sheet }) => sheet.id).map(([id, same]) =>
    sumOf(
      `ends/${id}`,
      same[0].sheet.name,
      'each',
      same.map(({ unit }) => ({ what: `${unit} end`, amount: 1 })),
    ),
  )
}

/** Posts by kind, those of an end unit apart from those of the run. */
export function countPosts(barrier: Barrier, postsDriven: number): readonly Quantity[] {
  const key = (post: LayoutPost): string =>
    [stands(post, postsDriven) ? 'standing' : 'new', sheetOf(barrier, post.unit)?.id ?? 'run', post.kind].join('/')
  return grouped(barrier.layout.posts, key).map(([id, same]) => {
    const [post] = same
    const sheet = sheetOf(barrier, post.unit)
    const standing = stands(post, postsDriven)
    const where = post.state === 'standing' ? '' : sheet === null ? ' of the run' : ` of the ${sheet.kind}`
    const name = `${capital(post.kind)}${where}${standing ? ', in the ground already' : ''}`
    const note = standing ? null : 'length by the drawing in force: the sheet does not state it'
    return sumOf(`posts/${id}`, name, 'each', same.map(pieceOf), { note })
  })
}

/** Offset blocks of the posts that do not stand yet. */
export const countBlocks = ({ layout }: Barrier, postsDriven: number): Quantity =>
  sumOf(
    'blocks',
    'Offset blocks',
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
    [kind.hung ? 'hung' : 'new', kind.name, kind.inches, kind.gauge].join('/')
  return grouped(all, key).map(([id, same]) =>
    sumOf(
      `panels/${id}`,
      panelText(same[0].kind),
      'each',
      same.map(({ number, kind }) => ({
        what: `panel ${number}${kind.layers === 2 ? ', nested' : ''}`,
        amount: kind.layers,
      })),
    ),
  )
}

/** `Adapter panel, 9 ft 4 1/2 in, 12 gauge` */
function panelText({ name, inches, gauge, hung }: PanelKind): string {
  const shown = name.includes(gauge) ? '' : `, ${gauge}`
  return `${capital(name)}, ${feetInchesText(inches)}${shown}${hung ? ', hangs already' : ''}`
}

const stands = (post: LayoutPost, postsDriven: number): boolean =>
  post.state === 'standing' || post.number <= postsDriven

const pieceOf = ({ number }: LayoutPost): QuantityPiece => ({ what: `post ${number}`, amount: 1 })

function sheetOf({ first, second }: Barrier, unit: Unit): EndSheet | null {
  const end = unit === 'first' ? first : unit === 'second' ? second : null
  return end?.kind === 'unit' ? end.sheet : null
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

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
