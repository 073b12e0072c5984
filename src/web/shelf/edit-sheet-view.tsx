import '../style/run-form.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { contentOf, nameOf } from '../../core/hardware/sheet-text.ts'
import { requiredBySheet, systemOf } from '../../operations/sheet-requirements.ts'
import type { RunSource } from '../data/run-source.ts'
import { Attention } from '../form/attention.tsx'
import { type Draft, textOf, valueAt } from '../form/draft.ts'
import { fieldsOf } from '../form/form-section.ts'
import { FormView } from '../form/form-view.tsx'
import { placeProblems } from '../form/place-problems.ts'
import { type Swept, SweptNote } from '../form/swept.tsx'
import { useEachFrame } from '../form/use-each-frame.ts'
import { language } from '../language.ts'
import { asWritten, m, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { useMedia, wide } from '../parts/use-media.ts'
import { sheetPath } from '../route.ts'
import { PictureField } from './picture-field.tsx'
import { readDraft } from './read-draft.ts'
import { SaveEdition } from './save-edition.tsx'
import { useSheetDraft } from './sheet-drafts.ts'
import { SheetDrawing } from './sheet-drawing.tsx'
import { sheetSections } from './sheet-sections.ts'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly id: string
  readonly saved: HardwareSheet | null
  readonly sheets: readonly HardwareSheet[]
  readonly editions: readonly HardwareSheet[]
}

/** A sheet as a form, and beside it what follows: the drawing, what is required, and what saving does. */
export function EditSheetView({ source, id, saved, sheets, editions }: Props) {
  const w = words().form
  const { draft, from, isBegun, change, drop } = useSheetDraft(id, saved, editions)
  const [swept, setSwept] = useState<Swept | null>(null)
  const isWide = useMedia(wide)
  const settled = useEachFrame(draft)
  const read = useMemo(() => readDraft(settled, from), [settled, from])
  const systems = useMemo(
    () => sheets.filter(({ kind }) => kind === 'longitudinal').map((one) => ({ id: one.id, name: say(nameOf(one)) })),
    [sheets, language()],
  )
  const sections = useMemo(() => sheetSections(draft, systems), [draft, systems])
  const fields = fieldsOf(sections)
  const problems = placeProblems(
    read.ok ? [] : read.error,
    fields.map(({ place }) => place),
  )
  const shown = read.ok ? read.value : saved
  // As the sheet says it in the language of the page; of one that cannot be read yet, what is written there.
  const title = shown === null ? asWritten(textOf(valueAt(draft, 'name'))) : say(nameOf(shown))
  useEffect(() => {
    document.title = `${w.edit}: ${title} | ${m.page.name}`
  }, [title, w])
  const sweep = (sweeping: (draft: Draft) => Draft, said: (before: Draft, after: Draft) => string): void => {
    setSwept({ before: draft, said: said(draft, sweeping(draft)) })
    change(sweeping)
  }
  return (
    <>
      <header class="sheet run-form-head">
        <a class="back" href={sheetPath(id)}>
          {words().compare.backTo}
        </a>
        <h1>{title === '' ? w.edit : title}</h1>
        <p class="hint">{w.how}</p>
      </header>
      <div class="run-form">
        <div class="run-form-asked">
          <SweptNote
            swept={swept}
            back={(before) => {
              setSwept(null)
              change(() => before)
            }}
          />
          <FormView
            id="sheet"
            title={w.title}
            {...{ sections, problems, isWide, change, sweep }}
            saidOfUnits={() => ''}
            ownPicture={PictureField}
          />
        </div>
        <div class="run-form-beside">
          <section class="sheet" aria-labelledby="preview-title">
            <h2 id="preview-title">{w.preview}</h2>
            {!read.ok && (
              <Attention
                problems={problems}
                fields={fields}
                meanwhile={saved === null ? w.fresh.meanwhile : w.meanwhile}
              />
            )}
            {shown !== null && (
              <>
                <SheetDrawing sheet={shown} sheets={sheets} view="whole" />
                <Required sheet={shown} sheets={sheets} />
              </>
            )}
            {isBegun && <SaveEdition {...{ source, id, saved, draft, from, sheets, change, drop }} />}
          </section>
        </div>
      </div>
    </>
  )
}

/** Everything that is required by the sheet as it is, each thing once. */
function Required({ sheet, sheets }: { readonly sheet: HardwareSheet; readonly sheets: readonly HardwareSheet[] }) {
  const system = systemOf(sheet, sheets)
  const musts = useMemo(() => {
    const all = system === undefined ? [] : [...requiredBySheet(sheet, system).values()].flat()
    return [...new Map(all.map(({ must }) => [contentOf(must), must])).values()]
  }, [sheet, system])
  return (
    <FoldByItself
      level={3}
      title={words().form.required}
      beside={<b class="count">{musts.length}</b>}
      opensFirst={false}
    >
      {() => (
        <ul>
          {musts.map((must, i) => (
            <li key={i}>{say(must)}</li>
          ))}
        </ul>
      )}
    </FoldByItself>
  )
}
