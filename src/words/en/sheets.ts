import type { LimitsSaying } from '../../core/hardware/limits-saying.ts'
import type { SheetText } from '../../core/hardware/sheet-text.ts'
import type { Printers } from '../print.ts'
import { textIn, withValues } from '../text-in.ts'

/** What hardware sheets say, and their limits. */
export const sheets: Printers<SheetText | LimitsSaying> = {
  'sheet text': (text, print) => withValues(textIn(text, 'en'), print),
  limits: ({ low, high, nominal, unit }, print) => {
    const text = (value: number): string => print.quantity(value, unit)
    if (low !== 'notStated' && low === high) return `exactly ${text(low)}`
    const range =
      low !== 'notStated' && high !== 'notStated'
        ? `${text(low)} to ${text(high)}`
        : low !== 'notStated'
          ? `at least ${text(low)}`
          : high !== 'notStated'
            ? `at most ${text(high)}`
            : 'limits not stated'
    return nominal === 'notStated' ? range : `${range}, ${text(nominal)} nominal`
  },
}
