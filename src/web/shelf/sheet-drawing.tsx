import { useMemo } from 'preact/hooks'
import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { systemOf } from '../../operations/sheet-requirements.ts'
import { unitPicture } from '../../operations/unit-picture.ts'
import { language } from '../language.ts'
import { printIn } from '../messages.ts'

interface Props {
  readonly sheet: HardwareSheet
  readonly sheets: readonly HardwareSheet[]
  /** Of an end unit: all of it, or its outermost posts. A system is shown by a splice. */
  readonly view: 'whole' | 'end'
}

/** The hardware as its sheet has it. The words beside it say all that it shows. */
export function SheetDrawing({ sheet, sheets, view }: Props) {
  const svg = useMemo(() => svgOf(sheet, sheets, view), [sheet, sheets, view, language()])
  return <span class="picture shelf-picture" aria-hidden="true" dangerouslySetInnerHTML={{ __html: svg }} />
}

/** Empty where nothing at hand goes with it, so that it cannot be put together. */
function svgOf(sheet: HardwareSheet, sheets: readonly HardwareSheet[], view: Props['view']): string {
  const system = systemOf(sheet, sheets)
  const end = sheet.kind === 'longitudinal' ? endsJoining(sheet, sheets)[0] : sheet
  if (system === undefined || end === undefined) return ''
  return writeSvg(unitPicture(end, system, sheet.kind === 'longitudinal' ? 'splice' : view, printIn(null)))
}

export const endsJoining = (system: LongitudinalSheet, sheets: readonly HardwareSheet[]): readonly EndSheet[] =>
  sheets.filter((one): one is EndSheet => one.kind !== 'longitudinal' && one.joins.includes(system.id))
