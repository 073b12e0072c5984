// Everything that has to hold, in order: form, types, structure, unit tests, slower tests, a real browser.
// Ends with a line that counts the tests; any step that fails ends the run with 1.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const results = mkdtempSync(join(tmpdir(), 'lapwise-test-'))
let passed = 0
let failed = 0

installPrograms()
step('form', ['biome', 'check', '.'])
step('types, core', ['tsc', '-p', 'tsconfig.core.json'])
step('types, node', ['tsc', '-p', 'tsconfig.node.json'])
step('types, web', ['tsc', '-p', 'tsconfig.web.json'])
step('types, browser tests and bench', ['tsc', '-p', 'tsconfig.browser.json'])
step('structure', ['depcruise', '--config', '.dependency-cruiser.cjs', 'src'])
step('nothing unused', ['knip'])
vitest('unit')
vitest('slow')
browser()
rmSync(results, { recursive: true, force: true })
console.log(`\n${passed} passed, ${failed} failed`)
process.exit(failed > 0 ? 1 : 0)

/** Debian programs that check our documents from outside, and a browser; only as root, only what is missing. */
function installPrograms() {
  const wanted = [
    ['chromium', ['chromium', 'chromium-browser', 'google-chrome', 'microsoft-edge']],
    ['poppler-utils', ['pdftotext']],
    ['qpdf', ['qpdf']],
    ['libxml2-utils', ['xmllint']],
    ['gdal-bin', ['ogrinfo']],
    ['libreoffice-calc', ['soffice', 'libreoffice']],
    ['python3-gdal', ["/usr/bin/python3 -c 'import osgeo_utils.samples.validate_gpkg'"]],
    ['python3-ezdxf', ["/usr/bin/python3 -c 'import ezdxf'"]],
  ]
  const missing = wanted.filter(([, programs]) => !programs.some(isThere)).map(([name]) => name)
  if (missing.length === 0 || process.getuid?.() !== 0 || !isThere('apt-get')) return
  console.log(`installing ${missing.join(', ')} …`)
  const quiet = { stdio: ['ignore', 'ignore', 'inherit'], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }
  spawnSync('apt-get', ['update', '-qq'], quiet)
  const ended = spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], quiet)
  if (ended.status !== 0) console.log(`could not install ${missing.join(', ')}; the checks that need them say so`)
}

/** Whether a program is on the path; one with arguments has to succeed as well. */
function isThere(program) {
  const asked = program.includes(' ') ? program : `command -v ${program}`
  return spawnSync('sh', ['-c', asked], { stdio: 'ignore' }).status === 0
}

function step(name, words) {
  const started = Date.now()
  const ended = spawnSync('npx', words, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'], encoding: 'utf8' })
  const seconds = ((Date.now() - started) / 1000).toFixed(1)
  if (ended.status === 0) {
    console.log(`ok      ${name} (${seconds} s)`)
    return
  }
  console.log(`${ended.stdout}${ended.stderr}\nfailed  ${name} (${seconds} s)`)
  stop()
}

function vitest(project) {
  const file = join(results, `${project}.json`)
  const words = [
    'vitest',
    'run',
    '--project',
    project,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]
  const ended = spawnSync('npx', words, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] })
  const told = JSON.parse(readFileSync(file, 'utf8'))
  count(told.numPassedTests, told.numFailedTests + (ended.status === 0 || told.numFailedTests > 0 ? 0 : 1))
}

function browser() {
  const file = join(results, 'browser.json')
  const env = { ...process.env, PLAYWRIGHT_JSON_OUTPUT_NAME: file }
  const ended = spawnSync('npx', ['playwright', 'test', '--reporter=list,json'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env,
  })
  const { stats } = JSON.parse(readFileSync(file, 'utf8'))
  count(stats.expected, stats.unexpected + stats.flaky + (ended.status === 0 || stats.unexpected > 0 ? 0 : 1))
}

function count(good, bad) {
  passed += good
  failed += bad
  if (bad > 0) stop()
}

function stop() {
  console.log(`\n${passed} passed, ${Math.max(failed, 1)} failed`)
  process.exit(1)
}
