import { sourceSaying } from '../hardware/hardware-saying.ts'
import type { Confirmation } from '../hardware/hardware-sheet.ts'
import type { NumberedPiece, PieceName, QuantityName, QuantityNote, QuantitySource } from './quantity-saying.ts'

/** One total with the pieces that it is the sum of. */
export interface Quantity {
  /** Stable, as `panels/run/150/panel/12 gauge`. */
  readonly id: string
  readonly name: QuantityName
  /** `in`: inches along the rail, exact to 1/16. */
  readonly unit: 'in' | 'each'
  readonly amount: number
  readonly pieces: readonly QuantityPiece[]
  /** Where the rule behind it comes from; null for a plain count. */
  readonly source: { readonly said: QuantitySource; readonly confirmation: Confirmation } | null
  /** What it leaves open; null when nothing. */
  readonly note: QuantityNote | null
}

export interface QuantityPiece {
  readonly what: PieceName
  readonly amount: number
}

/** The quantity that `pieces` add up to. */
export const sumOf = (
  id: string,
  name: QuantityName,
  unit: Quantity['unit'],
  pieces: readonly QuantityPiece[],
  more: Partial<Pick<Quantity, 'source' | 'note'>> = {},
): Quantity => ({
  id,
  name,
  unit,
  amount: pieces.reduce((sum, { amount }) => sum + amount, 0),
  pieces,
  source: more.source ?? null,
  note: more.note ?? null,
})

/** What is bought by the piece for repair of a W-beam rail. */
export const repairGuide = {
  said: sourceSaying({ title: 'FHWA-SA-08-002, W-Beam Guardrail Repair, appendix A', edition: '2008' }),
  confirmation: 'published',
} as const

/** One of the posts, panels or splices, by its number. */
export const numbered = (of: NumberedPiece['of'], number: number, how: NumberedPiece['how'] = 'whole'): PieceName => ({
  kind: 'numbered piece',
  ...{ of, number, how },
})
