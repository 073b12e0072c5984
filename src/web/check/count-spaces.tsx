import type { CountedSpace, SeenSpace } from '../../operations/counted-spaces.ts'
import { m } from '../messages.ts'

interface Props {
  readonly spaces: readonly CountedSpace[]
  readonly seen: ReadonlyMap<number, SeenSpace>
  readonly change: (seen: ReadonlyMap<number, SeenSpace>) => void
}

/** What is seen between the posts of the run; a touch goes on to the next way in which a space can be. */
export function CountSpaces({ spaces, seen, change }: Props) {
  if (spaces.length === 0) return null
  const next = ({ number, ways }: CountedSpace): SeenSpace =>
    ways[(ways.indexOf(seen.get(number) ?? 'full') + 1) % ways.length]!
  return (
    <details class="check-facts">
      <summary>{m.check.spaces}</summary>
      <p class="hint">{m.check.spacesHow}</p>
      <ol class="plain check-lengths">
        {spaces.map((space) => (
          <li key={space.number}>
            <button type="button" class="button" onClick={() => change(new Map(seen).set(space.number, next(space)))}>
              {m.check.space(space.number, m.check.spaceWays[seen.get(space.number) ?? 'full'])}
            </button>
          </li>
        ))}
      </ol>
    </details>
  )
}
