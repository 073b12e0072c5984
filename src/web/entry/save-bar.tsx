import { m } from '../messages.ts'
import type { Steps } from './steps.ts'

interface Props {
  readonly steps: Steps
  readonly isSaving: boolean
  readonly save: () => void
  /** What was saved last, in words; empty when nothing was. */
  readonly saved: string
  /** Opens again what was saved last; null when something is being entered or nothing was saved. */
  readonly undo: (() => void) | null
  /** Takes back an answer that is about to be saved by itself; null when none is. */
  readonly takeBack: (() => void) | null
}

/** What the thumb reaches: back, save or undo, save and go on, on. */
export const SaveBar = ({ steps, isSaving, save, saved, undo, takeBack }: Props) => (
  <div class="entry-save">
    <p class="saved" role="status">
      {saved}
    </p>
    <StepLink to={steps.previous} words={m.entry.previous} sign="‹" keys="Alt+PageUp" />
    {takeBack !== null ? (
      <button type="button" class="button take-back" onClick={takeBack}>
        {m.entry.takeBackAnswer}
      </button>
    ) : (
      <>
        {undo === null ? (
          <button type="button" class="button" disabled={isSaving} onClick={save}>
            {m.entry.save}
          </button>
        ) : (
          <button type="button" class="button" onClick={undo}>
            {m.entry.undo}
          </button>
        )}
        <button type="submit" class="button main" disabled={isSaving}>
          {isSaving ? m.entry.saving : m.entry.saveNext}
        </button>
      </>
    )}
    <StepLink to={steps.next} words={m.entry.next} sign="›" keys="Alt+PageDown" />
  </div>
)

const StepLink = (props: { to: string | null; words: string; sign: string; keys: string }) =>
  props.to === null ? (
    <span class="button step off" aria-hidden="true">
      {props.sign}
    </span>
  ) : (
    <a class="button step" href={props.to} aria-label={props.words} aria-keyshortcuts={props.keys} title={props.words}>
      {props.sign}
    </a>
  )
