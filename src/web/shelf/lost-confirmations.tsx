import { useMemo } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { SheetStatement } from '../../core/hardware/sheet-statements.ts'
import { unconfirmedThere } from '../../operations/compare-sheets.ts'
import { thingWords, valueWords } from '../../words/say-sheet.ts'
import { printIn } from '../messages.ts'
import { words } from './words.ts'

interface Props {
  readonly one: HardwareSheet
  readonly other: HardwareSheet
}

/** What is confirmed in the one sheet and would be no longer in the other, with what each states. */
export function LostConfirmations({ one, other }: Props) {
  const w = words()
  const lost = useMemo(() => unconfirmedThere(one, other), [one, other])
  if (lost.length === 0) return null
  return (
    <div class="shelf-lost">
      <h3>{w.newer.lost(lost.length)}</h3>
      <p class="hint">{w.newer.lostHow}</p>
      <ul>
        {lost.map((statement) => (
          <li key={statement.place} data-lost={statement.place}>
            {w.compare.besides(
              thingWords(statement.one!.about, printIn(null)),
              statedWords(statement.one),
              statedWords(statement.other),
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}

const statedWords = (side: SheetStatement | null): string =>
  side === null ? words().compare.notThere : side.values.map((value) => valueWords(value, printIn(null))).join('; ')
