import type { LongitudinalSheet, OmissionRule } from '../hardware/hardware-sheet.ts'
import type { CurbBefore, Layout, Obstructed, OmittedPost } from './layout.ts'

/** Rail that `rule` doubles round its gap, inches; null where the sheet does not say what holds at a curb. */
export function doubledRail(rule: OmissionRule, curb: CurbBefore | undefined): number | null {
  if (curb !== 'present') return rule.nestedInches
  return rule.nestedAtCurb === undefined || rule.nestedAtCurb === 'notStated' ? null : rule.nestedAtCurb.inches
}

/** A gap that would need something else if a curb stood before the rail. */
export interface GapByCurb {
  readonly obstructions: Obstructed
  readonly omitted: readonly OmittedPost[]
  readonly rule: OmissionRule
  /** Rail that is doubled at a curb, inches; null where the sheet does not allow the gap there. */
  readonly doubled: number | null
}

/** The gaps of the layout, each once, for which it matters whether a curb stands before the rail. */
export function gapsThatDependOnCurb({ omitted }: Layout, system: LongitudinalSheet): readonly GapByCurb[] {
  const gaps: GapByCurb[] = []
  for (const rule of system.omissions) {
    const doubled = doubledRail(rule, 'present')
    if (doubled === rule.nestedInches) continue
    for (const post of omitted) {
      if (post.rule !== rule.kind) continue
      const last = gaps.at(-1)
      if (last?.rule === rule && isSame(last.obstructions, post.obstructions))
        gaps[gaps.length - 1] = { ...last, omitted: [...last.omitted, post] }
      else gaps.push({ obstructions: post.obstructions, omitted: [post], rule, doubled })
    }
  }
  return gaps
}

const isSame = (some: Obstructed, others: Obstructed): boolean =>
  some.length === others.length && some.every((name, i) => name === others[i])
