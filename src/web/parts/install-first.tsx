import { useState } from 'preact/hooks'
import { mereTabWasSaid, sayMereTab } from '../data/device.ts'
import { m } from '../messages.ts'
import { bringOverPath } from '../route.ts'
import { isMereTab } from './mere-tab.ts'

/** Said once, before something is entered in a store that the installed app does not have. Nothing is kept from anybody. */
export function InstallFirst() {
  const [isSaid, setSaid] = useState(() => !isMereTab(navigator) || mereTabWasSaid())
  if (isSaid) return null
  return (
    <div class="install-first" role="alert">
      <p>{m.stores.mereTab}</p>
      <button
        type="button"
        class="button"
        onClick={() => {
          sayMereTab()
          setSaid(true)
        }}
      >
        {m.stores.anyway}
      </button>{' '}
      <a href={bringOverPath}>{m.stores.how}</a>
    </div>
  )
}
