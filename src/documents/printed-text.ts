import type { Print } from '../words/print.ts'
import { timeText } from './printed-time.ts'
import type { Printing } from './record-input.ts'
import { documentWords } from './words/document-words.ts'

/** When a document was printed, and by whom where that is said. */
export const printedText = ({ printedAt, author }: Pick<Printing, 'printedAt' | 'author'>, print: Print): string =>
  author === '' ? timeText(printedAt) : documentWords(print).frame.printedBy(timeText(printedAt), print.theirs(author))
