import { later } from './data/later.ts'
import type { RunSource } from './data/run-source.ts'
import { StatusLine } from './data/status-line.tsx'
import { useLoaded } from './data/use-loaded.ts'
import { useLanguage } from './fieldwork/preferences.ts'
import { m } from './messages.ts'
import { Foot } from './parts/foot.tsx'
import { PreferencesBar } from './parts/preferences-bar.tsx'
import { TroubleNote } from './parts/trouble-note.tsx'
import { needPath, type Route, runsPath, useRoute } from './route.ts'
import { RunListView } from './views/run-list-view.tsx'

export function App({ source }: { readonly source: RunSource }) {
  const route = useRoute()
  const [language, chooseLanguage] = useLanguage()
  if (language === null) return null
  const isOpen = route.view === 'run' && route.open !== null
  return (
    <>
      <div class={isOpen ? 'page page-entry' : 'page'}>
        <a class="skip" href="#content">
          {m.page.skip}
        </a>
        <header class="page-head">
          <a class="mark" href={runsPath}>
            {m.page.name}
          </a>
          <span class="page-motto">{m.page.motto}</span>
          <PreferencesBar language={language} choose={chooseLanguage} />
        </header>
        <main id="content" tabIndex={-1}>
          {route.view === 'runs' && (
            <>
              <a class="button to-need" href={needPath}>
                {m.page.toNeed}
              </a>
              <RunListView source={source} />
            </>
          )}
          {route.view === 'need' && <LaterSiteView source={source} />}
          {route.view === 'run' && <LaterRunView key={route.run} source={source} route={route} />}
          {route.view === 'nothing' && (
            <section class="sheet">
              <h1>{m.page.nothingHere}</h1>
              <p>
                <a href={runsPath}>{m.page.toRuns}</a>
              </p>
            </section>
          )}
        </main>
        <Foot />
      </div>
      <StatusLine source={source} />
    </>
  )
}

interface RunProps {
  readonly source: RunSource
  readonly route: Extract<Route, { view: 'run' }>
}

/** The view of a run holds the whole model, which the list of runs can do without. */
function LaterRunView({ source, route }: RunProps) {
  const [loaded, again] = useLoaded('run view', () => later(() => import('./views/run-view.tsx')))
  switch (loaded.state) {
    case 'loading':
      return <p role="status">{m.page.loading}</p>
    case 'failed':
      return <TroubleNote title={m.trouble.run} trouble={loaded.trouble} again={again} />
    case 'loaded':
      return <loaded.value.RunView source={source} route={route} />
  }
}

/** The view of a site holds the whole design, which the other views can do without. */
function LaterSiteView({ source }: { readonly source: RunSource }) {
  const [loaded, again] = useLoaded('site view', () => later(() => import('./site/site-view.tsx')))
  switch (loaded.state) {
    case 'loading':
      return <p role="status">{m.page.loading}</p>
    case 'failed':
      return <TroubleNote title={m.trouble.site} trouble={loaded.trouble} again={again} />
    case 'loaded':
      return <loaded.value.SiteView source={source} />
  }
}
