import { useEffect } from 'preact/hooks'
import type { RunSource } from '../data/run-source.ts'
import { useStatus } from '../data/use-status.ts'
import { m } from '../messages.ts'
import { ChooseFile } from './choose-file.tsx'
import { HandOver } from './hand-over.tsx'
import { words } from './words.ts'

/** What to do where the address of the server changed, or the app was installed after something was recorded. */
export function BringOverView({ source }: { readonly source: RunSource }) {
  const w = words().bring
  const [status] = useStatus(source)
  useEffect(() => {
    document.title = `${w.title} | ${m.page.name}`
  }, [w])
  return (
    <section class="sheet">
      <h1>{w.title}</h1>
      <p>{w.why}</p>
      <h2>{w.there}</h2>
      <p>{w.thereHow}</p>
      {status !== null && (
        <p role="status">
          {status.unsent === 0 && status.unsentPhotos === 0 ? w.allSent : w.unsent(status.unsent, status.unsentPhotos)}
        </p>
      )}
      <HandOver source={source} run={null} name={new Date().toISOString().slice(0, 10)} />
      <h2>{w.here}</h2>
      <p>{w.hereHow}</p>
      <ChooseFile source={source} />
    </section>
  )
}
