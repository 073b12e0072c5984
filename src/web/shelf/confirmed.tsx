import { useMemo } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { confirmedOf } from '../../core/hardware/sheet-statements.ts'
import { words } from './words.ts'

/** How much of a sheet is confirmed, as a bar and in words. */
export function Confirmed({ sheet }: { readonly sheet: HardwareSheet }) {
  const { confirmed, all } = useMemo(() => confirmedOf(sheet), [sheet])
  return (
    <span class="shelf-confirmed">
      <span class="progress" aria-hidden="true">
        <i class="verdict-meets" style={{ flexGrow: confirmed }} />
        <i class="verdict-unread" style={{ flexGrow: all - confirmed }} />
      </span>
      {words().confirmed(confirmed, all)}
    </span>
  )
}
