// Everything that has to hold: form, types and structure and then a real browser, beside the unit tests and then the slower
// ones. Ends with a line that counts the tests; after a step that fails none is begun, and the run ends with 1.
import { spawn } from 'node:child_process'
import { accessSync, chmodSync, constants, mkdtempSync, readFileSync, rmSync, statfsSync, writeFileSync } from 'node:fs'
import { freemem, tmpdir } from 'node:os'
import { delimiter, dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { stripVTControlCharacters } from 'node:util'
import { installPrograms } from './install-programs.mjs'

const help = `npm test: everything that has to hold

It takes no words. Settings:
  LAPWISE_TEST_INSTALL=no       installs nothing on this machine. Without it, and only as root, Debian packages that are
                                missing are installed: a browser, and programs that check documents from outside. Which
                                ones is said first; what cannot run without them is counted and named at the end.
  LAPWISE_TEST_WITH=packed      the browser among the packages, although another is there
  LAPWISE_TEST_POSTGRES_URL=…   a PostgreSQL server for the tests, instead of one that they start
  LAPWISE_FULL=1                more random runs against the referees, and a longer soak
  TMPDIR=…                      where tests write; without it in memory, where the system has such a place with room
  CHROME_PATH=…                 the program of the browser`

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const { LAPWISE_TEST_INSTALL: install = '', LAPWISE_FULL: full = '' } = process.env
refuseUnknown()
const results = placeToWrite()
process.once('exit', () => rmSync(results, { recursive: true, force: true }))
for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => process.exit(1))
let passed = 0
let failed = 0
const skipped = []
const fallen = []

const missing = await installPrograms(install !== 'no' && process.getuid?.() === 0)
// In machine code: a third of the processor time of `typescript`, which is there for the tools that look into sources.
const tsc = ['node', 'node_modules/typescript-7/bin/tsc', '-p']
const forms = [
  ['types, core', [...tsc, 'tsconfig.core.json']],
  ['types, node', [...tsc, 'tsconfig.node.json']],
  ['types, web', [...tsc, 'tsconfig.web.json']],
  ['types, browser tests and bench', [...tsc, 'tsconfig.browser.json']],
  ['form', ['biome', 'check', '.']],
  ['structure', ['depcruise', '--config', '.dependency-cruiser.cjs', 'src']],
  ['nothing unused', ['knip']],
]
// What runs beside each other takes both processors all the time: alone, each often waits for one of its own parts.
await besideEachOther([inTurn(one(forms), browser()), inTurn(vitest('unit'), vitest('slow'))])
end()

/**
 * A folder for what tests write, which goes with the last of them. Each commit of a database waits until the disk has it,
 * and a start after a kill waits for a thousand files: where it is in memory nothing waits, and is written all the same.
 */
function placeToWrite() {
  const inMemory = '/dev/shm'
  const room = 6 * 2 ** 30
  const make = (place) => {
    const folder = mkdtempSync(join(place, 'lapwise-test-'))
    // Of root, whose PostgreSQL server is another user's.
    chmodSync(folder, 0o711)
    return folder
  }
  if (process.env.TMPDIR !== undefined || process.platform !== 'linux') return make(tmpdir())
  let folder = null
  try {
    const { bavail, bsize } = statfsSync(inMemory)
    if (Math.min(bavail * bsize, freemem()) < room) return make(tmpdir())
    folder = make(inMemory)
    // Programs are started from there; some systems forbid it.
    writeFileSync(join(folder, 'program'), '', { mode: 0o700 })
    accessSync(join(folder, 'program'), constants.X_OK)
    return folder
  } catch {
    if (folder !== null) rmSync(folder, { recursive: true, force: true })
    return make(tmpdir())
  }
}

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

/** Runs these one after the other; none is begun after something has failed anywhere. */
function inTurn(...runs) {
  return async (tell) => {
    for (const run of runs) if (failed === 0) await run(tell)
  }
}

/**
 * Runs these. What the first one says is told at once, what another says when those before it have ended.
 *
 * @param runs  each takes what tells a text, and says something at least when it ends
 */
