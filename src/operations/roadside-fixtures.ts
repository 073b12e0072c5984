import type { Reading } from '../core/measurement/reading.ts'
import { derivedTopics } from '../core/requirements/derived-topics.ts'
import type { EntryOf } from '../formats/entry/entry-kinds.ts'
import { readReadings } from '../formats/readings/readings-file.ts'
import { readRun } from '../formats/run/run-file.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { demoProject } from './demo-project.ts'
import { type JudgedRun, judgeKnown } from './judge-readings.ts'
import { type RequiredRun, requireRun } from './require-run.ts'

/** The demo run with its requirements and readings; of its sheets what has these topics may be set aside. */
export function demoRun(maySetAside: readonly string[] = []): {
  readonly required: RequiredRun
  readonly readings: readonly Reading[]
} {
  const demo = demoProject()
  const run = readRun('run', maySetAside.length === 0 ? demo.run : runAllowing(demo.run, maySetAside))
  const read = readReadings('readings', demo.readings)
  const required = run.ok ? requireRun('run', run.value) : run
  if (!required.ok || !read.ok) throw new Error('the demo project is not sound')
  return { required: required.value, readings: read.value.readings }
}

/** The run file with its sheets in it, each of which lets what it requires of these topics be set aside. */
export function runAllowing(text: string, topics: readonly string[]): string {
  const run = JSON.parse(text)
  const used = [run.system, run.first.sheet, run.second.sheet]
  const sheets = shippedSheets
    .filter(({ id }) => used.includes(id))
    .map((sheet) => {
      const own = sheet.parts.flatMap(({ rules }) => rules.map(({ id }) => id))
      const known = topics.filter((topic) => own.includes(topic) || derivedTopics.some((one) => one === topic))
      const [source] = Object.keys(sheet.sources)
      return { ...sheet, maySetAside: known.map((topic) => ({ topic, source, confirmation: 'common practice' })) }
    })
  return JSON.stringify({ ...run, sheets })
}

/** The demo run judged with these readings besides its own. */
export function demoJudged(more: readonly Reading[] = []): JudgedRun {
  const { required, readings } = demoRun()
  return judgeKnown(required, [...readings, ...more])
}

/** An entry with the fields that the operations look at. */
export const entryOf = <Body>(id: string, body: Body, supersedes: string | null = null): EntryOf<Body> => ({
  id,
  author: 'J. Okafor',
  capturedAt: '2016-05-12T16:00:00-06:00',
  supersedes,
  body,
})
