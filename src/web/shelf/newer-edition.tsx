import { useMemo } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { statementsOf } from '../../core/hardware/sheet-statements.ts'
import { newerShipped, shippedBaseOf, withConfirmationsOf } from '../../operations/newer-shipped.ts'
import { nextEdition } from '../../operations/next-edition.ts'
import { comparePath } from '../route.ts'
import { LostConfirmations } from './lost-confirmations.tsx'
import { words } from './words.ts'

interface Props {
  /** An own edition, as it is on the shelf. */
  readonly saved: HardwareSheet
  /** Begins an edition as this one is; null while one is begun. */
  readonly begin: ((next: HardwareSheet) => void) | null
}

/**
 * Says that the program ships a newer edition than the one that an own one began from. Of the same hardware a next edition can begin
 * from it, with what was confirmed; a copy is of other hardware.
 */
export function NewerEdition({ saved, begin }: Props) {
  const w = words().newer
  const newer = useMemo(() => newerShipped(saved), [saved])
  const next = useMemo(() => newer && withConfirmationsOf(saved, newer), [saved, newer])
  if (newer === null || next === null) return null
  const checked = (sheet: HardwareSheet): number =>
    statementsOf(sheet).filter(({ cited }) => cited.checked !== undefined).length
  return (
    <section class="shelf-newer" aria-label={w.tag}>
      <p>{w.ships(newer.version, shippedBaseOf(saved)?.version ?? saved.version)}</p>
      {newer.id === saved.id && (
        <>
          <p>{w.held(checked(next), checked(saved))}</p>
          <LostConfirmations one={saved} other={next} />
        </>
      )}
      <div class="form-buttons">
        {newer.id === saved.id && begin !== null && (
          <button type="button" class="button" onClick={() => begin({ ...next, version: nextEdition(newer) })}>
            {w.begin}
          </button>
        )}
        <a class="button" href={comparePath(saved.id, `${newer.id} ${newer.version}`)}>
          {w.compare}
        </a>
      </div>
    </section>
  )
}
