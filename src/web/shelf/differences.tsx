import { useMemo } from 'preact/hooks'
import { sourceIn } from '../../core/hardware/hardware-saying.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { type SheetStatement, saidAt } from '../../core/hardware/sheet-statements.ts'
import { contentOf, nameOf } from '../../core/hardware/sheet-text.ts'
import { compareSheets, type StatedOtherwise } from '../../operations/compare-sheets.ts'
import { type RequiredByStatement, requiredBySheet } from '../../operations/sheet-requirements.ts'
import { besideWords, saidWords, thingWords, valueWords } from '../../words/say-sheet.ts'
import { language } from '../language.ts'
import { m, printIn, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { systemOf } from './sheet-drawing.tsx'
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
  const [required, requiredThere] = useMemo(
    () => [one, other].map((sheet) => requiredOf(sheet, sheets)),
    [one, other, sheets],
  )
  const print = printIn(null)
  const beside = (sheet: HardwareSheet, place: string, value: unknown): string =>
    value === undefined ? w.notThere : saidWords(saidAt(sheet, place, value), print)
  const sides = [
    { sheet: one, required: required! },
    { sheet: other, required: requiredThere! },
  ] as const
  const kinds = (['values', 'texts', 'source'] as const).map((what) => ({
    what,
    list: statements.filter((statement) => statement.what === what),
  }))
  if (statements.length + besides.length === 0) return <p>{w.same}</p>
  return (
    <div class="shelf-differences" key={language()}>
      {besides.length > 0 && (
        <ul>
          {besides.map(({ place, pinned, onShelf }) => (
            <li key={place}>
              {w.besides(besideWords(place, print), beside(one, place, pinned), beside(other, place, onShelf))}
            </li>
          ))}
        </ul>
      )}
      {kinds
        .filter(({ list }) => list.length > 0)
        .map(({ what, list }) => (
          <FoldByItself
            key={what}
            level={3}
            title={w.kinds[what]}
            beside={<b class="count">{list.length}</b>}
            opensFirst={what === 'values'}
          >
            {() => <Table sides={sides} list={list} />}
          </FoldByItself>
        ))}
    </div>
  )
}

type Side = { readonly sheet: HardwareSheet; readonly required: RequiredByStatement }

const Table = ({
  sides,
  list,
}: {
  readonly sides: readonly [Side, Side]
  readonly list: readonly StatedOtherwise[]
}) => (
  <table class="statements">
    <thead>
      <tr>
        <th scope="col">{words().compare.what}</th>
        {sides.map(({ sheet }, i) => (
          <th scope="col" key={i}>
            {say(nameOf(sheet))}, {words().edition(sheet.version)}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {list.map((statement) => (
        <tr key={statement.place} data-statement={statement.place}>
          <th scope="row">{thingWords((statement.one ?? statement.other)!.about, printIn(null))}</th>
          {([statement.one, statement.other] as const).map((side, i) => (
            <td key={i}>
              <SideOf
                side={side}
                beside={i === 0 ? statement.other : statement.one}
                of={sides[i]!}
                than={sides[1 - i]!}
                what={statement.what}
              />
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
)

interface SideProps {
  readonly side: SheetStatement | null
  readonly beside: SheetStatement | null
  readonly of: Side
  readonly than: Side
  readonly what: StatedOtherwise['what']
}

/** What one of them says: the values that the other says otherwise, and what it requires. */
function SideOf({ side, beside, of: { sheet, required }, than, what }: SideProps) {
  const print = printIn(null)
  const { compare } = words()
  if (side === null) return <span class="hint">{compare.notThere}</span>
  if (what === 'source')
    return (
      <>
        {say(sourceIn(sheet, side.cited))} ({m.entry.confirmation[side.cited.confirmation]})
      </>
    )
  const others = (beside?.values ?? []).map(contentOf)
  const values = side.values.filter((value) => !others.includes(contentOf(value)))
  // What both require alike is no difference.
  const alike = (than.required.get(side.place) ?? []).map(({ must }) => contentOf(must))
  const asks = (required.get(side.place) ?? []).filter(({ must }) => !alike.includes(contentOf(must)))
  return (
    <>
      <ul class="plain">
        {values.map((value, i) => (
          <li key={i}>{valueWords(value, print)}</li>
        ))}
      </ul>
      {what === 'texts' && <span class="hint">{compare.otherWords}</span>}
      <ul class="plain shelf-asks">
        {asks.map(({ must }, i) => (
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
