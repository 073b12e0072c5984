import type { Print } from './print.ts'

/** What people named, one after the other: each name as it was written, and only what joins them in the language. */
export const theirNames = (names: readonly string[], print: Print): string => print.list(names.map(print.theirs), 'and')
