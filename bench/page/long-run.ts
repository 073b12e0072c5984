import type { Reading } from '../../src/core/measurement/reading.ts'
import { entryId } from '../../src/formats/entry-id.ts'
import { readingToValue } from '../../src/formats/readings/readings-file.ts'
import { runFromValue } from '../../src/formats/run/run-file.ts'
import { runToValue } from '../../src/formats/run/write-run.ts'
import type { RequiredRun } from '../../src/operations/require-by.ts'
import { requireRun } from '../../src/operations/require-run.ts'
import { readEverything } from '../verdicts.ts'

/** A run on the server, and how much there is of it. */
export interface LongRun {
  readonly id: string
  readonly requirements: readonly string[]
  readonly readings: number
}

/** Entries in one request: half of what the server takes at most. */
const batch = 500

/** Puts a run of at least `least` requirements onto the server, and `count` readings of it, each the same good ones. */
export async function addLongRun(address: string, least: number, count: number): Promise<LongRun> {
  const required = longRun(least)
  let made = 0
  const newId = (): string => entryId(1_700_000_000_000 + ++made, new Uint8Array(10).fill(least % 256))
  const id = newId()
  const envelope = { run: id, schemaVersion: 1, author: 'bench', device: 'bench', supersedes: null }
  await post(address, [
    { ...envelope, id, kind: 'run', capturedAt: '2024-01-01T08:00:00Z', body: runToValue(required.run) },
  ])
  const good = readEverything(required.model, required.requirements)
  const readings = Array.from({ length: count }, (_, i): Reading => ({ ...good[i % good.length]!, id: newId() }))
  const entries = readings.map((reading) => ({
    // The second version of a reading says on which side an offset is.
    ...{ ...envelope, id: reading.id, kind: 'reading', author: reading.by, capturedAt: reading.at, schemaVersion: 2 },
    body: readingToValue(reading),
  }))
  for (let from = 0; from < entries.length; from += batch) await post(address, entries.slice(from, from + batch))
  return { id, requirements: required.requirements.map((requirement) => requirement.id), readings: count }
}

/** The shortest run between the demo's ends, in steps of 25 ft, that has `least` requirements. */
function longRun(least: number): RequiredRun {
  for (let feet = 50; ; feet += 25) {
    const file = {
      format: 'lapwise-run/1',
      name: `${least} requirements`,
      system: 'w-beam-midspan-31',
      first: { sheet: 'flared-terminal-31' },
      second: { sheet: 'trailing-anchor-31' },
      need: { from: 0, to: `${feet} ft` },
      work: 'new',
      letting: '2016-03-15',
    }
    const read = runFromValue('long.json', file)
    const required = read.ok ? requireRun('long.json', read.value) : read
    if (!required.ok) throw new Error(`not a run: ${JSON.stringify(required.error)}`)
    if (required.value.requirements.length >= least) return required.value
  }
}

async function post(address: string, entries: readonly object[]): Promise<void> {
  const answer = await fetch(`${address}/api/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries }),
  })
  const said = await answer.text()
  if (!answer.ok || said.includes('"rejected"')) throw new Error(`the server answered ${answer.status}: ${said}`)
}
