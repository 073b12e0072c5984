import { useEffect, useMemo, useState } from 'preact/hooks'
import { confirmStatement } from '../../core/hardware/confirm-statement.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { statementsOf } from '../../core/hardware/sheet-statements.ts'
import { nameOf, sheetText } from '../../core/hardware/sheet-text.ts'
import { languagesBeside } from '../../formats/sheet/text-rows.ts'
import { type RequiredByStatement, requiredBySheet, systemOf } from '../../operations/sheet-requirements.ts'
import type { RunSource } from '../data/run-source.ts'
import type { OwnSheet } from '../data/shelf-of.ts'
import type { Draft } from '../form/draft.ts'
import { m, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { sheetPath, shelfPath } from '../route.ts'
import { ConfirmWithFields, useConfirmWith } from './confirm-with.tsx'
import { Confirmed } from './confirmed.tsx'
import { CopyForm } from './copy-form.tsx'
import { Editions } from './editions.tsx'
import { NewerEdition } from './newer-edition.tsx'
import { PrintSheet } from './print-sheet.tsx'
import { readDraft } from './read-draft.ts'
import { SaveEdition } from './save-edition.tsx'
import { useSheetDraft } from './sheet-drafts.ts'
import { SheetDrawing } from './sheet-drawing.tsx'
import { SheetFacts } from './sheet-facts.tsx'
import { groupsOf } from './statement-groups.ts'
import { StatementTable } from './statement-table.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly id: string
  /** The edition on the shelf; null for a sheet that is new. */
  readonly saved: HardwareSheet | null
  readonly sheets: readonly HardwareSheet[]
  readonly editions: readonly HardwareSheet[]
  readonly own: readonly OwnSheet[]
}

/** One sheet as a drawing, and everything that it states: with source, confirmation and what is required by it. */
export function SheetView({ source, id, saved, sheets, editions, own }: Props) {
  const w = words()
  const { draft, from, isBegun, change, drop } = useSheetDraft(id, saved, editions)
  const read = useMemo(() => readDraft(draft, from), [draft, from])
  // What is being changed may not be sound yet: then the edition on the shelf is shown.
  const sheet = read.ok ? read.value : saved
  const save = isBegun && <SaveEdition {...{ source, id, saved, draft, from, sheets, change, drop }} />
  return (
    <section class="sheet sheet-page">
      <a class="back" href={shelfPath}>
        {w.back}
      </a>
      {sheet !== null && (
        <Stated
          sheet={sheet}
          {...{ source, sheets, editions }}
          confirm={(next) => change(() => next as unknown as Draft)}
          newer={
            saved !== null && (
              <NewerEdition saved={saved} begin={isBegun ? null : (next) => change(() => next as unknown as Draft)} />
            )
          }
          isConfirmable={read.ok}
          isChanged={isBegun && read.ok}
        >
          {save}
        </Stated>
      )}
      {sheet === null && save}
      {saved !== null && <Editions {...{ source, saved, editions, own }} />}
    </section>
  )
}

interface StatedProps extends Pick<Props, 'source' | 'sheets' | 'editions'> {
  readonly sheet: HardwareSheet
  readonly confirm: (next: HardwareSheet) => void
  readonly isConfirmable: boolean
  /** Whether it says something else than the edition that it names, or is none yet. */
  readonly isChanged: boolean
  readonly newer: preact.ComponentChildren
  /** What is shown before the statements. */
  readonly children: preact.ComponentChildren
}

function Stated({ source, sheet, sheets, editions, confirm, isConfirmable, isChanged, newer, children }: StatedProps) {
  const w = words()
  const name = say(nameOf(sheet))
  const [isConfirming, setConfirming] = useState(false)
  const [isAsked, setAsked] = useState(false)
  const [isCopying, setCopying] = useState(false)
  const [isPrinting, setPrinting] = useState(false)
  const { inHand, change, isSaid } = useConfirmWith()
  useEffect(() => {
    document.title = `${name} | ${m.page.name}`
  }, [name])
  const system = systemOf(sheet, sheets)
  const required = useMemo<RequiredByStatement>(
    () => (system === undefined ? new Map() : requiredBySheet(sheet, system)),
    [sheet, system],
  )
  const groups = useMemo(() => groupsOf(statementsOf(sheet)), [sheet])
  const confirmAt = (place: string, page: string): void => {
    setAsked(!isSaid)
    if (isSaid) confirm(confirmStatement(sheet, place, { ...inHand, page }))
  }
  return (
    <>
      <h1>{name}</h1>
      <p>
        {w.kinds[sheet.kind]}, {w.rail(say(limitsOf(sheet.railHeight)))},{' '}
        {isChanged ? w.notSaved(sheet.version) : w.edition(sheet.version)}
      </p>
      <SheetDrawing sheet={sheet} sheets={sheets} view="whole" />
      <p class="warning">{say(sheetText(sheet, sheet.notice))}</p>
      {newer}
      {children}
      <div class="shelf-acts">
        <Confirmed sheet={sheet} />
        {isConfirmable && (
          <button
            type="button"
            class={isConfirming ? 'button' : 'button main'}
            aria-pressed={isConfirming}
            onClick={() => setConfirming(!isConfirming)}
          >
            {isConfirming ? w.confirm.end : w.confirm.begin}
          </button>
        )}
        {!isConfirming && <p class="hint">{w.confirmedHow}</p>}
      </div>
      {isConfirming && <ConfirmWithFields inHand={inHand} change={change} isAsked={isAsked} />}
      {isConfirming && isAsked && !isSaid && (
        <p class="trouble" role="alert">
          {w.confirm.missing}
        </p>
      )}
      <SheetFacts sheet={sheet} sheets={sheets} />
      <div class="ways">
        <a href={sheetPath(sheet.id, 'edit')}>{w.form.edit}</a>
        {languagesBeside(sheet).map((to) => (
          <a key={to} href={sheetPath(sheet.id, 'texts')}>
            {w.texts.link(to)}
          </a>
        ))}
        <a href={sheetPath(sheet.id, 'compare')}>{w.compare.link}</a>
        <button type="button" aria-expanded={isPrinting} onClick={() => setPrinting(!isPrinting)}>
          {w.print.open}
        </button>
        <button type="button" aria-expanded={isCopying} onClick={() => setCopying(!isCopying)}>
          {w.form.copy.begin}
        </button>
      </div>
      {isPrinting && <PrintSheet {...{ source, sheet, isChanged }} system={system ?? null} other={null} />}
      {isCopying && <CopyForm sheet={sheet} editions={editions} />}
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
            {() => <StatementTable {...{ sheet, statements, required }} confirm={isConfirming ? confirmAt : null} />}
          </FoldByItself>
        ))}
      </div>
    </>
  )
}
