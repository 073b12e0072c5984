import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'

const module = new URL('../../scripts/install-programs.mjs', import.meta.url).href

/** A folder that is the whole path: a shell, and a package manager of the test's own that notes what it was asked. */
let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lapwise-path-'))
  symlinkSync('/bin/sh', join(folder, 'sh'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const asked = (): readonly string[] => readFileSync(join(folder, 'asked'), 'utf8').trim().split('\n')

/** @param busy  how often it finds its lock taken before it does what it is asked: to bring qpdf */
function writePackageManager(busy: number): void {
  const script = `#!/bin/sh
cd '${folder}'
echo "$*" >> asked
left=${busy}
while read -r _; do left=$((left - 1)); done < asked
if [ "$left" -ge 0 ]; then echo 'E: Could not get lock /var/lib/dpkg/lock-frontend' >&2; exit 100; fi
case "$*" in *install*) printf '#!/bin/sh\\n' > qpdf; /bin/chmod +x qpdf;; esac
`
  writeFileSync(join(folder, 'apt-get'), script, { mode: 0o755 })
}

function install(isAllowed: boolean): { said: string; missing: readonly string[]; milliseconds: number } {
  const patience = '{ busy: 1000, between: 50, work: 20000 }'
  const script = `import { installPrograms } from '${module}'
    const missing = await installPrograms(${isAllowed}, ${patience})
    console.log(JSON.stringify(missing))`
  const before = performance.now()
  const ended = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    ...{ env: { PATH: folder }, encoding: 'utf8' },
  })
  const lines = ended.stdout.trim().split('\n')
  return {
    said: lines.slice(0, -1).join('\n'),
    missing: JSON.parse(lines.at(-1)!),
    milliseconds: performance.now() - before,
  }
}

test('what is missing is named before it is installed, and a busy package manager is waited for', () => {
  writePackageManager(2)
  const { said, missing } = install(true)
  expect(said).toMatch(/^Installs Debian packages on this machine: chromium-headless-shell, .*qpdf/)
  expect(said).toContain('LAPWISE_TEST_INSTALL=no forbids it')
  expect(said.match(/The package manager is busy/g)).toHaveLength(1)
  expect(asked().map((words) => words.split(' ')[1])).toEqual(['update', 'update', 'update', 'install'])
  expect(asked().at(-1)).toContain('--no-install-recommends chromium-headless-shell')
  expect(missing).not.toContain('qpdf')
  expect(missing).toContain('poppler-utils')
})

test('one that stays busy is not waited for without end, and what is missing is told', () => {
  writePackageManager(1_000_000)
  const { said, missing, milliseconds } = install(true)
  expect(said).toContain('apt-get update did not succeed: E: Could not get lock')
  expect(missing).toContain('qpdf')
  expect(milliseconds).toBeLessThan(60_000)
  expect(asked().every((words) => words.includes('update'))).toBe(true)
})

test('nothing is asked of it where that is forbidden', () => {
  writePackageManager(0)
  const { said, missing } = install(false)
  expect([said, missing.includes('qpdf')]).toEqual(['', true])
  expect(existsSync(join(folder, 'asked'))).toBe(false)
})
