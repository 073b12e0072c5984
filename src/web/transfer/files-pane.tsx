import type { HeldRow } from '../data/device-tables.ts'
import type { RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { bringOverPath, rescuePath } from '../route.ts'
import { ChooseFile } from './choose-file.tsx'
import { HandOver } from './hand-over.tsx'
import { HeldFiles } from './held-files.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly held: readonly HeldRow[]
}

/** The way out and in without a server. */
export function FilesPane({ source, held }: Props) {
  const w = words()
  return (
    <section class="device-transfer" aria-label={w.title}>
      <HandOver source={source} run={null} name={new Date().toISOString().slice(0, 10)} />
      <ChooseFile source={source} />
      {held.length > 0 && <HeldFiles source={source} held={held} />}
      <a href={bringOverPath}>{m.stores.bring}</a>
      <a href={rescuePath} target="_top">
        {w.rescue}
      </a>
    </section>
  )
}
