// Brings a clone to the state in which it can run: installs the pinned packages when they are missing or
// stale, and with --web builds the page when its sources changed. Uses nothing but Node itself.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')

export function prepare({ web }) {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major < 20 || (major === 20 && minor < 19)) {
    stop(`Lapwise needs Node 20.19 or newer; this is ${process.versions.node}.`)
  }
  installPackages()
  if (web) buildWeb()
}

function installPackages() {
  const stamp = join(root, 'node_modules', '.lapwise-installed')
  const wanted = digest([join(root, 'package-lock.json')], `${process.version} ${process.platform} ${process.arch}`)
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return
  say('Installing packages (first time, about a minute) …')
  run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'])
  writeFileSync(stamp, wanted)
}

function buildWeb() {
  const stamp = join(root, 'dist', 'web', '.built-from')
  const wanted = digest([
    ...filesBelow(join(root, 'src')),
    join(root, 'vite.config.ts'),
    join(root, 'package-lock.json'),
  ])
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return
  say('Building the page …')
  run('npx', ['vite', 'build', '--config', 'vite.config.ts', '--logLevel', 'warn'])
  writeFileSync(stamp, wanted)
}

function filesBelow(folder) {
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const path = join(folder, name)
      if (statSync(path).isDirectory()) return filesBelow(path)
      return name.endsWith('.test.ts') ? [] : [path]
    })
}

function digest(paths, salt = '') {
  const hash = createHash('sha256').update(salt)
  for (const path of paths) hash.update(path.slice(root.length)).update(readFileSync(path))
  return hash.digest('hex')
}

function run(command, words) {
  const ended = spawnSync(command, words, { cwd: root, stdio: ['ignore', 2, 2] })
  if (ended.status !== 0) stop(`'${command} ${words.join(' ')}' did not succeed; its message stands above.`)
}

function say(text) {
  process.stderr.write(`${text}\n`)
}

function stop(text) {
  say(text)
  process.exit(3)
}

if (process.argv[1] === fileURLToPath(import.meta.url)) prepare({ web: process.argv.includes('--web') })
