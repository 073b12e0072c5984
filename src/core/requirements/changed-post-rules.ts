import type { MovedPostRule } from '../hardware/hardware-sheet.ts'
import type { GapByCurb } from '../layout/gaps-at-curb.ts'
import type { DerivedRule } from './common-rules.ts'

/** What holds where posts are left out and nobody said whether a curb stands before the rail. */
export const noCurbRule = ({ rule, obstructions, doubled }: GapByCurb): DerivedRule => ({
  topic: 'curb',
  figure: null,
  cited: rule.nestedAtCurb === undefined || rule.nestedAtCurb === 'notStated' ? rule : rule.nestedAtCurb,
  must: { kind: 'must', of: 'curb', obstructions },
  look: {
    kind: 'choose',
    choices: [
      { id: 'none', label: { kind: 'choice', is: 'no curb' }, right: true },
      { id: 'curb', label: { kind: 'choice', is: 'curb' }, right: false },
    ],
  },
  how: { kind: 'how to look', of: 'curb' },
  why: { kind: 'why it matters', of: 'curb' },
  remedy: { kind: 'if it fails', of: 'curb', doubledInches: doubled },
  hold: false,
})

/** How the rail is held where a post was lawfully moved; null where the sheet does not say how its slot is made. */
export function newSlotRule({ newSlot }: MovedPostRule): DerivedRule | null {
  if (newSlot === undefined || newSlot === 'notStated') return null
  const { widthInches, lengthInches } = newSlot
  const slot = { widthInches, lengthInches }
  return {
    topic: 'new-slot',
    figure: null,
    cited: newSlot,
    must: { kind: 'must', of: 'new-slot', slot },
    look: {
      kind: 'choose',
      choices: [
        { id: 'right', label: { kind: 'choice of new slot', slot }, right: true },
        { id: 'bare', label: { kind: 'choice', is: 'new slot without zinc' }, right: false },
        { id: 'rough', label: { kind: 'choice', is: 'new slot badly cut' }, right: false },
        { id: 'enlarged', label: { kind: 'choice', is: 'old slot enlarged' }, right: false },
      ],
    },
    how: { kind: 'how to look', of: 'new-slot' },
    why: { kind: 'why it matters', of: 'new-slot' },
    remedy: { kind: 'if it fails', of: 'new-slot', slot },
    hold: false,
  }
}
