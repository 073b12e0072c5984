import { expect, test } from 'vitest'
import { sampleInput } from '../../test/fixtures/record-inputs.ts'
import { dailyReportContents } from './daily-report-contents.ts'
import type { DayReport } from './day-report.ts'

const report: DayReport = {
  ...{ day: '2016-05-12', logs: [], crew: [], postsDriven: [], panelsHung: [], gone: [], openEnds: 'not said' },
  ...{ progress: { posts: { done: 0, of: 9 }, panels: { done: 0, of: 4 } }, ticket: { kind: 'none' } },
  ...{ nearMarks: [], readings: [], photos: 0, findings: [] },
}
const log = {
  ...{ id: 'l', author: 'T. Alvarez', capturedAt: '2016-05-12T17:00:00Z', supersedes: null },
  body: {
    day: report.day,
    crew: [],
    postsDriven: [],
    panelsHung: [],
    done: 'Rain',
    openEnds: 'none',
    openEndsNote: null,
  },
} as unknown as DayReport['logs'][number]

test('a day without a log says of no post that none was driven; one with a log does', () => {
  const input = sampleInput(() => [])
  const driven = (of: DayReport) =>
    dailyReportContents(input, of, 'America/Denver')
      .facts.filter(({ name }) => /Posts driven|Panels hung/.test(name))
      .map(({ value }) => value)
  expect(driven(report)).toEqual(['not said', 'not said'])
  expect(driven({ ...report, logs: [log] })).toEqual(['none', 'none'])
})
