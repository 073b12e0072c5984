import { randomBytes } from 'node:crypto'
import { readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { z } from 'zod'
import { err, type Result } from '../../core/result.ts'
import type { BackupMade } from './write-backup.ts'

/** What a running server that holds the store of a folder is asked for, by a file in that folder; and its answer. */
const [wanted, taken, answered, unfinished] = [
  'backup-wanted-',
  'backup-taken-',
  'backup-answer-',
  'backup-unfinished-',
] as const

const wishShape = z.object({ to: z.string() })

type Answer = Result<BackupMade, string>

/** How often each side looks, ms: our judgement. */
const between = 500

/** How long a server may show no sign of life, ms: our judgement, since it may be busy with a packet. */
const patience = 30_000

/**
 * Asks the server that holds `folder` for a backup at `to` (an absolute path), and waits until it is made; null when no
 * server shows that it is at it. By a file, so that only who may write in the folder can ask, from any container that
 * shares it.
 */
export async function askForBackup(folder: string, to: string): Promise<Answer | null> {
  const name = randomBytes(6).toString('hex')
  writeWhole(folder, `${wanted}${name}`, { to })
  for (;;) {
    await wait(between)
    const state = readdirSync(folder).find((each) => each.endsWith(name) && !each.startsWith(unfinished))
    if (state === undefined) return null
    const path = join(folder, state)
    if (state.startsWith(answered)) {
      const answer = JSON.parse(readFileSync(path, 'utf8')) as Answer
      rmSync(path)
      return answer
    }
    const seen = statSync(path, { throwIfNoEntry: false })
    if (seen === undefined || Date.now() - seen.mtimeMs < patience) continue
    rmSync(path, { force: true })
    return null
  }
}

/** Looks in `folder` for wishes until it is told to stop, and does one after the other. */
export function serveBackups(folder: string, make: (to: string) => Promise<Answer>): () => void {
  for (const name of readdirSync(folder))
    if (/^backup-(taken|answer|unfinished)-/.test(name)) rmSync(join(folder, name))
  let inHand: string | null = null

  const take = async (wish: string): Promise<void> => {
    const name = wish.slice(wanted.length)
    inHand = join(folder, `${taken}${name}`)
    renameSync(join(folder, wish), inHand)
    const read = wishShape.safeParse(parsed(readFileSync(inHand, 'utf8')))
    const answer = read.success ? await make(read.data.to) : err(`${wish}: expected { "to": "the path of a folder" }`)
    writeWhole(folder, `${answered}${name}`, answer)
    rmSync(inHand, { force: true })
  }

  const look = (): void => {
    if (inHand !== null) {
      utimesSync(inHand, new Date(), new Date())
      return
    }
    const wish = readdirSync(folder).find((name) => name.startsWith(wanted))
    if (wish === undefined) return
    // Where the answer cannot be written there is no other way to tell: who asked waits no longer than it has patience.
    void take(wish)
      .catch(() => {})
      .finally(() => {
        inHand = null
      })
  }
  const looking = setInterval(() => {
    try {
      look()
    } catch {
      // Who asked has gone and took its file along, or the folder cannot be read: no reason for the server to end.
    }
  }, between).unref()
  return () => clearInterval(looking)
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

/** Under its name only once all of it is there. */
function writeWhole(folder: string, name: string, content: unknown): void {
  const first = join(folder, `${unfinished}${randomBytes(6).toString('hex')}`)
  writeFileSync(first, JSON.stringify(content))
  renameSync(first, join(folder, name))
}
