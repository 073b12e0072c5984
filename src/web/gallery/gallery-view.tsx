import type { ComponentChildren } from 'preact'
import { useEffect } from 'preact/hooks'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { verdictOrder } from '../../drawing/verdict-signs.ts'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import { readWish } from '../data/list-wish.ts'
import type { RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { ProgressBar } from '../parts/progress-bar.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { AcceptanceMark, VerdictMark } from '../parts/verdict-sign.tsx'
import { Doors } from '../views/doors.tsx'
import { ListWishFields } from '../views/list-wish-fields.tsx'
import { RunRow } from '../views/run-row.tsx'
import { DeviceParts, Faces } from './device-parts.tsx'
import { Answers, Gauges, Kept, Keypads, PicturedAnswers, WalkParts } from './entry-parts.tsx'
import { galleryRuns } from './gallery-runs.ts'

/**
 * Every part of the page in every state, to be looked at: no view leads here. What is wrong with a part shows here first,
 * in each language, light and width.
 */
export function GalleryView({ source }: { readonly source: RunSource }) {
  useEffect(() => {
    document.title = `${m.gallery.title} | ${m.page.name}`
  }, [])
  return (
    <div class="gallery">
      <section class="road title-block">
        <div class="title-name">
          <h1>{m.gallery.title}</h1>
        </div>
        <div class="title-verdict">
          <AcceptanceMark acceptance={{ kind: 'not acceptable' }} />
        </div>
        <ul class="title-counts">
          {verdictOrder.map((word) => (
            <li key={word}>
              <VerdictMark word={word} count={counts[word]} />
            </li>
          ))}
        </ul>
        <ProgressBar counts={counts} />
      </section>
      <Doors />
      <Part title={m.gallery.verdicts}>
        {verdictOrder.map((word) => (
          <VerdictMark key={word} word={word} />
        ))}
        <AcceptanceMark acceptance={{ kind: 'acceptable' }} />
        <AcceptanceMark acceptance={{ kind: 'acceptable except', setAside: 2, by: ['R. Quist', 'M. Peña'] }} />
        <AcceptanceMark acceptance={{ kind: 'not yet known' }} />
      </Part>
      <Part title={m.gallery.buttons}>
        <button type="button" class="button main">
          {m.entry.saveNext}
        </button>
        <button type="button" class="button">
          {m.entry.save}
        </button>
        <button type="button" class="button" aria-pressed="true">
          {m.entry.next}
        </button>
        <button type="button" class="button small">
          {m.page.again}
        </button>
        <button type="button" class="button" disabled>
          {m.entry.previous}
        </button>
        <span class="tag">{m.runs.demo}</span>
        <span class="tag strong">{m.state.here}</span>
      </Part>
      <Part title={m.gallery.fields}>
        <label>
          <span>{m.runs.search}</span>
          <input type="text" value="208+40" />
        </label>
        <label class="check">
          <input type="checkbox" checked />
          <span>{m.runs.showArchived}</span>
        </label>
        <label class="choice">
          <input type="radio" name="gallery" checked />
          <span>{m.verdict.meets}</span>
        </label>
        <label class="choice">
          <input type="radio" name="gallery" />
          <span>{m.verdict.fails}</span>
        </label>
      </Part>
      <Part title={m.gallery.told}>
        <TroubleNote
          title={m.trouble.runs}
          trouble={{ message: m.broken.kept, problems: [] }}
          again={() => undefined}
        />
        <p class="warning">{m.closed.why(3)}</p>
        <p>{m.runs.none}</p>
        <p>{m.runs.noneFound}</p>
        <p class="hint">{m.runs.addHow}</p>
        <p role="status">{m.page.loading}</p>
      </Part>
      <Part title={m.entry.keypad}>
        <Keypads />
      </Part>
      <Part title={m.entry.limits}>
        <Gauges />
      </Part>
      <Part title={m.entry.choice}>
        <PicturedAnswers />
        <Answers />
      </Part>
      <Part title={m.state.here}>
        <Kept />
        <DeviceParts source={source} />
      </Part>
      <Part title={m.walk.title}>
        <WalkParts />
      </Part>
      <Part title={m.run.strip}>
        <Faces />
      </Part>
      <Part title={m.runs.title}>
        <ListWishFields wish={readWish('')} projects={['demo', 'own']} change={() => undefined} />
        <ul class="plain runs">
          {galleryRuns.map((run: SummarisedRun) => (
            <RunRow key={run.id} source={source} run={run} again={() => undefined} />
          ))}
        </ul>
      </Part>
    </div>
  )
}

const counts: Readonly<Record<VerdictWord, number>> = {
  ...{ fails: 9, 'too close': 4, unread: 61, meets: 120, 'does not apply': 3 },
}

const Part = ({ title, children }: { readonly title: string; readonly children: ComponentChildren }) => (
  <section class="sheet">
    <h2>{title}</h2>
    <div class="gallery-part">{children}</div>
  </section>
)
