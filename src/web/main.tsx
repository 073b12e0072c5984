import { render } from 'preact'
import { App, fetchAhead } from './app.tsx'
import { deviceSource } from './data/device-source.ts'
import { nextTask } from './data/next-task.ts'
import { startUpdates } from './data/use-update.ts'
import { startPreferences } from './fieldwork/preferences.ts'
import { whenShown } from './parts/when-shown.ts'
import { routeHere } from './route.ts'

void start()

/** One task after the other, so that the browser shows and answers between them. */
async function start(): Promise<void> {
  await nextTask()
  fetchAhead()
  await nextTask()
  const source = deviceSource(routeHere().view !== 'need')
  await startPreferences()
  await nextTask()
  render(<App source={source} />, document.getElementById('page')!)
  await whenShown()
  void startUpdates()
}
