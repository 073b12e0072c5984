import { feetInchesText, lengthText } from '../hardware/dimension-text.ts'
import type { MovedPostRule, NewSlot } from '../hardware/hardware-sheet.ts'
import type { GapByCurb } from '../layout/gaps-at-curb.ts'
import type { DerivedRule } from './common-rules.ts'

/** What holds where posts are left out and nobody said whether a curb stands before the rail. */
export const noCurbRule = ({ rule, obstruction, doubled }: GapByCurb): DerivedRule => ({
  topic: 'curb',
  figure: null,
  cited: rule.nestedAtCurb === undefined || rule.nestedAtCurb === 'notStated' ? rule : rule.nestedAtCurb,
  must: `No curb stands before the rail where posts are left out for ${obstruction}.`,
  look: {
    kind: 'choose',
    choices: [
      { id: 'none', label: 'No curb', right: true },
      { id: 'curb', label: 'A curb', right: false },
    ],
  },
  how: 'Look along the edge of the pavement in front of the gap.',
  why: 'Coming over a curb a vehicle loads the rail across a gap otherwise than in the test without one; plain rail has torn there.',
  remedy:
    doubled === null
      ? 'Lay the run out again and say that there is a curb: the sheet does not allow this gap at a curb.'
      : `Lay the run out again and say that there is a curb: ${feetInchesText(doubled)} of rail round the gap then has to be doubled.`,
  hold: false,
})

/** `3/4 x 2 1/2 in` */
const sizeText = ({ widthInches, lengthInches }: NewSlot): string =>
  `${lengthText(widthInches, 'in').replace(' in', '')} x ${lengthText(lengthInches, 'in')}`

/** How the rail is held where a post was lawfully moved; null where the sheet does not say how its slot is made. */
export function newSlotRule({ newSlot }: MovedPostRule): DerivedRule | null {
  if (newSlot === undefined || newSlot === 'notStated') return null
  const size = sizeText(newSlot)
  return {
    topic: 'new-slot',
    figure: null,
    cited: newSlot,
    must: `The rail is bolted to the moved post through a new slot of ${size}, cut smooth and sprayed with zinc; the old slot stays as it was made.`,
    look: {
      kind: 'choose',
      choices: [
        { id: 'right', label: `A new slot of ${size}, smooth, zinc-sprayed`, right: true },
        { id: 'bare', label: 'A new slot without zinc', right: false },
        { id: 'rough', label: 'A new slot of another size, rough or torch-cut', right: false },
        { id: 'enlarged', label: 'The old slot enlarged', right: false },
      ],
    },
    how: 'Look at the face and the back of the rail at the moved post and where the post would have stood.',
    why: 'A rough or enlarged slot is where the rail tears under load; bare steel rusts there.',
    remedy: `Spray a bare slot with zinc. Where the slot is rough, of another size or an old one enlarged, replace the panel and cut a new slot of ${size}, smooth and sprayed with zinc.`,
    hold: false,
  }
}
