import type { SheetText } from './sheet-text.ts'

/**
 * What a document is called, or which part or edition of it is meant: a name, said as it is published. A sheet that has no
 * document says so here in its own words, and may have these in its other languages.
 */
export interface Title {
  readonly kind: 'title'
  readonly of: string | SheetText
}

export const title = (of: Title['of']): Title => ({ kind: 'title', of })
