import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { ModuleKind, ScriptTarget, transpileModule } from 'typescript'
import { describe, expect, test } from 'vitest'

/** A line `@example call  // value` in the comment of an exported function. */
interface Example {
  readonly file: string
  readonly call: string
  readonly value: string
}

const source = fileURLToPath(new URL('../../../src/', import.meta.url))
const examples = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'))
  .sort()
  .flatMap((file) =>
    readFileSync(source + file, 'utf8')
      .split('\n')
      .filter((line) => line.includes('* @example'))
      .map((line): Example => {
        const [, call, value] = /@example (.+?) {2}\/\/ (.+)$/.exec(line) ?? []
        if (call === undefined || value === undefined)
          throw new Error(`src/${file}: an example is one line, \`call  // value\`, found ${line.trim()}`)
        return { file, call, value }
      }),
  )

describe('the examples in the comments', () => {
  test('are found', () => {
    expect(examples.map(({ file }) => file)).toContain('core/units/length-text.ts')
  })

  test.each(examples)('$file: $call', async ({ file, call, value }) => {
    const names: object = await import(`${source}${file}`)
    expect(run(call, names)).toEqual(run(value, names))
  })
})

/** The value of a TypeScript expression that knows these names. */
function run(expression: string, names: object): unknown {
  const { outputText } = transpileModule(`value = (${expression})`, {
    compilerOptions: { module: ModuleKind.ESNext, target: ScriptTarget.ES2023 },
    reportDiagnostics: true,
  })
  return new Function(...Object.keys(names), `let value; ${outputText}; return value`)(...Object.values(names))
}
