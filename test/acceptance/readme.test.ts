import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { exampleFiles } from '../../scripts/example-files.ts'
import { installPacked } from './unpacked.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const textOf = (file: string): string => readFileSync(`${root}${file}`, 'utf8')

test.each(Object.entries(exampleFiles()))(
  'examples/%s is what the demo has (else run npx tsx scripts/write-examples.ts)',
  (name, text) => expect(JSON.parse(textOf(`examples/${name}`))).toEqual(JSON.parse(text)),
)

// What pages show is tried as whoever takes the package home has it, in a shell and as it is written.
let home: string
beforeAll(() => {
  home = installPacked()
})
afterAll(() => rmSync(home, { recursive: true, force: true }))

/** A folder with the installed package and its examples, where a page's commands run. */
function folderAtHome(): string {
  const folder = mkdtempSync(join(tmpdir(), 'lapwise-page-'))
  symlinkSync(join(home, 'node_modules'), join(folder, 'node_modules'))
  symlinkSync(join(home, 'node_modules/lapwise/examples'), join(folder, 'examples'))
  return folder
}

function typed(command: string, folder: string) {
  const env = { ...process.env, npm_config_offline: 'true', npm_config_update_notifier: 'false' }
  return spawnSync('sh', ['-c', `npx lapwise ${command}`], { cwd: folder, encoding: 'utf8', env })
}

/** 1 where a run is not acceptable, as the demo is; 2 would be a refusal. */
const endOf = (command: string): number => (command.startsWith('judge') ? 1 : 0)

/** Each command that a page shows after `$`, indented, with the lines that it says are printed. */
function sessions(page: string): readonly { readonly command: string; readonly shown: readonly string[] }[] {
  const found: { command: string; shown: string[] }[] = []
  let current: { command: string; shown: string[] } | null = null
  for (const line of page.split('\n')) {
    const [, command] = /^ {4}[$] npx lapwise (.+)$/.exec(line) ?? []
    if (command !== undefined) {
      current = { command, shown: [] }
      found.push(current)
    } else if (current !== null && line.startsWith('    ')) current.shown.push(line.slice(4))
    else current = null
  }
  return found
}

const pages = ['README.md', ...readdirSync(`${root}docs/guides`).map((name) => `docs/guides/${name}`)].filter(
  (page) => sessions(textOf(page)).length > 0,
)

describe.each(pages)('%s', (page) => {
  const shownIn = sessions(textOf(page))
  let folder: string
  // What a page writes, it writes beside the examples and goes on with.
  beforeAll(() => {
    folder = folderAtHome()
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  test.each(shownIn)('shows what $command prints', ({ command, shown }) => {
    const { status, stdout, stderr } = typed(command, folder)
    expect([status, stderr]).toEqual([endOf(command), expect.any(String)])
    const printed = stdout.split('\n')
    let at = 0
    for (const line of shown) {
      // A line of "…" stands for lines left out, one within a line for some of its words.
      if (line.trim() === '…') continue
      const parts = line.split('…').map((part) => part.trim())
      const next = printed.findIndex(
        (one, i) => i >= at && (parts.length === 1 ? one === line : holdsInOrder(one, parts)),
      )
      expect(next, line).toBeGreaterThanOrEqual(0)
      at = next + 1
    }
  })
})

test('README and the guides for designers and inspectors show what is printed', () => {
  const lines = (page: string) => sessions(textOf(page)).reduce((sum, { shown }) => sum + shown.length, 0)
  expect(lines('README.md')).toBeGreaterThan(5)
  expect(lines('docs/guides/designer.md')).toBeGreaterThan(5)
  expect(lines('docs/guides/inspector.md')).toBeGreaterThan(3)
})

function holdsInOrder(line: string, parts: readonly string[]): boolean {
  let from = 0
  return parts.every((part) => {
    const at = line.indexOf(part, from)
    from = at + part.length
    return at >= 0
  })
}

const commandsIn = (page: string): readonly string[] =>
  [...page.matchAll(/`npx lapwise ([^`]+)`/g)].map(([, command]) => command!)

test.each(commandsIn(textOf('examples/README.md')))('the examples are read by lapwise %s', (command) => {
  const folder = folderAtHome()
  const { status, stdout, stderr } = typed(command, folder)
  rmSync(folder, { recursive: true, force: true })
  expect([status, stderr]).toEqual([endOf(command), expect.any(String)])
  expect(stdout).not.toBe('')
})
