import { execFileSync, spawn, spawnSync } from 'node:child_process'
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { coreApi } from '../../scripts/core-api.ts'
import { demoProject } from '../../src/operations/demo-project.ts'
import { recordPath, runsPath } from '../../src/protocol/addresses.ts'
import { installPacked } from './unpacked.ts'
import { copyPrepared, startServerProcess } from './web/serve.ts'

// What is packed is tried as whoever takes it home has it: without this clone, its sources and what builds them.
let home: string
let program: string

beforeAll(() => {
  home = installPacked()
  program = join(home, 'node_modules/lapwise/bin/lapwise.mjs')
  const { run, readings } = demoProject()
  writeFileSync(join(home, 'run.json'), run)
  writeFileSync(join(home, 'readings.json'), readings)
})
afterAll(() => rmSync(home, { recursive: true, force: true }))

const call = (...words: readonly string[]) =>
  spawnSync(process.execPath, [program, ...words], { cwd: home, encoding: 'utf8' })

describe('the packed package', () => {
  test('has no sources, and needs neither TypeScript nor what bundles', () => {
    expect(readdirSync(join(home, 'node_modules/lapwise')).sort()).toEqual(
      ['LICENSE', 'README.md', 'bin', 'dist', 'docs', 'examples', 'package.json'].sort(),
    )
    const { dependencies } = JSON.parse(readFileSync(join(home, 'node_modules/lapwise/package.json'), 'utf8'))
    for (const name of ['typescript', 'tsx', 'vite', 'preact']) expect(dependencies).not.toHaveProperty(name)
  })

  test('judges, and makes a whole packet with documents, drawings and tables', () => {
    const judged = call('judge', 'run.json', 'readings.json')
    expect([judged.status, judged.stderr]).toEqual([1, ''])
    expect(judged.stdout).toContain('Lower post 1 by 1 in')
    const made = call('packet', 'run.json', 'readings.json', '-o', 'out')
    expect(made.status, made.stderr).toBe(0)
    expect(readFileSync(join(home, 'out/record.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
    expect(JSON.parse(readFileSync(join(home, 'out/manifest.json'), 'utf8')).files.length).toBeGreaterThan(10)
  })

  test('serves the page, the demo run, and a record of it', async () => {
    const data = join(home, 'data')
    await copyPrepared(data)
    const server = await startServerProcess(data, {}, program)
    try {
      const page = await (await fetch(server.address)).text()
      const [, script] = /<script type="module"[^>]* src="([^"]+)"/.exec(page)!
      expect((await fetch(server.address + script)).status).toBe(200)
      const { runs } = (await (await fetch(server.address + runsPath)).json()) as { readonly runs: { id: string }[] }
      expect(runs).toHaveLength(1)
      const record = await fetch(server.address + recordPath(runs[0]!.id))
      expect([record.status, record.headers.get('content-type')]).toEqual([200, 'application/pdf'])
    } finally {
      await server.stop()
    }
  })

  test('looks at pictures in a process of its own', async () => {
    const asked = spawn(process.execPath, [join(home, 'node_modules/lapwise/bin/lapwise-pictures.mjs')], {
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    })
    const answer = new Promise((resolve) => asked.on('message', resolve))
    asked.send(join(home, 'run.json'))
    expect(await answer).toMatchObject({ kind: expect.stringContaining('picture') })
    asked.kill()
  })
})

describe('lapwise/core', () => {
  test('is a library with types, for both ways in which TypeScript finds packages', () => {
    writeFileSync(join(home, 'try.ts'), useOfCore)
    for (const [module, moduleResolution] of [
      ['nodenext', 'nodenext'],
      ['esnext', 'bundler'],
    ]) {
      const compilerOptions = {
        ...{ module, moduleResolution, strict: true, target: 'es2023', lib: ['es2023'], types: [] },
        ...{ outDir: 'made', rootDir: '.' },
      }
      writeFileSync(join(home, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['try.ts'] }))
      const compiler = new URL('../../node_modules/typescript/bin/tsc', import.meta.url).pathname
      const { status, stdout } = spawnSync(process.execPath, [compiler, '-p', home], { encoding: 'utf8' })
      expect([status, stdout]).toEqual([0, ''])
    }
    writeFileSync(join(home, 'package.json'), JSON.stringify({ type: 'module' }))
    const use = "import('./made/try.js').then(({ told }) => process.stdout.write(told))"
    // By hand: 12.5 x 12 = 150, and 31 - 27.75 = 3.25.
    expect(execFileSync(process.execPath, ['-e', use], { cwd: home, encoding: 'utf8' })).toBe('150 in, 3 1/4 in above')
  })

  test('offers what docs/core-api.txt says (else look at what changed, and run npx tsx scripts/write-api.ts)', () => {
    expect(coreApi()).toBe(readFileSync(new URL('../../docs/core-api.txt', import.meta.url), 'utf8'))
  })
})

const useOfCore = `
import { parseLength, printLength, type Result, solveLayout, type LayoutRequest } from 'lapwise/core'

const read = (text: string): number => {
  const length = parseLength(text, null)
  if (!length.ok) throw new Error(length.error.kind)
  return length.value.nanometres
}
// @ts-expect-error a request is no text, which only types that are found can tell
export const wrong = (): unknown => solveLayout('text')
export const right: (request: LayoutRequest) => Result<unknown, unknown> = solveLayout
export const told = \`\${printLength(read('12 ft 6 in'), 'inches')}, \${printLength(read('31 in') - read('27 3/4 in'), 'inches')} above\`
`
