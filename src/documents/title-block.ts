import { runWords } from '../drawing/words/run-words.ts'
import type { Revision, RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'

/** What stands in the title block of every drawing and document of a run. */
export interface TitleBlockContents {
  /** What is said and what it is called; the project too, which is the run's own. */
  readonly cells: readonly { readonly name: string; readonly value: string }[]
  /** In sentences, the latest last. */
  readonly revisions: readonly string[]
  /** What stands in the room for a seal; null where none is left. */
  readonly seal: string | null
}

/** Null where a run has none. */
export function titleBlockContents(
  { titleBlock, project }: Pick<RunFile, 'titleBlock' | 'project'>,
  print: Print,
): TitleBlockContents | null {
  if (titleBlock === undefined) return null
  const words = runWords(print).titleBlock
  const { agency, contract, drawn, checked, approved, seal = false, revisions = [] } = titleBlock
  const said = { agency, contract, project, drawn, checked, approved }
  return {
    cells: titleCells.flatMap((name) => {
      const value = said[name]
      return value === undefined ? [] : [{ name: words.cells[name], value: print.theirs(value) }]
    }),
    revisions: revisions.map((revision, i) => revisionText(revision, i + 1, print)),
    seal: seal ? words.seal : null,
  }
}

/** In the order in which they stand. */
const titleCells = ['agency', 'contract', 'project', 'drawn', 'checked', 'approved'] as const

/** `Revision 2, 2016-05-13: post 12 moved; replaces 2016-05-10, 719ca09a8f763b9c` */
function revisionText({ date, what, replacedDate, replacedHash }: Revision, number: number, print: Print): string {
  const words = runWords(print).titleBlock
  const hash = replacedHash === undefined ? [] : [print.theirs(replacedHash)]
  const replaced = [...(replacedDate === undefined ? [] : [replacedDate]), ...hash]
  const text = words.revision(number, date, print.theirs(what))
  return replaced.length === 0 ? text : `${text}; ${words.replaces(replaced.join(', '))}`
}
