import type { PostMake, Stated } from '../hardware/hardware-sheet.ts'
import type { LayoutPost } from '../layout/layout.ts'
import { makeOfPost } from '../layout/make-of-post.ts'
import type { Barrier } from '../staking/barrier.ts'
import { isThrieSplice, panelKind } from './count-panels.ts'
import { numbered, type Quantity, type QuantityPiece, repairGuide, sumOf } from './quantity.ts'
import type { QuantityName, QuantityNote } from './quantity-saying.ts'

/** Bolts of one W-beam splice. */
const perSplice = 8

/** Splice bolts, 8 to a W-beam splice; what a nested or a thrie-beam splice needs stands by itself. */
export function spliceBolts(barrier: Barrier): readonly Quantity[] {
  const { layout, first, second } = barrier
  const kinds = layout.panels.map((panel) => panelKind(panel, barrier))
  const single: QuantityPiece[] = []
  const nested: QuantityPiece[] = []
  const thrie: QuantityPiece[] = []
  for (const { number } of layout.splices) {
    const [before, after] = [kinds[number - 1]!, kinds[number]!]
    const what = numbered('splice', number)
    if (before.hung && after.hung) continue
    if (isThrieSplice(before, after)) thrie.push({ what, amount: 1 })
    else (before.layers + after.layers > 2 ? nested : single).push({ what, amount: perSplice })
  }
  const toStanding: QuantityPiece = { what: { kind: 'splice to standing run' }, amount: perSplice }
  if (first.kind === 'standing splice') single.unshift(toStanding)
  if (second.kind === 'standing splice') single.push(toStanding)
  const source = repairGuide
  return [
    sumOf('bolts/splice', { kind: 'splice bolts', at: 'single rail' }, 'each', single, { source }),
    sumOf('bolts/splice/nested', { kind: 'splice bolts', at: 'nested rail' }, 'each', nested, {
      source,
      note: { kind: 'length by layers' },
    }),
    sumOf('splices/thrie', { kind: 'thrie-beam splices' }, 'each', thrie, { note: { kind: 'bolts by drawing' } }),
  ].filter(({ pieces }) => pieces.length > 0)
}

/** Post bolts, one to each post that the rail is bolted to, by length where post and block decide it. */
export function postBolts(barrier: Barrier): readonly Quantity[] {
  const groups = new Map<string, { name: QuantityName; note: QuantityNote | null; pieces: QuantityPiece[] }>()
  for (const post of barrier.layout.posts) {
    const bolted = isBolted(post, barrier)
    if (bolted === false || post.state === 'standing') continue
    const kind = bolted === 'notStated' ? unsaid : boltFor(post, makeOfPost(post, barrier))
    const group = groups.get(kind.id) ?? { name: kind.name, note: kind.note, pieces: [] }
    group.pieces.push({ what: numbered('post', post.number), amount: 1 })
    groups.set(kind.id, group)
  }
  return [...groups].map(([id, { name, note, pieces }]) =>
    sumOf(id, name, 'each', pieces, { note, source: id === unsaid.id ? null : repairGuide }),
  )
}

const unsaid = {
  id: 'post-bolts/unsaid',
  name: { kind: 'posts not said to be bolted' },
  note: { kind: 'bolted by manual' },
} as const

/**
 * 18 in through a wood block on a wood post; 10 in through a wood or approved block on a steel post; 2 in through a
 * steel block on a steel post. What the sheet does not say of post or block is not guessed.
 */
function boltFor(
  { block }: LayoutPost,
  { material }: PostMake,
): {
  readonly id: string
  readonly name: QuantityName
  readonly note: QuantityNote | null
} {
  if (block && material === 'wood')
    return { id: 'bolts/post/18', name: { kind: 'post bolts', through: 'wood block and post' }, note: null }
  return block
    ? {
        id: 'bolts/post/by-block',
        name: { kind: 'post bolts', through: 'block' },
        note: { kind: 'bolt length by block' },
      }
    : {
        id: 'bolts/post/no-block',
        name: { kind: 'post bolts', through: 'no block' },
        note: { kind: 'bolt length by manual' },
      }
}

function isBolted(post: LayoutPost, { first, second }: Barrier): Stated<boolean> {
  const end = post.unit === 'first' ? first : post.unit === 'second' ? second : null
  if (end?.kind !== 'unit' || post.ownNumber === null) return true
  return end.sheet.posts.find(({ number }) => number === post.ownNumber)?.railBolted ?? 'notStated'
}
