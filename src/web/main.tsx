import { render } from 'preact'
import { App } from './app.tsx'
import { localSource } from './data/local-source.ts'
import { startUpdates } from './data/use-update.ts'

const source = localSource()
void startUpdates()
render(<App source={source} />, document.getElementById('page')!)
