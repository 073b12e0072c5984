import type { Language } from '../../core/language.ts'
import { marksFault } from '../../formats/sheet/sheet-sense.ts'
import type { TextRow } from '../../formats/sheet/text-rows.ts'
import { besideWords } from '../../words/say-sheet.ts'
import { asWritten, m, printIn, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { words } from './words.ts'

interface Props {
  readonly title: string
  readonly how: string | null
  readonly rows: readonly TextRow[]
  readonly to: Language
  readonly opensFirst: boolean
  readonly put: (text: string, said: string) => void
}

/** Texts in two columns: what the sheet says, and what the other language says. */
export const TextRows = ({ title, how, rows, to, opensFirst, put }: Props) =>
  rows.length === 0 ? null : (
    <FoldByItself level={2} title={title} beside={<b class="count">{rows.length}</b>} opensFirst={opensFirst}>
      {() => (
        <>
          {how !== null && <p class="hint">{how}</p>}
          <ul class="plain shelf-texts">
            {rows.map((row) => (
              <Row key={row.text} row={row} to={to} put={put} />
            ))}
          </ul>
        </>
      )}
    </FoldByItself>
  )

function Row({ row: { place, text, said, before }, to, put }: { readonly row: TextRow } & Pick<Props, 'to' | 'put'>) {
  const w = words().texts
  const expected = said === null ? null : marksFault(text, said)
  const id = `text-${place}`
  return (
    <li data-text={place}>
      <div>
        <span class="hint">{besideWords(place, printIn(null))}</span>
        <p id={`${id}-own`}>{asWritten(text)}</p>
        {before !== null && (
          <p class="shelf-before">
            {w.before(asWritten(before.text))} <i>{asWritten(before.said)}</i>
            <button type="button" class="button small" onClick={() => put(text, before.said)}>
              {w.keep}
            </button>
          </p>
        )}
      </div>
      <label>
        <span class="hint">{w.languages[to]}</span>
        <textarea
          rows={2}
          lang={to}
          value={said ?? ''}
          aria-invalid={expected !== null}
          aria-describedby={`${id}-own${expected === null ? '' : ` ${id}-wrong`}`}
          onInput={({ currentTarget }) => put(text, currentTarget.value)}
        />
        {expected !== null && (
          <span class="field-wrong" id={`${id}-wrong`}>
            {m.form.wrong(say(expected), '')}
          </span>
        )}
      </label>
    </li>
  )
}
