import type { Requirement } from '../../core/requirements/requirement.ts'
import { m } from '../messages.ts'
import type { Draft } from './draft.ts'

interface Props {
  readonly requirement: Requirement
  readonly draft: Draft
  readonly change: (changes: Partial<Draft>) => void
}

/** That nothing is read here; and where a named person may set it aside with a reason, the way to do so. */
export function RecordRow({ requirement, draft, change }: Props) {
  if (!requirement.maySetAside) return <p class="hint">{m.entry.record}</p>
  const isAside = draft.mode === 'does not apply'
  return (
    <>
      <p class="hint">{m.entry.siteCheck}</p>
      <div class="quiet">
        <button type="button" class="button" onClick={() => change({ mode: isAside ? 'answer' : 'does not apply' })}>
          {isAside ? m.entry.leaveStanding : m.entry.setSiteAside}
        </button>
      </div>
    </>
  )
}
