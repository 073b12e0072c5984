import { en } from './messages/en.ts'

export type Messages = typeof en

/** The words of the page, in the language in force. */
export const m: Messages = en
