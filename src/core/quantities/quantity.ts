import type { Confirmation } from '../hardware/hardware-sheet.ts'

/** One total with the pieces that it is the sum of. */
export interface Quantity {
  /** Stable, as `panels/run/150/panel/12 gauge`. */
  readonly id: string
  readonly name: string
  /** `in`: inches along the rail, exact to 1/16. */
  readonly unit: 'in' | 'each'
  readonly amount: number
  readonly pieces: readonly QuantityPiece[]
  /** Where the rule behind it comes from; null for a plain count. */
  readonly source: { readonly text: string; readonly confirmation: Confirmation } | null
  /** What it leaves open, in words; null when nothing. */
  readonly note: string | null
}

export interface QuantityPiece {
  /** As `panel 4`, `splice 2`, `post 9`. */
  readonly what: string
  readonly amount: number
}

/** The quantity that `pieces` add up to. */
export const sumOf = (
  id: string,
  name: string,
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
  text: 'FHWA-SA-08-002, W-Beam Guardrail Repair, appendix A, 2008',
  confirmation: 'published',
} as const
