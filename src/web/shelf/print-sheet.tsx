import { useState } from 'preact/hooks'
import type { GivenSheet, SheetDocument } from '../../operations/sheet-document.ts'
import { rememberedVisit } from '../data/device.ts'
import type { RunSource, SheetDocumentWish, Trouble } from '../data/run-source.ts'
import { language } from '../language.ts'
import { download } from '../parts/download.ts'
import { LanguageField } from '../parts/language-field.tsx'
import { PageField } from '../parts/page-field.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { words } from './words.ts'

interface Props extends Pick<SheetDocument, 'sheet' | 'system' | 'isChanged'> {
  readonly source: RunSource
  /** What it is compared with; null for what is printed of one sheet. */
  readonly other: GivenSheet | null
}

type State =
  | { readonly is: 'asked' | 'making' }
  | { readonly is: 'made'; readonly file: string }
  | { readonly is: 'failed'; readonly trouble: Trouble }

/** Prints a sheet, or what differs between two: on which paper, in which language and units. */
export function PrintSheet({ source, sheet, system, other, isChanged }: Props) {
  const w = words().print
  const [printing, setPrinting] = useState<Pick<SheetDocumentWish, 'language' | 'units' | 'page'>>(() => ({
    ...{ language: language(), units: null, page: 'letter' },
  }))
  const [state, setState] = useState<State>({ is: 'asked' })
  const make = async (kind: SheetDocument['kind']): Promise<void> => {
    setState({ is: 'making' })
    const { by } = rememberedVisit()
    const made = await source.sheetDocument({ kind, sheet, system, other, isChanged, ...printing, author: by })
    if (!made.ok) return setState({ is: 'failed', trouble: made.error })
    const named = [sheet, ...(other === null ? [] : [other.sheet])].map(
      ({ id, version }) => `${id}-${isChanged ? 'not-saved' : version}`,
    )
    const file = `${[...named, kind].join('-')}.pdf`
    download(made.value, file)
    setState({ is: 'made', file })
  }
  const isMaking = state.is === 'making'
  const button = (kind: SheetDocument['kind'], isMain: boolean) => (
    <button type="button" class={isMain ? 'button main' : 'button'} disabled={isMaking} onClick={() => void make(kind)}>
      {w.of[kind]}
    </button>
  )
  return (
    <div class="shelf-print">
      {other === null && <p class="hint">{w.how}</p>}
      <div class="fields">
        <PageField page={printing.page} choose={(page) => setPrinting({ ...printing, page })} />
        <LanguageField
          name={w.language}
          language={printing.language}
          choose={(language) => setPrinting({ ...printing, language })}
        />
        <label>
          <span>{w.lengths}</span>
          <select
            value={printing.units ?? 'published'}
            onChange={({ currentTarget: { value } }) =>
              setPrinting({ ...printing, units: value === 'us' || value === 'metric' ? value : null })
            }
          >
            {(['published', 'us', 'metric'] as const).map((units) => (
              <option key={units} value={units}>
                {w.units[units]}
              </option>
            ))}
          </select>
        </label>
      </div>
      <div class="form-buttons">
        {other !== null && button('comparison-card', true)}
        {other === null && system !== null && button('pocket-card', true)}
        {other === null && button('list', system === null)}
      </div>
      {other === null && system === null && <p class="hint">{w.noSystem}</p>}
      <p role="status">
        {isMaking && w.making}
        {state.is === 'made' && w.made(state.file)}
      </p>
      {state.is === 'failed' && <TroubleNote title={w.notMade} trouble={state.trouble} />}
    </div>
  )
}
