import type { SheetStatement, ThingPath } from '../../core/hardware/sheet-statements.ts'
import type { ShelfWords } from '../messages/shelf-en.ts'

export type StatementGroup = keyof ShelfWords['groups']

const order: readonly StatementGroup[] = ['rail', 'posts', 'panels', 'gaps', 'length', 'parts', 'judging']

/** The statements of a sheet by what they are about; a group without any is left out. */
export const groupsOf = (statements: readonly SheetStatement[]) =>
  order
    .map((group) => ({ group, statements: statements.filter(({ about }) => groupOf(about.of) === group) }))
    .filter((one) => one.statements.length > 0)

function groupOf(of: ThingPath): StatementGroup {
  if (/^posts?\b/.test(of)) return 'posts'
  if (of.startsWith('panels')) return 'panels'
  if (of.startsWith('parts')) return 'parts'
  if (/^(severities|maySetAside)/.test(of)) return 'judging'
  if (/^(postSpacing|spacings|omissions|movedPost)/.test(of)) return 'gaps'
  return /^(railHeight|straightness|criteria|lap|splice)/.test(of) ? 'rail' : 'length'
}
