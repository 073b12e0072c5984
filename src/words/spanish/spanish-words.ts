/** What one part of the model says, in Spanish. Keys are the English sentences as the model makes them. */
export interface SpanishWords {
  readonly sentences: Readonly<Record<string, string>>
  /**
   * `$` stands for a part, which is said in its turn, `#` for numbers and lengths and `_` for ids and
   * values as they stand in a file, which stay as they are. Parts keep their order in Spanish; where they do not, `$3` names the third.
   */
  readonly patterns: readonly (readonly [english: string, spanish: string])[]
}
