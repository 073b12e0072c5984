import type { FigureKind } from '../../core/hardware/hardware-sheet.ts'
import { wordPath } from '../route.ts'
import { termsOfFigure } from './terms-of-figure.ts'
import { words } from './words.ts'

/** What the words mean that a requirement with such a figure uses. */
export const TermList = ({ figure }: { readonly figure: FigureKind }) => (
  <>
    <dl class="terms">
      {termsOfFigure[figure].map((id) => {
        const [name, means] = words().terms[id]
        return (
          <div key={id}>
            <dt>{name}</dt>
            <dd>{means}</dd>
          </div>
        )
      })}
    </dl>
    <p>
      <a href={wordPath(termsOfFigure[figure][0])}>{words().more}</a>
    </p>
  </>
)
