import type { NumberedPiece, PieceName } from '../core/quantities/quantity-saying.ts'

interface PieceGroup {
  readonly of: NumberedPiece['of']
  readonly how: 'whole' | 'part'
  readonly numbers: readonly number[]
}

/** The pieces that are told by their numbers, in the order of the first of each, and all others. */
export function groupPieces(pieces: readonly PieceName[]): {
  readonly groups: readonly PieceGroup[]
  readonly others: readonly PieceName[]
} {
  const groups = new Map<string, PieceGroup>()
  const others: PieceName[] = []
  for (const piece of pieces) {
    if (piece.kind !== 'numbered piece' || piece.how === 'nested') {
      others.push(piece)
      continue
    }
    const { of, how, number } = piece
    const key = `${how} ${of}`
    groups.set(key, { of, how, numbers: [...(groups.get(key)?.numbers ?? []), number] })
  }
  return { groups: [...groups.values()], others }
}
