import { type Quantity, sumOf } from './quantity.ts'

/** One spare for each so many pieces begun. */
const perSpare = { pieces: 50, bolts: 20 }

/**
 * Spares to carry: one for each fifty panels of a kind, posts of a kind and blocks begun, one for each twenty bolts
 * begun. No document asks for it. The pieces of an end unit come with it, and what stands or hangs already needs none.
 */
export function spareParts(counts: {
  readonly posts: readonly Quantity[]
  readonly blocks: Quantity
  readonly panels: readonly Quantity[]
  readonly bolts: readonly Quantity[]
}): readonly Quantity[] {
  const posts = counts.posts.filter(({ id }) => id.startsWith('posts/new/run/'))
  const panels = counts.panels.filter(({ id }) => id.startsWith('panels/new/panel/'))
  const bolts = counts.bolts.filter(({ id }) => id.startsWith('bolts/'))
  return [
    ...[...posts, counts.blocks, ...panels].flatMap((quantity) => spare(quantity, perSpare.pieces)),
    ...bolts.flatMap((quantity) => spare(quantity, perSpare.bolts)),
  ]
}

function spare({ id, name, amount, note }: Quantity, each: number): readonly Quantity[] {
  if (amount === 0) return []
  const what = { kind: 'spares begun', each, of: amount } as const
  const pieces = [{ what, amount: Math.ceil(amount / each) }]
  const source = { said: { kind: 'habit of carrying spares' }, confirmation: 'common practice' } as const
  return [sumOf(`spares/${id}`, name, 'each', pieces, { source, note })]
}
