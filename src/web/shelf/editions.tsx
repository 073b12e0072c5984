import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { writeSheet } from '../../formats/sheet/sheet-file.ts'
import type { RunSource } from '../data/run-source.ts'
import type { OwnSheet } from '../data/shelf-of.ts'
import { printIn } from '../messages.ts'
import { download } from '../parts/download.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { comparePath } from '../route.ts'
import { TouchedRuns } from './touched-runs.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly saved: HardwareSheet
  readonly editions: readonly HardwareSheet[]
  readonly own: readonly OwnSheet[]
}

/** Every edition of a sheet that is at hand, as files and to be compared; and the runs that hold one of them. */
export function Editions({ source, saved, editions, own }: Props) {
  const w = words()
  const list = editions.filter(({ id }) => id === saved.id)
  const addedAt = (version: string): string | undefined =>
    own.find((one) => one.id === saved.id && one.version === version)?.addedAt
  return (
    <FoldByItself level={2} title={w.editions.title} beside={<b class="count">{list.length}</b>} opensFirst={false}>
      {() => (
        <>
          <ul class="plain shelf-editions">
            {list.map((sheet) => {
              const added = addedAt(sheet.version)
              return (
                <li key={sheet.version} data-edition={sheet.version}>
                  <b>{w.edition(sheet.version)}</b>
                  <span class="hint">
                    {added === undefined ? w.editions.shipped : w.editions.added(printIn(null).moment(added))}
                    {sheet.version === saved.version && <span class="tag strong">{w.editions.onShelf}</span>}
                  </span>
                  <button type="button" class="button small" onClick={() => saveFile(sheet)}>
                    {w.editions.save}
                  </button>
                  {sheet.version !== saved.version && (
                    <a class="button small" href={comparePath(saved.id, `${sheet.id} ${sheet.version}`)}>
                      {w.editions.compare}
                    </a>
                  )}
                </li>
              )
            })}
          </ul>
          <TouchedRuns source={source} id={saved.id} edition={null} />
        </>
      )}
    </FoldByItself>
  )
}

const saveFile = (sheet: HardwareSheet): void =>
  download(new Blob([writeSheet(sheet)], { type: 'application/json' }), `${sheet.id}-${sheet.version}.json`)
