import { useMemo } from 'preact/hooks'
import type { Drawing } from '../../drawing/drawing.ts'
import { sayDrawing } from '../../drawing/say-drawing.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { inBothUnits, inOneUnit } from '../../words/in-both-units.ts'
import { language } from '../language.ts'
import { m, sayWithRest } from '../messages.ts'

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

/**
 * The drawing in the language in force. A length that is given in the other system has its own beside it in a sentence,
 * and gives way to it where it stands alone, as at a dimension line.
 */
export function shownDrawing(drawing: Drawing, units?: 'us' | 'metric'): Drawing {
  if (language() === 'en' && units !== 'metric') return drawing
  return sayDrawing(drawing, (sentence) => {
    const { text, left } = sayWithRest(sentence)
    if (units === undefined) return { text, left }
    const isAlone = !/\p{L}/u.test(text.replaceAll(/\b(?:in|ft|mm|m)\b/g, ''))
    return { text: isAlone ? inOneUnit(text, units) : inBothUnits(text, units), left }
  })
}
