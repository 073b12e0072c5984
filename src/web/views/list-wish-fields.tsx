import { useState } from 'preact/hooks'
import { acceptances, type ListWish, printWish, sorts } from '../data/list-wish.ts'
import { m } from '../messages.ts'
import { projectName } from './project-name.ts'

interface Props {
  readonly wish: ListWish
  readonly projects: readonly string[]
  readonly change: (changes: Partial<ListWish>) => void
}

/** Search, what is shown, and in which order. */
export function ListWishFields({ wish, projects, change }: Props) {
  // As it stands at first; from then on it is open or not as somebody left it.
  const [isOpen] = useState(() => isWide() || printWish({ ...wish, search: '' }) !== '')
  return (
    <search class="list-wish">
      <label class="list-search">
        <span>{m.runs.search}</span>
        <input
          type="search"
          value={wish.search}
          onInput={({ currentTarget }) => change({ search: currentTarget.value })}
        />
      </label>
      <details open={isOpen}>
        <summary>{m.runs.choose}</summary>
        <div class="list-more">
          <label>
            <span>{m.runs.acceptance}</span>
            <select
              value={wish.acceptance ?? ''}
              onChange={({ currentTarget: { value } }) =>
                change({ acceptance: acceptances.find((one) => one === value) ?? null })
              }
            >
              <option value="">{m.runs.every}</option>
              {acceptances.map((one) => (
                <option key={one} value={one}>
                  {m.runs.acceptances[one]}
                </option>
              ))}
            </select>
          </label>
          {projects.length > 1 && (
            <label>
              <span>{m.runs.project}</span>
              <select
                value={wish.project ?? ''}
                onChange={({ currentTarget: { value } }) => change({ project: value === '' ? null : value })}
              >
                <option value="">{m.runs.every}</option>
                {projects.map((one) => (
                  <option key={one} value={one}>
                    {projectName(one)}
                  </option>
                ))}
              </select>
            </label>
          )}
          <label>
            <span>{m.runs.sort}</span>
            <select
              value={wish.sort}
              onChange={({ currentTarget: { value } }) =>
                change({ sort: sorts.find((one) => one === value) ?? 'route' })
              }
            >
              {sorts.map((one) => (
                <option key={one} value={one}>
                  {m.runs.sorts[one]}
                </option>
              ))}
            </select>
          </label>
          <label class="check">
            <input
              type="checkbox"
              checked={wish.archived}
              onChange={({ currentTarget }) => change({ archived: currentTarget.checked })}
            />
            <span>{m.runs.showArchived}</span>
          </label>
        </div>
      </details>
    </search>
  )
}

/** On a phone the search alone stands above the runs. */
const isWide = (): boolean => matchMedia('(min-width: 48rem)').matches
