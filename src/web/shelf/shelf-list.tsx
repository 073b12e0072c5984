import type { ComponentChildren } from 'preact'
import { useEffect } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { newerShipped } from '../../operations/newer-shipped.ts'
import type { RunSource } from '../data/run-source.ts'
import type { OwnSheet } from '../data/shelf-of.ts'
import { language } from '../language.ts'
import { asWritten, m, say } from '../messages.ts'
import { runsPath, sheetPath } from '../route.ts'
import { OwnSheets } from '../transfer/own-sheets.tsx'
import { Confirmed } from './confirmed.tsx'
import { NewSheetForm } from './new-sheet-form.tsx'
import { begunSheets } from './sheet-drafts.ts'
import { SheetDrawing } from './sheet-drawing.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly own: readonly OwnSheet[]
  /** As they are on the shelf. */
  readonly sheets: readonly HardwareSheet[]
}

/** Every sheet at hand with its picture: what it is, its height, its edition, and how much of it is confirmed. */
export function ShelfList({ source, own, sheets }: Props) {
  const w = words()
  const begun = begunSheets()
  useEffect(() => {
    document.title = `${w.title} | ${m.page.name}`
  }, [language()])
  const fresh = Object.entries(begun).filter(([id]) => !sheets.some((sheet) => sheet.id === id))
  const systems = sheets.filter(({ kind }) => kind === 'longitudinal')
  const ends = sheets.filter(({ kind }) => kind !== 'longitudinal')
  return (
    <section class="sheet">
      <a class="back" href={runsPath}>
        {m.page.toRuns}
      </a>
      <h1>{w.title}</h1>
      <p class="hint">{w.how}</p>
      {fresh.length > 0 && (
        <ul>
          {fresh.map(([id, { draft }]) => (
            <li key={id}>
              <a href={sheetPath(id, 'edit')}>{asWritten(String(draft.name ?? id))}</a>{' '}
              <span class="tag strong">{w.begun}</span>
            </li>
          ))}
        </ul>
      )}
      {(
        [
          [w.systems, systems],
          [w.ends, ends],
        ] as const
      ).map(([title, list]) => (
        <section key={title} aria-label={title}>
          <h2>{title}</h2>
          <ul class="plain shelf">
            {list.map((sheet) => (
              <li key={sheet.id}>
                <Entry sheet={sheet} sheets={sheets}>
                  {own.some(({ id, version }) => id === sheet.id && version === sheet.version) && (
                    <span class="tag">{w.own}</span>
                  )}
                  {newerShipped(sheet) !== null && <span class="tag strong">{w.newer.tag}</span>}
                  {begun[sheet.id] !== undefined && <span class="tag strong">{w.begun}</span>}
                </Entry>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <NewSheetForm sheets={sheets} />
      <OwnSheets source={source} own={own} />
    </section>
  )
}

interface EntryProps extends Pick<Props, 'sheets'> {
  readonly sheet: HardwareSheet
  readonly children: ComponentChildren
}

function Entry({ sheet, sheets, children }: EntryProps) {
  const w = words()
  return (
    <a class="shelf-sheet" href={sheetPath(sheet.id)} data-sheet={sheet.id}>
      <SheetDrawing sheet={sheet} sheets={sheets} view="end" />
      <span>
        <b>{say(nameOf(sheet))}</b> {children}
      </span>
      <span class="shelf-facts">
        {w.kinds[sheet.kind]}, {w.rail(say(limitsOf(sheet.railHeight)))}, {w.edition(sheet.version)}
      </span>
      <Confirmed sheet={sheet} />
    </a>
  )
}
