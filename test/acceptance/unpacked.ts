import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))

/**
 * An empty folder in which the packed package was installed. Its packages are those of the lockfile that are not only for
 * development, as they lie here, so that nothing is fetched.
 * @returns the folder
 */
export function installPacked(): string {
  const home = mkdtempSync(join(tmpdir(), 'lapwise-packed-'))
  const modules = join(home, 'node_modules')
  mkdirSync(join(modules, 'lapwise'), { recursive: true })
  const packed = execFileSync('npm', ['pack', '--json', '--pack-destination', home], { cwd: root, encoding: 'utf8' })
  const [{ filename }] = JSON.parse(packed) as [{ readonly filename: string }]
  execFileSync('tar', ['-xzf', join(home, filename), '-C', join(modules, 'lapwise'), '--strip-components=1'])
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    readonly packages: Readonly<Record<string, { readonly dev?: boolean; readonly optional?: boolean }>>
  }
  for (const [path, { dev }] of Object.entries(packages)) {
    // What lies within another package comes with it.
    if (path === '' || dev === true || path.lastIndexOf('node_modules/') > 0) continue
    mkdirSync(dirname(join(home, path)), { recursive: true })
    symlinkSync(join(root, path), join(home, path))
  }
  // As npm puts a command where `npx` finds it.
  mkdirSync(join(modules, '.bin'))
  symlinkSync('../lapwise/bin/lapwise.mjs', join(modules, '.bin/lapwise'))
  return home
}
