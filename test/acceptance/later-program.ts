import { execFileSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** What a later program has otherwise: the text of a source, and what stands there then. */
export interface Change {
  readonly file: string
  readonly make: (text: string) => string
}

/**
 * A copy of the whole program in which the shelf or the solver is another, as it would be after an upgrade: what is
 * tried on it goes through its own command line and server.
 * @returns its folder
 */
export function laterProgram(changes: readonly Change[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'lapwise-later-'))
  for (const part of [
    'src',
    'bin',
    'scripts',
    'package.json',
    'package-lock.json',
    'vite.config.ts',
    'vite.program.config.ts',
  ])
    cpSync(join(root, part), join(folder, part), { recursive: true })
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
  for (const { file, make } of changes) {
    const text = readFileSync(join(folder, file), 'utf8')
    const changed = make(text)
    if (changed === text) throw new Error(`${file} would not be another`)
    writeFileSync(join(folder, file), changed)
  }
  return folder
}

/** Builds its command line and server, as its own start would, which builds the page besides. */
export function buildProgram(folder: string): void {
  const env = { ...process.env, NODE_ENV: 'production' }
  const words = ['build', '--config', 'vite.program.config.ts', '--logLevel', 'warn']
  execFileSync(join(root, 'node_modules/.bin/vite'), words, { cwd: folder, env, stdio: ['ignore', 'ignore', 'pipe'] })
}

/** A change of one sheet of the shelf. */
export const sheetChanged = (sheet: string, change: (content: Record<string, unknown>) => object): Change => ({
  file: `src/sheets/${sheet}.json`,
  make: (text) => JSON.stringify(change(JSON.parse(text))),
})
