import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import type { MeasuredMutant } from './measure-mutants.ts'

/**
 * The mutants with every survivor asked once more: written into the file, under plain vitest, with all test files that
 * reach it. One that is noticed there counts as killed.
 */
export function confirmSurvivors(
  root: string,
  measured: readonly MeasuredMutant[],
  tell: (survivor: MeasuredMutant) => void,
): MeasuredMutant[] {
  const copy = mkdtempSync(join(tmpdir(), 'lapwise-mutants-'))
  try {
    const configs = readdirSync(root).filter((name) => /^tsconfig.*[.]json$/.test(name))
    for (const part of ['src', 'test', 'docs', 'package.json', 'vitest.config.ts', ...configs])
      cpSync(join(root, part), join(copy, part), { recursive: true })
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'))
    // What fails in the copy without a mutant would seem to notice every one.
    const all = new Set(measured.filter(({ fate }) => fate === 'alive').flatMap(({ reachedBy }) => reachedBy))
    if (!passes(root, copy, [...all])) throw new Error('the tests do not pass in the copy without a mutant')
    const confirmed = measured.map((mutant) => {
      if (mutant.fate !== 'alive') return mutant
      const asked = { ...mutant, fate: isNoticed(root, copy, mutant) ? ('killed' as const) : mutant.fate }
      tell(asked)
      return asked
    })
    if (!passes(root, copy, [...all]))
      throw new Error('the tests no longer pass in the copy without a mutant: none counts')
    return confirmed
  } finally {
    rmSync(copy, { recursive: true, force: true })
  }
}

function isNoticed(root: string, copy: string, { file, start, end, replacement, reachedBy }: MeasuredMutant): boolean {
  const copied = join(copy, relative(root, file))
  const text = readFileSync(copied, 'utf8')
  writeFileSync(copied, text.slice(0, start) + replacement + text.slice(end))
  const isNoticed = !passes(root, copy, reachedBy)
  writeFileSync(copied, text)
  return isNoticed
}

function passes(root: string, copy: string, testFiles: readonly string[]): boolean {
  const words = ['vitest', 'run', '--project', 'unit', '--bail', '1', ...testFiles.map((one) => relative(root, one))]
  return spawnSync('npx', words, { cwd: copy, stdio: 'ignore', timeout: 600_000 }).status === 0
}
