import type { LimitsSaying } from '../../core/hardware/limits-saying.ts'
import type { SheetText } from '../../core/hardware/sheet-text.ts'
import type { Printers } from '../print.ts'
import { textIn, withValues } from '../text-in.ts'
import { landedText } from './landed-sheets.ts'

/** What hardware sheets say, and their limits. */
export const sheets: Printers<SheetText | LimitsSaying> = {
  'sheet text': (text, print) => withValues(landedText(text) ?? textIn(text, 'es'), print),
  limits: ({ low, high, nominal, unit }, print) => {
    const text = (value: number): string => print.quantity(value, unit)
    if (low !== 'notStated' && low === high) return `exactamente ${text(low)}`
    const range =
      low !== 'notStated' && high !== 'notStated'
        ? `${text(low)} a ${text(high)}`
        : low !== 'notStated'
          ? `al menos ${text(low)}`
          : high !== 'notStated'
            ? `a lo más ${text(high)}`
            : 'sin límites indicados'
    return nominal === 'notStated' ? range : `${range}, nominal ${text(nominal)}`
  },
}
