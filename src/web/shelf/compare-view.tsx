import { useEffect } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import type { GivenSheet } from '../../operations/sheet-document.ts'
import { systemOf } from '../../operations/sheet-requirements.ts'
import type { RunSource } from '../data/run-source.ts'
import { language } from '../language.ts'
import { m, say } from '../messages.ts'
import { comparePath, goTo, sheetPath } from '../route.ts'
import { Differences } from './differences.tsx'
import { PrintSheet } from './print-sheet.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly saved: HardwareSheet
  readonly sheets: readonly HardwareSheet[]
  readonly editions: readonly HardwareSheet[]
  readonly beside: string | null
}

/** One names an edition in an address and a choice. */
const keyOf = ({ id, version }: HardwareSheet): string => `${id} ${version}`

/** A sheet beside another one, or beside one of its own editions: what differs, with both figures. */
export function CompareView({ source, saved, sheets, editions, beside }: Props) {
  const w = words()
  const name = say(nameOf(saved))
  useEffect(() => {
    document.title = `${w.compare.title}: ${name} | ${m.page.name}`
  }, [name])
  const others = editions.filter((one) => keyOf(one) !== keyOf(saved))
  const alike = (one: HardwareSheet): boolean => one.id === saved.id || one.kind === saved.kind
  const ordered = [...others.filter(alike), ...others.filter((one) => !alike(one))]
  const other = ordered.find((one) => keyOf(one) === beside) ?? ordered[0]
  const given = (sheet: HardwareSheet): GivenSheet => ({ sheet, system: systemOf(sheet, sheets) ?? null })
  const editionName = (one: HardwareSheet): string => `${say(nameOf(one))}, ${w.edition(one.version)}`
  return (
    <section class="sheet sheet-page">
      <a class="back" href={sheetPath(saved.id)}>
        {w.compare.backTo}
      </a>
      <h1>{w.compare.title}</h1>
      <p>{editionName(saved)}</p>
      <label class="shelf-beside">
        <span>{w.compare.link}</span>
        <select
          value={other === undefined ? '' : keyOf(other)}
          onChange={({ currentTarget: { value } }) => goTo(comparePath(saved.id, value))}
        >
          {ordered.map((one) => (
            <option key={keyOf(one)} value={keyOf(one)}>
              {editionName(one)}
            </option>
          ))}
        </select>
      </label>
      {other !== undefined && (
        <>
          <Differences key={language()} one={saved} other={other} sheets={sheets} />
          <PrintSheet source={source} {...given(saved)} other={given(other)} isChanged={false} />
        </>
      )}
    </section>
  )
}
