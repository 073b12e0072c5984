import type { ComponentChildren } from 'preact'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { answerWords, choiceWords } from '../../words/say-sheet.ts'
import { language } from '../language.ts'
import { asWritten, printIn, say } from '../messages.ts'
import { sheetPath } from '../route.ts'
import { endsJoining } from './sheet-drawing.tsx'
import { words } from './words.ts'

interface Props {
  readonly sheet: HardwareSheet
  readonly sheets: readonly HardwareSheet[]
}

/** What a sheet says of the hardware as a whole, for which it names no source. */
export function SheetFacts({ sheet, sheets }: Props) {
  const { facts } = words()
  const print = printIn(null)
  return (
    <dl class="found shelf-known">
      <Fact name={facts.category}>{choiceWords('category', sheet.category, print)}</Fact>
      {sheet.kind === 'longitudinal' ? (
        <Fact name={facts.ends}>
          <Sheets ids={endsJoining(sheet, sheets).map(({ id }) => id)} sheets={sheets} />
        </Fact>
      ) : (
        <>
          <Fact name={facts.joins}>
            <Sheets ids={sheet.joins} sheets={sheets} />
          </Fact>
          {(['gating', 'energyAbsorbing', 'crashworthy'] as const).map((field) => (
            <Fact key={field} name={facts[field]}>
              {answerWords(sheet[field], print)}
            </Fact>
          ))}
        </>
      )}
    </dl>
  )
}

const Fact = ({ name, children }: { readonly name: string; readonly children: ComponentChildren }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
)

/** Sheets by name, each with the way to it; one that is not at hand by its id. */
const Sheets = ({ ids, sheets }: { readonly ids: readonly string[]; readonly sheets: readonly HardwareSheet[] }) => (
  <ul class="plain" key={language()}>
    {ids.map((id) => {
      const sheet = sheets.find((one) => one.id === id)
      return <li key={id}>{sheet === undefined ? asWritten(id) : <a href={sheetPath(id)}>{say(nameOf(sheet))}</a>}</li>
    })}
  </ul>
)
