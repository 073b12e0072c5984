import { render } from 'preact'
import { App, fetchAhead } from './app.tsx'
import { localSource } from './data/local-source.ts'
import { startUpdates } from './data/use-update.ts'

fetchAhead()
const source = localSource()
void startUpdates()
render(<App source={source} />, document.getElementById('page')!)
