// Brings a clone to the state in which it can run: installs the pinned packages when they are missing or stale, and builds
// what is asked for when its sources changed. Uses nothing but Node itself. A package that was packed has all of it.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')

/** What can be built into its folder of `dist`: what it is called, from which sources, by which command. */
const parts = {
  program: {
    called: 'the program',
    config: 'vite.program.config.ts',
    isSource: (path) => !path.startsWith(join('src', 'web')),
    build: ['vite', 'build', '--config', 'vite.program.config.ts', '--logLevel', 'warn'],
  },
  web: {
    called: 'the page',
    config: 'vite.config.ts',
    isSource: () => true,
    build: ['vite', 'build', '--config', 'vite.config.ts', '--logLevel', 'warn'],
  },
  static: {
    called: 'the page for a host without a server',
    config: 'vite.config.ts',
    isSource: () => true,
    build: ['vite', 'build', '--config', 'vite.config.ts', '--mode', 'static', '--logLevel', 'warn'],
  },
  types: {
    called: 'the types',
    config: 'tsconfig.types.json',
    isSource: (path) => path.startsWith(join('src', 'core')),
    build: ['tsc', '-p', 'tsconfig.types.json'],
  },
}

/** @param wanted  names of the parts to be there afterwards */
export function prepare(wanted) {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major < 20 || (major === 20 && minor < 19)) {
    stop(`Lapwise needs Node 20.19 or newer; this is ${process.versions.node}.`)
  }
  installPackages()
  for (const name of wanted) buildPart(name, parts[name])
}

function installPackages() {
  const stamp = join(root, 'node_modules', '.lapwise-installed')
  const wanted = digest(['package-lock.json'], contentOf, `${process.version} ${process.platform} ${process.arch}`)
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return
  say('Installing packages (first time, about a minute) …')
  run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'])
  writeFileSync(stamp, wanted)
}

function buildPart(name, { called, config, isSource, build }) {
  const folder = join(root, 'dist', name)
  const stamp = join(folder, '.built-from')
  const sources = [...filesBelow('src').filter(isSource), config, 'package-lock.json']
  const [looks, content] = existsSync(stamp) ? readFileSync(stamp, 'utf8').split('\n') : []
  // To look at size and time of each file is quicker than to read it, and enough where nothing was touched.
  const look = digest(sources, lookOf)
  if (looks === look) return
  const wanted = digest(sources, contentOf)
  if (content !== wanted) {
    say(`Building ${called} …`)
    rmSync(folder, { recursive: true, force: true })
    // Built beneath a test, which says NODE_ENV=test, it would be the larger page that one develops with.
    run('npx', build, { NODE_ENV: 'production' })
    mkdirSync(folder, { recursive: true })
  }
  writeFileSync(stamp, `${look}\n${wanted}`)
}

function filesBelow(folder) {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const path = join(folder, entry.name)
      if (entry.isDirectory()) return filesBelow(path)
      return entry.name.endsWith('.test.ts') ? [] : [path]
    })
}

const contentOf = (path) => readFileSync(join(root, path))

function lookOf(path) {
  const { size, mtimeMs } = statSync(join(root, path))
  return `${size} ${mtimeMs}`
}

function digest(paths, of, salt = '') {
  const hash = createHash('sha256').update(salt)
  for (const path of paths) hash.update(path).update(of(path))
  return hash.digest('hex')
}

function run(command, words, settings = {}) {
  const env = { ...process.env, ...settings }
  const ended = spawnSync(command, words, { cwd: root, env, stdio: ['ignore', 2, 2] })
  if (ended.status !== 0) stop(`'${command} ${words.join(' ')}' did not succeed; its message stands above.`)
}

function say(text) {
  process.stderr.write(`${text}\n`)
}

function stop(text) {
  say(text)
  process.exit(3)
}

if (process.argv[1] === fileURLToPath(import.meta.url)) prepare(process.argv.slice(2))
