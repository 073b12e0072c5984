import type { ChosenField, SheetField, sheetChoices } from '../core/hardware/sheet-fields.ts'
import type { ThingPath } from '../core/hardware/sheet-statements.ts'

/** What the fields of a sheet are called in one language. Apart from the other words: who opens no sheet does not load them. */
export interface SheetWords {
  readonly things: Readonly<Record<ThingPath, string>>
  /** One of several: `number` from 1. */
  readonly numbered: (thing: string, number: number) => string
  readonly fields: Readonly<Record<SheetField, string>>
  /** Texts of a rule or a source, which no value of the sheet is. */
  readonly texts: Readonly<Record<'title' | 'label' | 'how' | 'why' | 'remedy', string>>
  readonly choices: { readonly [F in ChosenField]: Readonly<Record<(typeof sheetChoices)[F][number], string>> }
  readonly answers: Readonly<Record<'yes' | 'no' | 'none' | 'notStated', string>>
  readonly uses: Readonly<Record<'layout' | 'need' | 'fit' | 'judging' | 'nothing', string>>
  readonly named: (field: string, value: string) => string
}
