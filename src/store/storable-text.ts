import { z } from 'zod'
import { form } from '../formats/range/form.ts'

/** Longest id or name, characters: our judgement; four of them fit an index row of PostgreSQL (2,704 bytes). */
const longestText = 200

/** Whether PostgreSQL can hold `value`: it has no place for U+0000, and UTF-8 none for half of a surrogate pair. */
export function isStorable(value: string): boolean {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: U+0000 is what is looked for
  return !/[\u0000\p{Surrogate}]/u.test(value)
}

/** A name or id: not empty, not long, and such that it comes back as it was. */
export const storableText = z.string().min(1).max(longestText).refine(isStorable, form('storable text'))
