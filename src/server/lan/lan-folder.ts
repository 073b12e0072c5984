import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { isAuthorityOver, type KeyPair, makeAuthority, makeServerCertificate, needsRenewal } from './authority.ts'
import type { MachineNames } from './machine-names.ts'

export interface LanKeys {
  readonly authority: KeyPair
  readonly server: KeyPair
  /** True when phones have to be set up anew: the authority before this one came to its end. */
  readonly isReplaced: boolean
}

/**
 * The authority of this installation, made once, and a certificate for the names that the machine has now, made anew
 * when it ends soon or a name is not in it. Kept in `folder`, where only this user may read the keys.
 */
export async function openLanKeys(folder: string, names: MachineNames, now: Date): Promise<LanKeys> {
  await mkdir(folder, { recursive: true, mode: 0o700 })
  const known = await readPair(folder, 'authority')
  const kept = known !== null && !isAuthorityOver(known, now) ? known : null
  const authority = kept ?? (await makeAuthority(names.all[1] ?? names.stable, now))
  if (kept === null) await writePair(folder, 'authority', authority)
  const before = await readPair(folder, 'server')
  const isGood = before !== null && !(await needsRenewal(before, authority, names.all, now))
  const server = isGood ? before : await makeServerCertificate(authority, names.all, now)
  if (!isGood) await writePair(folder, 'server', server)
  return { authority, server, isReplaced: known !== null && kept === null }
}

async function readPair(folder: string, name: string): Promise<KeyPair | null> {
  try {
    return JSON.parse(await readFile(join(folder, `${name}.json`), 'utf8')) as KeyPair
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw new Error(`${join(folder, `${name}.json`)} cannot be read; put it back from a backup, or remove it`, {
      cause,
    })
  }
}

/** Whole or not at all: key and certificate are one file, put in place by its name. */
async function writePair(folder: string, name: string, pair: KeyPair): Promise<void> {
  const path = join(folder, `${name}.json`)
  await writeFile(`${path}.new`, `${JSON.stringify(pair, null, 2)}\n`, { mode: 0o600, flush: true })
  await rename(`${path}.new`, path)
}
