import type { ComponentChildren } from 'preact'
import { useEffect, useMemo } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { statementsOf } from '../../core/hardware/sheet-statements.ts'
import { nameOf, sheetText } from '../../core/hardware/sheet-text.ts'
import { requiredBySheet } from '../../operations/sheet-requirements.ts'
import { answerWords, choiceWords } from '../../words/say-sheet.ts'
import { language } from '../language.ts'
import { asWritten, m, printIn, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { sheetPath, shelfPath } from '../route.ts'
import { Confirmed } from './confirmed.tsx'
import { endsJoining, SheetDrawing, systemOf } from './sheet-drawing.tsx'
import { groupsOf } from './statement-groups.ts'
import { StatementTable } from './statement-table.tsx'
import { words } from './words.ts'

interface Props {
  readonly sheet: HardwareSheet
  readonly sheets: readonly HardwareSheet[]
}

/** One sheet as a drawing, and everything that it states: with source, confirmation and what is required by it. */
export function SheetView({ sheet, sheets }: Props) {
  const w = words()
  const name = say(nameOf(sheet))
  useEffect(() => {
    document.title = `${name} | ${m.page.name}`
  }, [name])
  const system = systemOf(sheet, sheets)
  const required = useMemo(() => (system === undefined ? new Map() : requiredBySheet(sheet, system)), [sheet, system])
  const groups = useMemo(() => groupsOf(statementsOf(sheet)), [sheet])
  return (
    <section class="sheet sheet-page">
      <a class="back" href={shelfPath}>
        {w.back}
      </a>
      <h1>{name}</h1>
      <p>
        {w.kinds[sheet.kind]}, {w.rail(say(limitsOf(sheet.railHeight)))}, {w.edition(sheet.version)}
      </p>
      <p class="warning">{say(sheetText(sheet, sheet.notice))}</p>
      <SheetDrawing sheet={sheet} sheets={sheets} view="whole" />
      <Facts sheet={sheet} sheets={sheets} />
      <div>
        <Confirmed sheet={sheet} />
        <p class="hint">{w.confirmedHow}</p>
      </div>
      <div>
        {groups.map(({ group, statements }) => (
          <FoldByItself
            key={group}
            level={2}
            title={w.groups[group]}
            beside={
              <span class="hint">
                {w.confirmed(
                  statements.filter(({ cited }) => cited.confirmation === 'published').length,
                  statements.length,
                )}
              </span>
            }
            opensFirst={group === 'rail'}
          >
            {() => <StatementTable sheet={sheet} statements={statements} required={required} />}
          </FoldByItself>
        ))}
      </div>
    </section>
  )
}

function Facts({ sheet, sheets }: Props) {
  const { facts } = words()
  const print = printIn(null)
  const answer = (value: boolean | 'notStated'): string => answerWords(value, print)
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
          <Fact name={facts.gating}>{answer(sheet.gating)}</Fact>
          <Fact name={facts.energyAbsorbing}>{answer(sheet.energyAbsorbing)}</Fact>
          <Fact name={facts.crashworthy}>{answer(sheet.crashworthy)}</Fact>
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
