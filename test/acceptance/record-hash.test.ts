import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { entryId, entryIdAfter } from '../../src/formats/entry-id.ts'
import { readReadings } from '../../src/formats/readings/readings-file.ts'
import { readRun } from '../../src/formats/run/run-file.ts'
import { demoProject } from '../../src/operations/demo-project.ts'
import { judgeReadings } from '../../src/operations/judge-readings.ts'
import { requireRun } from '../../src/operations/require-run.ts'
import { fileOf, isInstalled, textOf } from '../cases/documents/outside-programs.ts'
import { recordTextOf, sha256 } from '../fixtures/record-text-of.ts'
import { lapwise } from './lapwise.ts'
import { dropFolder, preparedFolder, type RunningServer, startServer } from './web/serve.ts'

let folder: string
let server: RunningServer

beforeAll(async () => {
  folder = await preparedFolder()
  server = await startServer(folder)
})

afterAll(async () => {
  await server.stop()
  await dropFolder(folder)
})

const run = entryId(1_700_000_000_000, new Uint8Array(10))
const at = '2026-05-04T15:30:00.000Z'

const entry = (id: string, kind: string, body: object) => ({
  ...{ id, run, kind, schemaVersion: 1, author: 'R. Quist', device: 'phone', capturedAt: at, supersedes: null, body },
})

/** Two heights of one post and an offset from before its side was asked, each read knowing of the one before. */
function readings() {
  const ids: string[] = [run]
  return ['31 in', '29 in', '48 in'].map((value, i) => {
    const id = entryIdAfter(ids, new Uint8Array(10).fill(200 - i))
    ids.push(id)
    const of = value === '48 in' ? 'post-1/flare-offset' : 'post-3/rail-height'
    return entry(id, 'reading', { id, of, by: 'R. Quist', at, corrects: null, value })
  })
}

async function handIn(entries: readonly object[]): Promise<void> {
  const headers = { 'content-type': 'application/json' }
  const sent = await fetch(`${server.address}/api/entries`, {
    ...{ method: 'POST', headers, body: JSON.stringify({ entries }) },
  })
  const { answers } = (await sent.json()) as { answers: { outcome: string }[] }
  expect(answers.map(({ outcome }) => outcome)).toEqual(entries.map(() => 'stored'))
}

/** What the first test has printed, for the second. */
let printed: { readonly hash: string; readonly records: readonly Uint8Array[] }

test('the page, the record from the server and the command line give one hash, whatever arrived first', async () => {
  const [first, second, third] = readings()
  await handIn([entry(run, 'run', JSON.parse(demoProject().run)), third!])
  await handIn([second!, first!])
  const fetched = (await (await fetch(`${server.address}/api/runs/${run}`)).json()) as {
    run: object
    readings: object[]
  }

  // What the page computes, with the entries in an order of its own.
  const file = { format: 'lapwise-readings/2', run: 'Alder Creek culvert, right side', readings: fetched.readings }
  const [readRunFile, readFile] = [readRun('run', JSON.stringify(fetched.run)), readReadings('r', JSON.stringify(file))]
  if (!readRunFile.ok || !readFile.ok) throw new Error('what the server gave cannot be read')
  const required = requireRun('run', readRunFile.value)
  if (!required.ok) throw new Error('the run cannot be laid out')
  const judged = judgeReadings('r', required.value, readFile.value.readings)
  if (!judged.ok) throw new Error('the readings cannot be judged')
  expect(judged.value.readings.map(({ id }) => id)).toEqual([first!.id, second!.id, third!.id])
  const hash = sha256(recordTextOf(judged.value))

  const [runPath, readingsPath, recordPath] = ['run.json', 'readings.json', 'record.pdf'].map((name) =>
    join(folder, name),
  )
  writeFileSync(runPath!, JSON.stringify(fetched.run))
  writeFileSync(readingsPath!, JSON.stringify(file))
  const { said } = await lapwise(folder, ['record', runPath!, readingsPath!, '-o', recordPath!])
  expect(said).toContain(`record hash ${hash}`)

  const record = await fetch(`${server.address}/api/runs/${run}/record.pdf`)
  printed = { hash, records: [new Uint8Array(await record.arrayBuffer()), readFileSync(recordPath!)] }
})

test.skipIf(!isInstalled('pdftotext'))('both records print that hash, as another program reads them', () => {
  expect(printed.records).toHaveLength(2)
  for (const bytes of printed.records)
    expect(textOf(fileOf(bytes, 'record.pdf')).replaceAll(' ', '')).toContain(printed.hash)
})
