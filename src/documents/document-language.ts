import type { Drawing } from '../drawing/drawing.ts'
import { sayDrawing } from '../drawing/say-drawing.ts'
import { sayInSpanish, sayWithRest } from '../words/spanish/say-in-spanish.ts'

/** In what language a document is written. What a person wrote stays as it was written. */
export interface DocumentLanguage {
  readonly code: 'en' | 'es'
  /** One of the model's sentences. */
  readonly say: (sentence: string) => string
  readonly picture: (drawing: Drawing) => Drawing
}

export const english: DocumentLanguage = {
  code: 'en',
  say: (sentence) => sentence,
  picture: (drawing) => drawing,
}

export const spanish: DocumentLanguage = {
  code: 'es',
  say: sayInSpanish,
  picture: (drawing) => sayDrawing(drawing, sayWithRest),
}
