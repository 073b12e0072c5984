import { useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { newId, rememberedVisit } from '../data/device.ts'
import type { RunBySheet, RunSource, Trouble } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { asWritten, m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { AcceptanceMark } from '../parts/verdict-sign.tsx'
import { goTo, panePath } from '../route.ts'
import { draftOfRun } from '../run-form/run-draft.ts'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly id: string
  /** That is tried on copies of the runs; null while it is not sound. */
  readonly edition: HardwareSheet | null
}

/** The runs of this device that hold the sheet: none of them moves; an edition can be tried on a copy of one. */
export function TouchedRuns({ source, id, edition }: Props) {
  const w = words().touched
  const [loaded, again] = useLoaded(`runs by ${id}`, () => source.runsBySheet(id))
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  if (loaded.state === 'loading') return <p class="loading">{m.page.loading}</p>
  if (loaded.state === 'failed') return <TroubleNote title={w.unknown} trouble={loaded.trouble} again={again} />
  const tryOn = async (run: RunBySheet): Promise<void> => {
    const opened = await source.run(run.id)
    if (!opened.ok) return setTrouble(opened.error)
    const { kept } = opened.value
    const sheets = kept.run.sheets.map((one) => (one.id === id ? edition! : one))
    const name = w.copyOf(kept.run.name, edition!.version)
    const copy = newId()
    const added = await source.addRun(
      copy,
      name,
      draftOfRun({ ...kept.run, name, sheets }),
      rememberedVisit().by || m.runs.authorNotSaid,
    )
    if (added.ok) goTo(panePath(copy, 'layout'))
    else setTrouble(added.error)
  }
  return (
    <div>
      <h3>{w.title(loaded.value.length)}</h3>
      <p class="hint">{w.how}</p>
      {trouble !== null && <TroubleNote title={w.notTried} trouble={trouble} />}
      <ul class="plain shelf-runs">
        {loaded.value.map((run) => (
          <li key={run.id} data-run={run.id}>
            <a href={panePath(run.id, 'walk')}>{asWritten(run.name)}</a> <span>{w.holds(run.version)}</span>{' '}
            {run.isArchived ? (
              <span>{w.archived}</span>
            ) : (
              run.acceptance !== null && <AcceptanceMark acceptance={run.acceptance} />
            )}{' '}
            {run.unsent > 0 && <b>{w.unsent(run.unsent)}</b>}{' '}
            {edition !== null && (
              <button type="button" class="button small" onClick={() => void tryOn(run)}>
                {w.tryOn}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}
