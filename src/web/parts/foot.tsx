import { cautions } from '../../documents/cautions.ts'
import { m, say } from '../messages.ts'

/** Stands under every view. */
export const Foot = () => (
  <footer class="page-foot">
    <h2>{m.page.cautions}</h2>
    <ul>
      {cautions.map((caution) => (
        <li key={caution}>{say(caution)}</li>
      ))}
    </ul>
  </footer>
)
