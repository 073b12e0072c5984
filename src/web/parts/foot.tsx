import { cautions } from '../../documents/cautions.ts'
import { m, printIn } from '../messages.ts'

/** Stands under every view. */
export const Foot = () => (
  <footer class="page-foot">
    <h2>{m.page.cautions}</h2>
    <ul>
      {cautions(printIn(null)).map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  </footer>
)
