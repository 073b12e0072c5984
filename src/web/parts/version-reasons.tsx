import type { EarlierVersion } from '../../core/record/version.ts'
import { m } from '../messages.ts'

/** Why each version of a run was made, where somebody wrote it; nothing where nobody did. */
export function VersionReasons({ earlier }: { readonly earlier: readonly EarlierVersion[] }) {
  const reasons = earlier.flatMap(({ because }, i) =>
    because === undefined ? [] : [m.earlier.because(i + 2, because)],
  )
  if (reasons.length === 0) return null
  return (
    <ul class="plain hint">
      {reasons.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  )
}
