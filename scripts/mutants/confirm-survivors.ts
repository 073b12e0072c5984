import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import type { MeasuredMutant } from './measure-mutants.ts'

/**
 * How many of the survivors are noticed after all when each is written into the file and the test files that ran with
 * it run under plain vitest: what shows whether the warm process can be believed.
 */
export function confirmSurvivors(
  root: string,
  survivors: readonly MeasuredMutant[],
  tell: (survivor: MeasuredMutant, isAlive: boolean) => void,
): number {
  const copy = mkdtempSync(join(tmpdir(), 'lapwise-mutants-'))
  try {
    for (const part of [
      'src',
      'test',
      'docs',
      'package.json',
      'vitest.config.ts',
      'tsconfig.json',
      'tsconfig.base.json',
    ])
      cpSync(join(root, part), join(copy, part), { recursive: true })
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'))
    let noticed = 0
    for (const survivor of survivors) {
      const file = join(copy, relative(root, survivor.file))
      const text = readFileSync(file, 'utf8')
      writeFileSync(file, `${text.slice(0, survivor.start)}${survivor.replacement}${text.slice(survivor.end)}`)
      const testFiles = survivor.ran.map((one) => relative(root, one))
      const words = ['vitest', 'run', '--project', 'unit', '--bail', '1', ...testFiles]
      const isAlive = spawnSync('npx', words, { cwd: copy, stdio: 'ignore', timeout: 300_000 }).status === 0
      writeFileSync(file, text)
      if (!isAlive) noticed++
      tell(survivor, isAlive)
    }
    return noticed
  } finally {
    rmSync(copy, { recursive: true, force: true })
  }
}
