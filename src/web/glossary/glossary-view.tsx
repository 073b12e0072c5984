import '../style/glossary.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { FigureKind } from '../../core/hardware/hardware-sheet.ts'
import { plainText } from '../data/plain-text.ts'
import { language } from '../language.ts'
import type { TermId } from '../messages/glossary-en.ts'
import { m } from '../messages.ts'
import { Picture } from '../parts/picture.tsx'
import { runsPath } from '../route.ts'
import { termFigures } from './term-figures.ts'
import { termsOfFigure } from './terms-of-figure.ts'
import { words } from './words.ts'

const figureOf = new Map(Object.entries(termsOfFigure).map(([figure, [term]]) => [term, figure as FigureKind]))

/** Every word of the trade with what it means, and the right and the wrong one where there is such a figure. */
export function GlossaryView({ word }: { readonly word: string | null }) {
  const [sought, setSought] = useState('')
  const spoken = language()
  const figures = useMemo(termFigures, [spoken])
  useEffect(() => {
    document.title = `${words().title} | ${m.page.name}`
    if (word !== null) document.getElementById(word)?.scrollIntoView()
  }, [word])
  const shown = Object.entries(words().terms)
    .filter(([, said]) => plainText(said.join(' ')).includes(plainText(sought)))
    .sort(([, [a]], [, [b]]) => a.localeCompare(b, spoken))
  return (
    <section class="glossary">
      <a class="back" href={runsPath}>
        {words().back}
      </a>
      <h1>{words().title}</h1>
      <p>{words().how}</p>
      <label class="glossary-search">
        <span>{words().search}</span>
        <input type="search" value={sought} onInput={({ currentTarget }) => setSought(currentTarget.value)} />
      </label>
      {shown.length === 0 && <p role="status">{words().none}</p>}
      <div class="glossary-terms">
        {shown.map(([id, [name, means]]) => {
          const drawing = figures.get(figureOf.get(id as TermId)!)
          return (
            <article key={id} id={id} class={id === word ? 'glossary-term sought' : 'glossary-term'}>
              <h2>{name}</h2>
              <p>{means}</p>
              {drawing !== undefined && <Picture class="figure" drawing={drawing} />}
            </article>
          )
        })}
      </div>
    </section>
  )
}
