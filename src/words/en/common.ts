import type { Theirs } from '../../core/theirs.ts'
import type { Printers } from '../print.ts'

export const common: Printers<Theirs> = {
  theirs: ({ text }, print) => print.theirs(text),
}
