import type { PhotoBody } from './entry-kinds.ts'

/** How a file of each kind of picture is named. */
export const photoEndings: Readonly<Record<PhotoBody['type'], string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
}
