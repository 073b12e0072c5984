import type { Printers } from '../../print.ts'
import type { SheetProblem } from '../../problems/sheet.ts'

export const sheetProblems: Printers<SheetProblem> = {
  'own rule id': () => 'an id of its own, not one that is derived from layout and sheet',
  'place of a run': () => '"each post", "each splice" or "unit" for a run',
  'text of sheet': () => 'a text that stands in this sheet',
  'picture at most': ({ bytes }) => `a picture of at most ${bytes / 1000} kB`,
  'picture of type': ({ type }) => `a picture of the type ${type}`,
  'said in language': ({ to }) => `also its translation into ${to}`,
  'another language': ({ language }) => `another language than ${language}, in which the sheet is written`,
  'marked values': ({ marked }) =>
    marked === '' ? 'no value in braces, as the text has none' : `the same values in braces as the text (${marked})`,
  'topic or rule': () => 'a derived topic that is read, or the id of a rule of this sheet',
  'special posts': () => 'what the special posts are',
  'no special posts': () => 'null, because there are no special posts',
  'origin post': () => '0, because post 1 is the origin',
  'key of sources': ({ sources }) => `a key of sources (${sources.join(', ')})`,
  'number for role': ({ role }) => `a number, because the role is ${role}`,
  'at least low': ({ value }) => `at least the low limit, ${value}`,
  'at least nominal': ({ value }) => `at least the nominal, ${value}`,
  'piece of sheet': ({ pieces, last }) => `one of the ${last} ${pieces} of the sheet`,
  'right choice': () => 'at least one right choice',
  'wrong choice': () => 'at least one wrong choice',
  'less than full': ({ inches }) => `less than full spacing, ${inches}`,
  'less than half': ({ inches }) => `less than half spacing, ${inches}`,
  'post in order': ({ number }) => `${number}, posts are listed in order from 1`,
  'beyond post before': ({ inches }) => `more than ${inches}, where the post before stands`,
}
