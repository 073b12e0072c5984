import type { Print } from '../words/print.ts'
import type { MaterialLine, QuantitiesContents } from './quantities-contents.ts'
import type { TitleBlockContents } from './title-block.ts'
import { documentWords } from './words/document-words.ts'

/** What was delivered, with blanks for the marks on it, for any writer. */
export interface MaterialListContents {
  readonly title: string
  readonly run: string
  readonly titleBlock: TitleBlockContents | null
  /** One line for each panel: its heat and coating marks are rolled or stamped on it. */
  readonly rail: readonly Delivered[]
  /** Everything that comes in bundles and carries one mark for each. */
  readonly bundles: readonly Delivered[]
}

export type Delivered = Omit<MaterialLine, 'marks'>

export function materialListContents(
  { run, titleBlock, materials }: QuantitiesContents,
  print: Print,
): MaterialListContents {
  const rail = ({ marks }: MaterialLine): boolean => marks.includes('heat')
  const delivered = ({ item, count, where }: MaterialLine): Delivered => ({ item, count, where })
  return {
    title: documentWords(print).quantities.materials.title,
    ...{ run, titleBlock },
    rail: materials.filter(rail).map(delivered),
    bundles: materials.filter((line) => !rail(line)).map(delivered),
  }
}
