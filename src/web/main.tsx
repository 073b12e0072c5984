import { render } from 'preact'
import { App } from './app.tsx'
import { httpSource } from './data/http-source.ts'

render(<App source={httpSource} />, document.getElementById('page')!)
