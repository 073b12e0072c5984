import { type RunFormWords, runFormEn } from '../messages/run-form-en.ts'
import { runFormWords } from '../messages.ts'

/** The words of this part of the page, in the language in force. */
export const words = (): RunFormWords => runFormWords ?? runFormEn

export type RunSection = keyof RunFormWords['sections']
