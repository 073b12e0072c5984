import { lengthText } from '../core/hardware/dimension-text.ts'
import type { SlotSize } from '../core/requirements/requirement-saying.ts'

/** `3/4 x 2 1/2 in`: the name of a size, the same in every system of units. */
export const slotSize = ({ widthInches, lengthInches }: SlotSize): string =>
  `${lengthText(widthInches, 'in').replace(' in', '')} x ${lengthText(lengthInches, 'in')}`
