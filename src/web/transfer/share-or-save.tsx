import { useState } from 'preact/hooks'
import { download } from '../parts/download.ts'
import { words } from './words.ts'

/** Hands a file that is made to the system's sharing, where there is one for it, or saves it. */
export function ShareOrSave({ file }: { readonly file: File }) {
  const w = words()
  const shared = { files: [file] }
  // Some browsers have no such thing, and some share no files of this kind.
  const canShare = 'canShare' in navigator && navigator.canShare(shared)
  const [isRefused, setRefused] = useState(false)
  const share = async (): Promise<void> => {
    try {
      await navigator.share(shared)
    } catch (cause) {
      // Who closes the system's own sheet without sharing has the file as before.
      if (!(cause instanceof DOMException) || cause.name !== 'AbortError') setRefused(true)
    }
  }
  return (
    <>
      {isRefused && <p role="alert">{w.notShared}</p>}
      <div class="buttons">
        {canShare && (
          <button type="button" class="button main" onClick={() => void share()}>
            {w.share}
          </button>
        )}
        <button type="button" class={canShare ? 'button' : 'button main'} onClick={() => download(file, file.name)}>
          {w.saveFile}
        </button>
      </div>
    </>
  )
}
