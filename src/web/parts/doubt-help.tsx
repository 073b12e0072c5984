import { m } from '../messages.ts'

/** What ± and a guard band mean, in plain words, folded under `title`. */
export const DoubtHelp = ({ title = m.doubt.title }: { readonly title?: string }) => (
  <details class="doubt-help">
    <summary>{title}</summary>
    <p>{m.doubt.uncertainty}</p>
    <p>{m.doubt.guardBand}</p>
  </details>
)
