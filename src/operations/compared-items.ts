import type { SheetStatement } from '../core/hardware/sheet-statements.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import type { ComparedItem, ComparedSide } from '../documents/comparison-card-contents.ts'
import type { StatedOtherwise } from './compare-sheets.ts'
import type { RequiredByStatement } from './sheet-requirements.ts'

/** What is required by each of two sheets. */
export type RequiredByBoth = readonly [RequiredByStatement, RequiredByStatement]

/** What each of two sheets says at one place that the other does not, and what it requires that the other does not. */
export function comparedItem({ one, other }: StatedOtherwise, [here, there]: RequiredByBoth): ComparedItem {
  return {
    about: (one ?? other)!.about,
    sides: [sideOf(one, other, here, there), sideOf(other, one, there, here)],
  }
}

function sideOf(
  side: SheetStatement | null,
  beside: SheetStatement | null,
  required: RequiredByStatement,
  requiredBeside: RequiredByStatement,
): ComparedSide | null {
  if (side === null) return null
  const others = new Set((beside?.values ?? []).map(contentOf))
  // What both require alike is no difference, and what the sheet says word for word is said already.
  const alike = new Set((requiredBeside.get(side.place) ?? []).map(({ must }) => contentOf(must)))
  const said = new Set(side.values.map(({ value }) => contentOf(value)))
  return {
    values: side.values.filter((value) => !others.has(contentOf(value))),
    asks: (required.get(side.place) ?? []).filter(
      ({ must }) => !alike.has(contentOf(must)) && !said.has(contentOf(must)),
    ),
  }
}
