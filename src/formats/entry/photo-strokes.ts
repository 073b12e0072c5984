import type { PhotoStrokes } from '../../core/record/photo-strokes.ts'
import type { EntryOf, PhotoStrokesBody } from './entry-kinds.ts'

/**
 * What is drawn on photos, as the entries of one run say that are not superseded, in the order given. What was taken back
 * whole is none of it.
 */
export function photoStrokes(entries: readonly EntryOf<PhotoStrokesBody>[]): readonly PhotoStrokes[] {
  const superseded = new Set(entries.map(({ supersedes }) => supersedes))
  return entries
    .filter(({ id, body }) => !superseded.has(id) && body.strokes.length > 0)
    .map(({ id, author, capturedAt, body }) => ({ id, ...body, by: author, at: capturedAt }))
}
