// Measures whether the tests notice small wrongs in core, and names those that they do not.
//   npm run mutants [-- FOLDER …]    folders of src/core, or modules in them; all five if none is named
//   npm run mutants -- --every 5 …  only each fifth mutant, for a figure in a fifth of the time; `--every 5+2` begins two later
//   npm run mutants -- --own FOLDER …  asks the tests of the folders themselves alone: every wrong in minutes, for a figure that
//                                    is no higher; after --every where both are given
//   npm run mutants -- --confirm     applies each survivor of the last run to a copy of the checkout, under plain vitest
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { checkCanary } from './check-canary.ts'
import { confirmSurvivors } from './confirm-survivors.ts'
import { type MeasuredMutant, measureMutants } from './measure-mutants.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const report = join(root, 'test-results/mutants.json')
const core = join(root, 'src/core')
const folders = ['measurement', 'layout', 'fit', 'requirements', 'verdicts']

// Pictures, exports, typeset documents and translated sentences would notice much, but only that something is different.
const testFolders = [
  ...folders.map((folder) => `src/core/${folder}`),
  'src/words/en',
  'src/operations',
  'test/published',
  ...['added-sheet', 'demo', 'ends-and-criteria', 'judge', 'need', 'need-to-layout', 'offset-side', 'requirements'].map(
    (name) => `test/cases/${name}`,
  ),
]

const asked = process.argv.slice(2)
if (asked[0] === '--confirm') {
  const measured = JSON.parse(readFileSync(report, 'utf8')) as MeasuredMutant[]
  keep(confirmSurvivors(root, measured, (one) => console.log(`${one.fate.padEnd(11)}  ${print(one)}`)))
  process.exit()
}

const wrong = await checkCanary()
if (wrong.length > 0) {
  console.error(`the canary did not come out right, so nothing was measured:\n${wrong.join('\n')}`)
  process.exit(1)
}
console.log('the ten mutants of known fate came out right')

const [every, from = 0] = asked[0] === '--every' ? asked.splice(0, 2)[1]!.split('+').map(Number) : [1]
const isOwn = asked[0] === '--own' && asked.shift() !== undefined
const modules = (asked.length > 0 ? asked : folders)
  .flatMap((name) => (name.endsWith('.ts') ? [join(core, name)] : sourcesIn(join(core, name))))
  .filter((file) => !file.endsWith('.test.ts'))
const testFiles = [...(isOwn ? new Set(modules.map((file) => relative(root, dirname(file)))) : testFolders)]
  .flatMap((folder) => sourcesIn(join(root, folder)))
  .filter((file) => file.endsWith('.test.ts'))
const measured = await measureMutants(modules, testFiles, { every: every!, from }, (one) => {
  if (one.fate === 'alive' || one.fate === 'not reached') console.log(`${one.fate.padEnd(11)}  ${print(one)}`)
})
keep(measured)

function keep(mutants: readonly MeasuredMutant[]): void {
  mkdirSync(join(root, 'test-results'), { recursive: true })
  writeFileSync(report, JSON.stringify(mutants))
  printFigures(mutants)
}

function sourcesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name))
    .sort()
}

function print({ file, line, original, replacement }: MeasuredMutant): string {
  const short = (text: string): string => text.replaceAll(/\s+/g, ' ').slice(0, 90)
  return `${relative(core, file)}:${line}  ${short(original)}  →  ${short(replacement)}`
}

function printFigures(mutants: readonly MeasuredMutant[]): void {
  for (const folder of folders) {
    const own = mutants.filter(({ file }) => file.startsWith(join(core, folder, '/')))
    if (own.length === 0) continue
    const count = (...fates: string[]): number => own.filter(({ fate }) => fates.includes(fate)).length
    const killed = count('killed', 'ran for ever')
    const share = ((100 * killed) / (killed + count('alive'))).toFixed(1)
    console.log(
      `${folder}: ${own.length} mutants, ${killed} killed, ${count('alive')} alive (${share} % killed), ${count('not reached')} not measured`,
    )
  }
}
