import { demoProject } from '../src/operations/demo-project.ts'
import { exampleSite } from '../src/web/site/example-site.ts'

/** What stands in examples/: the demo's run with its readings, and a site. All of it is of our own invention. */
export function exampleFiles(): Readonly<Record<string, string>> {
  const { run, readings } = demoProject()
  return { 'run.json': run, 'readings.json': readings, 'site.json': `${JSON.stringify(exampleSite, null, 2)}\n` }
}