async function besideEachOther(runs) {
  let told = Promise.resolve()
  await Promise.all(
    runs.map(async (run) => {
      const before = told
      let kept = ''
      let tell = (text) => {
        kept += text
      }
      const ended = run((text) => tell(text))
      told = before.then(() => {
        process.stdout.write(kept)
        tell = (text) => process.stdout.write(text)
        return ended
      })
      await ended
    }),
  )
  await told
}

/** One step after the other; after one that fails the others are not begun. */
function one(list) {
  return async (tell) => {
    for (const [name, words] of list) {
      const started = Date.now()
      let said = ''
      const code = await call(words, {}, (text) => {
        said += text
      })
      const seconds = ((Date.now() - started) / 1000).toFixed(1)
      tell(code === 0 ? `ok      ${name} (${seconds} s)\n` : `${said}\nfailed  ${name} (${seconds} s)\n`)
      if (code === 0) continue
      failed += 1
      fallen.push(name)
      return
    }
  }
}

/** How a program among the packages ended; what it says is told as it comes. */
function call([program, ...words], settings, tell) {
  const path = [join(root, 'node_modules/.bin'), process.env.PATH].join(delimiter)
  const env = { ...process.env, PATH: path, TMPDIR: results, ...settings }
  const child = spawn(program, words, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'], env })
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', tell)
  return new Promise((resolve) => child.on('close', resolve))
}

function vitest(project) {
  return async (tell) => {
    const file = join(results, `${project}.json`)
    const words = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`]
    const status = await call(['vitest', 'run', '--project', project, ...words], {}, tell)
    const told = JSON.parse(readFileSync(file, 'utf8'))
    for (const { name, assertionResults } of told.testResults)
      for (const { status, fullName, failureMessages } of assertionResults) {
        const title = `${relative(root, name)}: ${fullName}`
        if (status === 'failed') fallen.push(named(title, failureMessages[0]))
        else if (status !== 'passed') skipped.push(title)
      }
    count(told.numPassedTests, told.numFailedTests, status, `the ${project} tests`)
  }
}

function browser() {
  return async (tell) => {
    const file = join(results, 'browser.json')
    const settings = { PLAYWRIGHT_JSON_OUTPUT_NAME: file }
    const status = await call(['playwright', 'test', '--reporter=list,json'], settings, tell)
    const { stats, suites } = JSON.parse(readFileSync(file, 'utf8'))
    for (const { file: name, title, tests } of suites.flatMap(specsOf))
      for (const { status, projectName, results: tries } of tests) {
        const told = `${name}, ${projectName}: ${title}`
        if (status === 'skipped') skipped.push(told)
        else if (status !== 'expected') fallen.push(named(told, tries.find(({ error }) => error)?.error.message))
      }
    count(stats.expected, stats.unexpected + stats.flaky, status, 'the browser tests')
  }
}

function specsOf({ specs = [], suites = [] }) {
  return [...specs, ...suites.flatMap(specsOf)]
}

/** A test that failed, with the first lines of why: so much stands at the end, where nobody has to look for it. */
function named(title, why = '') {
  const lines = stripVTControlCharacters(why)
    .split('\n')
    .filter((line) => line.trim() !== '')
  return [title, ...lines.slice(0, 6).map((line) => `    ${line.slice(0, 200)}`)].join('\n')
}

/** A round that ends badly without a failed test has failed all the same. */
function count(good, bad, status, what) {
  passed += good
  failed += bad
  if (status === 0 || bad > 0) return
  failed += 1
  fallen.push(`${what} ended with ${status}`)
}

function end() {
  console.log('')
  if (fallen.length > 0) console.log(`Failed:\n  ${fallen.join('\n  ')}`)
  if (skipped.length > 0) console.log(`${skipped.length} checks could not run:\n  ${skipped.join('\n  ')}`)
  if (missing.length > 0) console.log(`Not on this machine: ${missing.join(', ')}`)
  console.log(`${passed} passed, ${failed} failed, ${skipped.length} skipped`)
  process.exit(failed > 0 ? 1 : 0)
}
