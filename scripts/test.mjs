// Everything that has to hold, in order: form, types, structure, unit tests, slower tests, a real browser.
// Ends with a line that counts the tests; any step that fails ends the run with 1.
import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { installPrograms } from './install-programs.mjs'

const help = `npm test: everything that has to hold

It takes no words. Settings:
  LAPWISE_TEST_INSTALL=no       installs nothing on this machine. Without it, and only as root, Debian packages that are
                                missing are installed: a browser, and programs that check documents from outside. Which
                                ones is said first; what cannot run without them is counted and named at the end.
  LAPWISE_TEST_WITH=packed      the browser among the packages, although another is there
  LAPWISE_TEST_POSTGRES_URL=…   a PostgreSQL server for the tests, instead of one that they start
  LAPWISE_FULL=1                more random runs against the referees, and a longer soak
  CHROME_PATH=…                 the program of the browser`

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const { LAPWISE_TEST_INSTALL: install = '', LAPWISE_FULL: full = '' } = process.env
refuseUnknown()
const results = mkdtempSync(join(tmpdir(), 'lapwise-test-'))
let passed = 0
let failed = 0
const skipped = []

const missing = await installPrograms(install !== 'no' && process.getuid?.() === 0)
await steps([
  ['types, core', ['tsc', '-p', 'tsconfig.core.json']],
  ['types, node', ['tsc', '-p', 'tsconfig.node.json']],
  ['types, web', ['tsc', '-p', 'tsconfig.web.json']],
  ['types, browser tests and bench', ['tsc', '-p', 'tsconfig.browser.json']],
  ['form', ['biome', 'check', '.']],
  ['structure', ['depcruise', '--config', '.dependency-cruiser.cjs', 'src']],
  ['nothing unused', ['knip']],
])
vitest('unit')
vitest('slow')
browser()
end()

/** `npm test -- --help` tells the settings; a word or a value that would not count is refused. */
function refuseUnknown() {
  const [word] = process.argv.slice(2)
  if (word === '--help' || word === '-h') {
    console.log(help)
    process.exit(0)
  }
  const wrong = [
    word !== undefined && `npm test takes no ${word}.`,
    !['', 'no'].includes(install) && `LAPWISE_TEST_INSTALL: expected "no" or nothing, found "${install}"`,
    !['', '1'].includes(full) && `LAPWISE_FULL: expected "1" or nothing, found "${full}"`,
  ].filter((text) => text !== false)
  if (wrong.length === 0) return
  console.error(`${wrong.join('\n')}\n\n${help}`)
  process.exit(2)
}

/** Two steps at a time; the first one that fails is the last one that is told. */
async function steps(list) {
  const left = [...list]
  const worker = async () => {
    for (let next = left.shift(); next !== undefined; next = left.shift()) await step(...next)
  }
  await Promise.all([worker(), worker()])
}

function step(name, words) {
  const started = Date.now()
  const child = spawn('npx', words, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
  let said = ''
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (bytes) => {
      said += bytes
    })
  return new Promise((resolve) =>
    child.on('close', (code) => {
      const seconds = ((Date.now() - started) / 1000).toFixed(1)
      if (code !== 0) {
        console.log(`${said}\nfailed  ${name} (${seconds} s)`)
        failed += 1
        end()
      }
      console.log(`ok      ${name} (${seconds} s)`)
      resolve()
    }),
  )
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
  for (const { name, assertionResults } of told.testResults)
    for (const { status, fullName } of assertionResults)
      if (status !== 'passed' && status !== 'failed') skipped.push(`${relative(root, name)}: ${fullName}`)
  count(told.numPassedTests, told.numFailedTests, ended.status)
}

function browser() {
  const file = join(results, 'browser.json')
  const env = { ...process.env, PLAYWRIGHT_JSON_OUTPUT_NAME: file }
  const ended = spawnSync('npx', ['playwright', 'test', '--reporter=list,json'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env,
  })
  const { stats, suites } = JSON.parse(readFileSync(file, 'utf8'))
  for (const { file: name, title, tests } of suites.flatMap(specsOf))
    for (const { status, projectName } of tests)
      if (status === 'skipped') skipped.push(`${name}, ${projectName}: ${title}`)
  count(stats.expected, stats.unexpected + stats.flaky, ended.status)
}

function specsOf({ specs = [], suites = [] }) {
  return [...specs, ...suites.flatMap(specsOf)]
}

/** A round that ends badly without a failed test has failed all the same. */
function count(good, bad, status) {
  passed += good
  failed += bad + (status === 0 || bad > 0 ? 0 : 1)
  if (failed > 0) end()
}

function end() {
  rmSync(results, { recursive: true, force: true })
  console.log('')
  if (skipped.length > 0) console.log(`${skipped.length} checks could not run:\n  ${skipped.join('\n  ')}`)
  if (missing.length > 0) console.log(`Not on this machine: ${missing.join(', ')}`)
  console.log(`${passed} passed, ${failed} failed, ${skipped.length} skipped`)
  process.exit(failed > 0 ? 1 : 0)
}
