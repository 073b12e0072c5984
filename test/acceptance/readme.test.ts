import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { exampleFiles } from '../../scripts/example-files.ts'
import { lapwise } from './lapwise.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const textOf = (file: string): string => readFileSync(`${root}${file}`, 'utf8')

test.each(Object.entries(exampleFiles()))(
  'examples/%s is what the demo has (else run npx tsx scripts/write-examples.ts)',
  (name, text) => expect(JSON.parse(textOf(`examples/${name}`))).toEqual(JSON.parse(text)),
)

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
    folder = mkdtempSync(join(tmpdir(), 'lapwise-page-'))
    symlinkSync(`${root}examples`, join(folder, 'examples'))
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  test.each(shownIn)('shows what $command prints', async ({ command, shown }) => {
    const [words, into] = command.split(' > ')
    const { code, out, said } = await lapwise(folder, words!.split(' '))
    // 1 where a run is not acceptable, as the demo is.
    expect([code, said]).toEqual([words!.startsWith('judge') ? 1 : 0, expect.any(String)])
    if (into !== undefined) writeFileSync(join(folder, into), out)
    const printed = out.split('\n')
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

test.each(commandsIn(textOf('examples/README.md')))('the examples are read by lapwise %s', async (command) => {
  const { code, out, said } = await lapwise(root, command.split(' '))
  // 1 where a run is not acceptable, as the demo is; 2 would be a refusal.
  expect([code, said]).toEqual([command.startsWith('judge') ? 1 : 0, expect.any(String)])
  expect(out).not.toBe('')
})
