import { useMemo } from 'preact/hooks'
import type { Drawing } from '../../drawing/drawing.ts'
import { sayDrawing } from '../../drawing/say-drawing.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { m, printIn } from '../messages.ts'

interface Props {
  readonly drawing: Drawing
  readonly class: string
  /** Of the run or site, where the drawing may have lengths in the other system. */
  readonly units?: 'us' | 'metric'
}

/** A drawing on the page; the writer escapes every text in it. */
export function Picture({ drawing, class: name, units }: Props) {
  const svg = useMemo(() => writeSvg(sayDrawing(drawing, printIn(units ?? null))), [drawing, units, m])
  return <div class={`picture ${name}`} dangerouslySetInnerHTML={{ __html: svg }} />
}
