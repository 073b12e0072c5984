import { type PublishedFormat, publishedPath } from '../src/formats/published-schemas.ts'
import { demoProject } from '../src/operations/demo-project.ts'
import { exampleSite } from '../src/web/site/example-site.ts'

/** What stands in examples/: the demo's run with its readings, and a site. All of it is of our own invention. */
export function exampleFiles(): Readonly<Record<string, string>> {
  const { run, readings } = demoProject()
  return {
    'run.json': forEditors('run', run),
    'readings.json': forEditors('readings', readings),
    'site.json': forEditors('site', `${JSON.stringify(exampleSite, null, 2)}\n`),
  }
}

/** The text of a file with its schema named first, by which an editor shows what its fields mean. */
const forEditors = (format: PublishedFormat, text: string): string =>
  text.replace(/^\{\n/, `{\n  "$schema": "../${publishedPath(format)}",\n`)
