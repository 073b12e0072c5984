import { useEffect } from 'preact/hooks'
import { practiceSource } from './data/practice-source.ts'
import { RoadState } from './data/road-state.tsx'
import type { RunSource } from './data/run-source.ts'
import { StatusLine } from './data/status-line.tsx'
import { entryPart } from './entry/entry-part.ts'
import { useLanguage } from './fieldwork/preferences.ts'
import { m } from './messages.ts'
import { BrokenPage } from './parts/broken-page.tsx'
import { Foot } from './parts/foot.tsx'
import { InstallFirst } from './parts/install-first.tsx'
import { LaterPart, partOf } from './parts/later-part.tsx'
import { PreferencesBar } from './parts/preferences-bar.tsx'
import { useTop } from './parts/use-top.ts'
import { type Route, routeHere, runsPath, useRoute } from './route.ts'
import { Doors } from './views/doors.tsx'
import { FirstVisit } from './views/first-visit.tsx'
import { RunListView } from './views/run-list-view.tsx'

// The view of a run holds the whole model and that of a site the whole design, which the list of runs can do without.
const runView = partOf(() => import('./views/run-view.tsx'))
const siteView = partOf(() => import('./site/site-view.tsx'))
const galleryView = partOf(() => import('./gallery/gallery-view.tsx'))
const editView = partOf(() => import('./run-form/edit-view.tsx'))
const layOutView = partOf(() => import('./run-form/lay-out-view.tsx'))
const bringOverView = partOf(() => import('./transfer/bring-over-view.tsx'))
const glossaryView = partOf(() => import('./glossary/glossary-view.tsx'))
const shelfView = partOf(() => import('./shelf/shelf-view.tsx'))
const practiceView = partOf(() => import('./drills/practice-view.tsx'))
const practiceBar = partOf(() => import('./drills/practice-bar.tsx'))
const checkView = partOf(() => import('./check/check-view.tsx'))

/** Fetches what the address shows while the page is still being made ready for it. */
export function fetchAhead(): void {
  const route = routeHere()
  const { view } = route
  if (view === 'run') void runView.fetch()
  if (view === 'drills') void practiceView.fetch()
  if (view === 'run' && route.open !== null) void entryPart.fetch()
  if (view === 'need') void siteView.fetch()
  if (view === 'check') void checkView.fetch()
  if (view === 'shelf') void shelfView.fetch()
  if (view === 'edit') void editView.fetch()
  if (view === 'lay-out') void layOutView.fetch()
}

export function App({ source }: { readonly source: RunSource }) {
  const route = useRoute()
  useTop(route)
  const [language, chooseLanguage] = useLanguage()
  const isPractice = route.view === 'drills' || route.view === 'debrief' || (route.view === 'run' && route.isPractice)
  const shown = isPractice ? practiceSource() : source
  useEffect(() => shown.speak(language), [shown, language])
  const isRecord = route.view === 'run' && (route.pane === 'record' || route.pane === 'sign-off')
  const isOpen = route.view === 'run' && route.open !== null
  return (
    <>
      <div class={pageClass(route)}>
        <a class="skip" href="#content">
          {m.page.skip}
        </a>
        <header class="page-head">
          <a class="mark" href={runsPath}>
            {m.page.name}
          </a>
          <span class="page-motto">{m.page.motto}</span>
          {!isPractice && <RoadState source={source} />}
          <PreferencesBar language={language} choose={chooseLanguage} />
        </header>
        {isPractice && (
          <LaterPart part={practiceBar} title={m.trouble.site}>
            {({ PracticeBar }) => <PracticeBar run={'run' in route ? route.run : null} />}
          </LaterPart>
        )}
        {isOpen && !isPractice && <InstallFirst />}
        <main id="content" tabIndex={-1}>
          <BrokenPage key={'run' in route ? route.run : route.view}>
            {route.view === 'runs' && (
              <>
                <Doors />
                <FirstVisit />
                <RunListView source={source} />
              </>
            )}
            {route.view === 'check' && (
              <LaterPart part={checkView} title={m.trouble.site}>
                {({ CheckView }) => <CheckView source={source} />}
              </LaterPart>
            )}
            {route.view === 'lay-out' && (
              <LaterPart part={layOutView} title={m.trouble.site}>
                {({ LayOutView }) => <LayOutView source={source} />}
              </LaterPart>
            )}
            {route.view === 'edit' && (
              <LaterPart part={editView} title={m.trouble.site}>
                {({ EditView }) => <EditView key={route.run} source={source} route={route} />}
              </LaterPart>
            )}
            {route.view === 'need' && (
              <LaterPart part={siteView} title={m.trouble.site}>
                {({ SiteView }) => <SiteView source={source} />}
              </LaterPart>
            )}
            {route.view === 'bring-over' && (
              <LaterPart part={bringOverView} title={m.trouble.site}>
                {({ BringOverView }) => <BringOverView source={source} />}
              </LaterPart>
            )}
            {route.view === 'shelf' && (
              <LaterPart part={shelfView} title={m.trouble.site}>
                {({ ShelfView }) => <ShelfView source={source} route={route} />}
              </LaterPart>
            )}
            {route.view === 'glossary' && (
              <LaterPart part={glossaryView} title={m.trouble.site}>
                {({ GlossaryView }) => <GlossaryView word={route.word} />}
              </LaterPart>
            )}
            {(route.view === 'drills' || route.view === 'debrief') && (
              <LaterPart part={practiceView} title={m.trouble.site}>
                {({ PracticeView }) => <PracticeView source={shown} route={route} />}
              </LaterPart>
            )}
            {route.view === 'gallery' && (
              <LaterPart part={galleryView} title={m.gallery.title}>
                {({ GalleryView }) => <GalleryView source={source} />}
              </LaterPart>
            )}
            {route.view === 'run' && (
              <LaterPart part={runView} title={m.trouble.run}>
                {({ RunView }) => <RunView key={route.run} source={shown} route={route} />}
              </LaterPart>
            )}
            {route.view === 'nothing' && (
              <section class="sheet">
                <h1>{m.page.nothingHere}</h1>
                <p>
                  <a class="button main" href={runsPath}>
                    {m.page.toRuns}
                  </a>
                </p>
              </section>
            )}
          </BrokenPage>
        </main>
        <Foot key={route.view} isFull={isRecord} />
      </div>
      {!isPractice && <StatusLine source={source} />}
    </>
  )
}

/** By which the styles tell the walk, what is open in it, and whether the parts of a run lie at the thumb. */
function pageClass(route: Route): string {
  if (route.view !== 'run') return 'page'
  if (route.open !== null) return 'page page-walk page-entry'
  return route.pane === 'walk' ? 'page page-walk page-tabs' : 'page page-tabs'
}
