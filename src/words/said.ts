/** A sentence said in another language, and the parts of it for which there were no words, as names and citations. */
export interface Said {
  readonly text: string
  readonly left: readonly string[]
}
