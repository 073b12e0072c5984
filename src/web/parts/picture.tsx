import { useMemo } from 'preact/hooks'
import type { Drawing } from '../../drawing/drawing.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'

interface Props {
  readonly drawing: Drawing
  readonly class: string
}

/** A drawing on the page; the writer escapes every text in it. */
export function Picture({ drawing, class: name }: Props) {
  const svg = useMemo(() => writeSvg(drawing), [drawing])
  return <div class={`picture ${name}`} dangerouslySetInnerHTML={{ __html: svg }} />
}
