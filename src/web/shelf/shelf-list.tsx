import { useEffect } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { language } from '../language.ts'
import { m, say } from '../messages.ts'
import { runsPath, sheetPath } from '../route.ts'
import { Confirmed } from './confirmed.tsx'
import { SheetDrawing } from './sheet-drawing.tsx'
import { words } from './words.ts'

/** Every sheet at hand with its picture: what it is, its height, its edition, and how much of it is confirmed. */
export function ShelfList({ sheets }: { readonly sheets: readonly HardwareSheet[] }) {
  const w = words()
  useEffect(() => {
    document.title = `${w.title} | ${m.page.name}`
  }, [language()])
  const systems = sheets.filter(({ kind }) => kind === 'longitudinal')
  const ends = sheets.filter(({ kind }) => kind !== 'longitudinal')
  return (
    <section class="sheet">
      <a class="back" href={runsPath}>
        {m.page.toRuns}
      </a>
      <h1>{w.title}</h1>
      <p class="hint">{w.how}</p>
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
                <Entry sheet={sheet} sheets={sheets} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </section>
  )
}

function Entry({ sheet, sheets }: { readonly sheet: HardwareSheet; readonly sheets: readonly HardwareSheet[] }) {
  const w = words()
  return (
    <a class="shelf-sheet" href={sheetPath(sheet.id)} data-sheet={sheet.id}>
      <SheetDrawing sheet={sheet} sheets={sheets} view="end" />
      <b>{say(nameOf(sheet))}</b>
      <span class="shelf-facts">
        {w.kinds[sheet.kind]}, {w.rail(say(limitsOf(sheet.railHeight)))}, {w.edition(sheet.version)}
      </span>
      <Confirmed sheet={sheet} />
    </a>
  )
}
