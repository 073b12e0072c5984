import { useEffect, useMemo, useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { withTranslation } from '../../core/hardware/translate-text.ts'
import { languagesBeside, type TextRow, textRows } from '../../formats/sheet/text-rows.ts'
import { followTexts } from '../../operations/follow-texts.ts'
import type { RunSource } from '../data/run-source.ts'
import type { Draft } from '../form/draft.ts'
import { m, say } from '../messages.ts'
import { sheetPath } from '../route.ts'
import { SaveEdition } from './save-edition.tsx'
import { useSheetDraft } from './sheet-drafts.ts'
import { TextRows } from './text-rows.tsx'
import { TextTable } from './text-table.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly id: string
  readonly saved: HardwareSheet | null
  readonly sheets: readonly HardwareSheet[]
  readonly editions: readonly HardwareSheet[]
}

/** In which order texts are shown: first what somebody has to do. */
const states = ['changed', 'missing', 'translated', 'source'] as const

/** What a sheet says and how another language says it, beside each other. */
export function TextsView({ source, id, saved, sheets, editions }: Props) {
  const w = words().texts
  const { draft, from, isBegun, change, drop } = useSheetDraft(id, saved, editions)
  // Of a draft anything may be missing but what it is.
  const sheet = useMemo(() => followTexts(from, draft) as unknown as HardwareSheet, [from, draft])
  const to = languagesBeside(sheet)[0]!
  const rows = useMemo(() => textRows(sheet, to), [sheet, to])
  const name = say(nameOf(sheet))
  useEffect(() => {
    document.title = `${w.title(to)}: ${name} | ${m.page.name}`
  }, [name, w, to])
  // A text stays where it is while somebody writes at it.
  const [shown, setShown] = useState(() => grouped(rows))
  const count = (state: TextRow['state']): number => rows.filter((row) => row.state === state).length
  const rowOf = new Map(rows.map((row) => [row.text, row]))
  return (
    <section class="sheet sheet-page">
      <a class="back" href={sheetPath(id)}>
        {words().compare.backTo}
      </a>
      <h1>{w.title(to)}</h1>
      <p>{name}</p>
      <p class="hint">{w.how}</p>
      <p role="status">{w.counts(count('translated'), count('missing'), count('changed'))}</p>
      <TextTable
        sheet={sheet}
        to={to}
        take={(next) => {
          change(() => next as unknown as Draft)
          setShown(grouped(textRows(next, to)))
        }}
      />
      {states.map((state) => (
        <TextRows
          key={state}
          title={w.states[state]}
          how={state === 'changed' ? w.changedHow : state === 'source' ? w.sourceHow : null}
          rows={shown[state].flatMap((text) => rowOf.get(text) ?? [])}
          to={to}
          opensFirst={state === states.find((one) => shown[one].length > 0)}
          put={(text, said) => change((into) => withTranslation(into, to, text, said))}
        />
      ))}
      {isBegun && <SaveEdition {...{ source, id, saved, draft, from, sheets, change, drop }} />}
    </section>
  )
}

/** Texts by what is to be done with them. */
function grouped(rows: readonly TextRow[]): Readonly<Record<TextRow['state'], readonly string[]>> {
  const of = (state: TextRow['state']) => rows.flatMap((row) => (row.state === state ? [row.text] : []))
  return { changed: of('changed'), missing: of('missing'), translated: of('translated'), source: of('source') }
}
