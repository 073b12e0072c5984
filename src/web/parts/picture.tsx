import { useMemo } from 'preact/hooks'
import type { Drawing } from '../../drawing/drawing.ts'
import { sayDrawing } from '../../drawing/say-drawing.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { inBothUnits } from '../../words/in-both-units.ts'
import { language, m, sayWithRest } from '../messages.ts'

interface Props {
  readonly drawing: Drawing
  readonly class: string
  /** Of the run or site, where the drawing may have lengths in the other system. */
  readonly units?: 'us' | 'metric'
}

/** A drawing on the page; the writer escapes every text in it. */
export function Picture({ drawing, class: name, units }: Props) {
  const svg = useMemo(() => writeSvg(shownDrawing(drawing, units)), [drawing, units, m])
  return <div class={`picture ${name}`} dangerouslySetInnerHTML={{ __html: svg }} />
}

/** The drawing in the language in force, with lengths in both systems where they are given in the other one. */
export function shownDrawing(drawing: Drawing, units?: 'us' | 'metric'): Drawing {
  if (language() === 'en' && units !== 'metric') return drawing
  return sayDrawing(drawing, (sentence) => {
    const { text, left } = sayWithRest(sentence)
    return { text: units === undefined ? text : inBothUnits(text, units), left }
  })
}
