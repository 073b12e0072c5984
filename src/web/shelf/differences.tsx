import type { ComponentChildren } from 'preact'
import { useMemo } from 'preact/hooks'
import { sourceIn } from '../../core/hardware/hardware-saying.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { type SheetStatement, saidAt } from '../../core/hardware/sheet-statements.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import type { ComparedSide } from '../../documents/comparison-card-contents.ts'
import { compareSheets, type StatedOtherwise } from '../../operations/compare-sheets.ts'
import { comparedItem, type RequiredByBoth } from '../../operations/compared-items.ts'
import { type RequiredByStatement, requiredBySheet, systemOf } from '../../operations/sheet-requirements.ts'
import { besideWords, saidWords, thingWords, valueWords } from '../../words/say-sheet.ts'
import { language } from '../language.ts'
import { m, printIn, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { words } from './words.ts'

interface Props {
  readonly one: HardwareSheet
  readonly other: HardwareSheet
  readonly sheets: readonly HardwareSheet[]
}

/** What two sheets or editions state otherwise, with what each says and what each requires. */
export function Differences({ one, other, sheets }: Props) {
  const w = words().compare
  const { statements, besides } = useMemo(() => compareSheets(one, other), [one, other])
  const required = useMemo<RequiredByBoth>(
    () => [requiredOf(one, sheets), requiredOf(other, sheets)],
    [one, other, sheets],
  )
  const print = printIn(null)
  const beside = (sheet: HardwareSheet, place: string, value: unknown): string =>
    value === undefined ? w.notThere : saidWords(saidAt(sheet, place, value, sheets), print)
  const kinds = (['values', 'texts', 'source'] as const).map((what) => ({
    what,
    list: statements.filter((statement) => statement.what === what),
  }))
  // The names stand over the columns.
  const named = besides.filter(({ place }) => place !== 'name')
  if (statements.length + besides.length === 0) return <p>{w.same}</p>
  return (
    <div class="shelf-differences" key={language()}>
      {named.length > 0 && (
        <Table {...{ one, other }}>
          {named.map(({ place, pinned, onShelf }) => (
            <tr key={place}>
              <th scope="row">{besideWords(place, print)}</th>
              <td>{beside(one, place, pinned)}</td>
              <td>{beside(other, place, onShelf)}</td>
            </tr>
          ))}
        </Table>
      )}
      {kinds
        .filter(({ list }) => list.length > 0)
        .map(({ what, list }) => (
          <FoldByItself
            key={what}
            level={2}
            title={w.kinds[what]}
            beside={<b class="count">{list.length}</b>}
            opensFirst={what === 'values'}
          >
            {() => (
              <Table {...{ one, other }}>
                {list.map((statement) => (
                  <Row key={statement.place} {...{ one, other, required, statement }} />
                ))}
              </Table>
            )}
          </FoldByItself>
        ))}
    </div>
  )
}

interface TableProps extends Omit<Props, 'sheets'> {
  readonly children: ComponentChildren
}

/** Each of the two in a column of its own, also on a phone. */
const Table = ({ one, other, children }: TableProps) => (
  <table class="differing">
    <thead>
      <tr>
        <th scope="col">{words().compare.what}</th>
        {[one, other].map((sheet, i) => (
          <th scope="col" key={i}>
            {say(nameOf(sheet))}, {words().edition(sheet.version)}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>{children}</tbody>
  </table>
)

interface RowProps extends Omit<Props, 'sheets'> {
  readonly required: RequiredByBoth
  readonly statement: StatedOtherwise
}

function Row({ one, other, required, statement }: RowProps) {
  const { about, sides } = comparedItem(statement, required)
  return (
    <tr data-statement={statement.place}>
      <th scope="row">{thingWords(about, printIn(null))}</th>
      <td>
        <SideOf side={sides[0]} sheet={one} stated={statement.one} what={statement.what} />
      </td>
      <td>
        <SideOf side={sides[1]} sheet={other} stated={statement.other} what={statement.what} />
      </td>
    </tr>
  )
}

interface SideProps {
  readonly side: ComparedSide | null
  readonly sheet: HardwareSheet
  readonly stated: SheetStatement | null
  readonly what: StatedOtherwise['what']
}

/** What one of them says: the values that the other says otherwise, and what it requires. */
function SideOf({ side, sheet, stated, what }: SideProps) {
  const print = printIn(null)
  const { compare } = words()
  if (side === null || stated === null) return <span class="hint">{compare.notThere}</span>
  if (what === 'source')
    return (
      <>
        {say(sourceIn(sheet, stated.cited))} ({m.entry.confirmation[stated.cited.confirmation]})
      </>
    )
  return (
    <>
      <ul class="plain">
        {side.values.map((value, i) => (
          <li key={i}>{valueWords(value, print)}</li>
        ))}
      </ul>
      {what === 'texts' && <span class="hint">{compare.otherWords}</span>}
      <ul class="plain shelf-asks">
        {side.asks.map(({ must }, i) => (
          <li key={i}>{say(must)}</li>
        ))}
      </ul>
    </>
  )
}

const requiredOf = (sheet: HardwareSheet, sheets: readonly HardwareSheet[]): RequiredByStatement => {
  const system = systemOf(sheet, sheets)
  return system === undefined ? new Map() : requiredBySheet(sheet, system)
}
