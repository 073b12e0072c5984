/** What a person wrote: a name, a note, a ticket. It is shown as it was written, in every language. */
export interface Theirs {
  readonly kind: 'theirs'
  readonly text: string
}

export const theirs = (text: string): Theirs => ({ kind: 'theirs', text })
