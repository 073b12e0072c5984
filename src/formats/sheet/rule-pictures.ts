import type { HardwareSheet, RulePicture } from '../../core/hardware/hardware-sheet.ts'
import { languages } from '../../core/language.ts'
import type { Contradiction } from '../contradiction.ts'

/**
 * Most letters of base64, four for three bytes, of one picture and of all of a sheet: our judgement. Some 1000 pixels a side fit
 * into the first; a run that holds three sheets with all of the second is well below the 4 MiB that a server takes at once.
 */
export const pictureLimits = { each: 160_000, sheet: 800_000 } as const

/** How the bytes of each kind begin, in base64: the signatures of JPEG and PNG, and RIFF, in which WebP lies. */
const begins: Readonly<Record<RulePicture['type'], string>> = {
  'image/jpeg': '/9j/',
  'image/png': 'iVBORw0KGgo',
  'image/webp': 'UklGR',
}

/**
 * What is wrong with the own pictures of a sheet: each begins as its kind does, and is said in each language. Whoever prints one
 * looks at all of it first.
 */
export function picturesFaults({ language = 'en', translations = {}, parts }: HardwareSheet): readonly Contradiction[] {
  let before = 0
  return parts.flatMap(({ rules }, i) =>
    rules.flatMap(({ picture }, j): readonly Contradiction[] => {
      if (picture === undefined) return []
      const { type, base64, alt } = picture
      const path = ['parts', i, 'rules', j, 'picture']
      const most = Math.min(pictureLimits.each, pictureLimits.sheet - before)
      before += base64.length
      return [
        ...(base64.startsWith(begins[type]) ? [] : [{ path, expected: { kind: 'picture of type', type } as const }]),
        ...(base64.length > most ? [{ path, expected: { kind: 'picture at most', bytes: most * 0.75 } as const }] : []),
        ...languages.flatMap((to) =>
          to === language || translations[to]?.[alt] !== undefined
            ? []
            : [{ path: [...path, 'alt'], expected: { kind: 'said in language', to } as const }],
        ),
      ]
    }),
  )
}
