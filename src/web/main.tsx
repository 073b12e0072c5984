import { render } from 'preact'
import { App, fetchAhead } from './app.tsx'
import { localSource } from './data/local-source.ts'
import { startUpdates } from './data/use-update.ts'
import { startPreferences } from './fieldwork/preferences.ts'

fetchAhead()
const source = localSource()
void startUpdates()
void startPreferences().then(() => render(<App source={source} />, document.getElementById('page')!))
