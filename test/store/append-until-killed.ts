// A process of its own for killed.test.ts and durability.test.ts: opens the store whose configuration is the first word,
// as JSON, then appends readings whose ids begin with the second, until it is killed. Each line says what happened, written before anything else is begun.
import { writeSync } from 'node:fs'
import { openStore } from '../../src/store/store.ts'
import { reading } from './sample-entries.ts'

const [config = '', prefix = ''] = process.argv.slice(2)

function say(word: string, what: unknown): void {
  writeSync(1, `${word} ${JSON.stringify(what)}\n`)
}

const opened = await openStore(JSON.parse(config))
if (!opened.ok) {
  say('refused', opened.error)
  process.exit(1)
}
const store = opened.value
await store.createProject({ id: 'p', name: 'P' })
const kept = await store.entries({ project: 'p', limit: 1_000_000 })
if (!kept.ok) throw new Error(kept.error.reason)
say(
  'kept',
  kept.value.map((entry) => entry.id),
)
for (let i = 0; ; i++) {
  // Batches of one to three entries: what is acknowledged together must survive together.
  const batch = Array.from({ length: 1 + (i % 3) }, (_, k) => reading('p', `${prefix}-${i}-${k}`))
  const answers = await store.append(batch)
  if (!answers.ok) throw new Error(answers.error.reason)
  say(
    'stored',
    answers.value.filter((answer) => answer.outcome === 'stored').map((answer) => answer.id),
  )
}
