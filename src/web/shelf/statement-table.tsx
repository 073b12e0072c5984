import { sourceIn } from '../../core/hardware/hardware-saying.ts'
import type { Cited, HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { rulePicture } from '../../core/hardware/rule-picture.ts'
import type { SheetStatement } from '../../core/hardware/sheet-statements.ts'
import type { RequiredByStatement } from '../../operations/sheet-requirements.ts'
import { thingWords, useWords, valueWords } from '../../words/say-sheet.ts'
import { asWritten, m, printIn, say } from '../messages.ts'
import { OwnPicture } from '../parts/own-picture.tsx'
import { ConfirmOne } from './confirm-with.tsx'
import { words } from './words.ts'

interface Props {
  readonly sheet: HardwareSheet
  readonly statements: readonly SheetStatement[]
  readonly required: RequiredByStatement
  /** Confirms a statement on a page of the document in hand; null while nobody confirms. */
  readonly confirm: ((place: string, page: string) => void) | null
}

/** What a sheet states, line by line: the values, where they come from, and what is required by them. */
export const StatementTable = ({ sheet, statements, required, confirm }: Props) => (
  <table class="statements">
    <thead>
      <tr>
        <th scope="col">{words().columns.states}</th>
        <th scope="col">{words().columns.source}</th>
        <th scope="col">{words().columns.requires}</th>
      </tr>
    </thead>
    <tbody>
      {statements.map((statement) => (
        <Row key={statement.place} {...{ sheet, statement, confirm }} required={required.get(statement.place) ?? []} />
      ))}
    </tbody>
  </table>
)

interface RowProps extends Pick<Props, 'sheet' | 'confirm'> {
  readonly statement: SheetStatement
  readonly required: Exclude<ReturnType<RequiredByStatement['get']>, undefined>
}

function Row({ sheet, statement: { place, about, values, cited }, required, confirm }: RowProps) {
  const print = printIn(null)
  const rule = /\.rules\[([^\]]*)\]$/.exec(place)?.[1]
  const picture = rule === undefined ? null : rulePicture(sheet, rule)
  return (
    <tr data-statement={place}>
      <th scope="row">
        {thingWords(about, print)}
        <ul class="plain statement-values">
          {values.map((value, i) => (
            <li key={i}>{valueWords(value, print)}</li>
          ))}
        </ul>
        {picture !== null && <OwnPicture {...picture} alt={say(picture.alt)} />}
      </th>
      <td>
        <SourceWords sheet={sheet} cited={cited} />
        {confirm !== null && cited.confirmation !== 'published' && (
          <ConfirmOne confirm={(page) => confirm(place, page)} />
        )}
      </td>
      <td>
        {required.length === 0 ? (
          <span class="hint">{useWords(about, print)}</span>
        ) : (
          <ul class="plain">
            {required.map(({ must }, i) => (
              <li key={i}>{say(must)}</li>
            ))}
          </ul>
        )}
      </td>
    </tr>
  )
}

/** Where it comes from, and how far it can be trusted. */
const SourceWords = ({ sheet, cited }: { readonly sheet: HardwareSheet; readonly cited: Cited }) => (
  <>
    {say(sourceIn(sheet, cited))} (
    {cited.confirmation === 'from memory' ? (
      <b class="unconfirmed">{words().unconfirmed}</b>
    ) : (
      m.entry.confirmation[cited.confirmation]
    )}
    )
    {cited.checked !== undefined && (
      <span class="hint statement-checked">
        {words().confirm.checked(asWritten(cited.checked.by), asWritten(cited.checked.page), cited.checked.on)}
      </span>
    )}
  </>
)
