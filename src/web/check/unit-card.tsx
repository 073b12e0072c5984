import { useMemo } from 'preact/hooks'
import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import { nameOf as nameIn } from '../../core/hardware/sheet-text.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import type { UnitView } from '../../drawing/views/unit-view.ts'
import { unitPicture } from '../../operations/unit-picture.ts'
import { m, printIn, say } from '../messages.ts'

export const nameOf = (sheet: HardwareSheet): string => say(nameIn(sheet))

interface Props {
  readonly words: string
  /** What is drawn; nothing where no sheet is meant. */
  readonly drawing: Drawing | null
  readonly choose: () => void
}

/** A picture that is pressed, with its words below. */
export function Card({ words, drawing, choose }: Props) {
  const svg = useMemo(() => (drawing === null ? '' : writeSvg(drawing)), [drawing])
  return (
    <button type="button" class="check-card" onClick={choose}>
      {drawing !== null && (
        <span class="picture check-picture" aria-hidden="true" dangerouslySetInnerHTML={{ __html: svg }} />
      )}
      <span>{words}</span>
    </button>
  )
}

interface UnitProps extends Pick<Props, 'choose'> {
  readonly sheet: EndSheet
  readonly system: LongitudinalSheet
  readonly view: UnitView
  /** Other words than the name of the sheet. */
  readonly words?: string
}

/** The same with an end unit as its sheet has it, or what of it is asked about. */
export function UnitCard({ sheet, system, view, words, choose }: UnitProps) {
  const drawing = useMemo(() => unitPicture(sheet, system, view, printIn(null)), [sheet, system, view, m])
  return <Card words={words ?? nameOf(sheet)} drawing={drawing} choose={choose} />
}
