import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build, loadConfigFromFile, type Plugin } from 'vite'
import { pseudo, saidMessages } from './pseudo.ts'

const path = (file: string): string => fileURLToPath(new URL(file, import.meta.url))

/** Every file of the page's words in Spanish, and what stands in its place: the English ones, said. */
const replaced: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    ['src/web/messages', 'src/web/data/messages'].flatMap((folder) =>
      readdirSync(path(`../../${folder}`))
        .filter((file) => /(?:^|-)es\.ts$/.test(file))
        .map((file) => [`${folder}/${file}`, inEnglish(file)]),
    ),
  ),
  // The page keeps what it drew in English at first, so that it must not be told that this is English.
  'src/words/spanish.ts': `export const spanish = (units) => ({ ...${pseudo.name}(units), language: 'es' })`,
}

/** Of `run-form-es.ts`, which has `runFormEs`. */
function inEnglish(file: string): string {
  const spanish = file.replace(/\.ts$/, '').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())
  const english = spanish.replace(/s$/, 'n')
  return `import { ${english} } from './${file.replace(/es\.ts$/, 'en.ts')}'; export const ${spanish} = ${saidMessages.name}(${english})`
}

const imports = `import { ${pseudo.name}, ${saidMessages.name} } from ${JSON.stringify(path('./pseudo.ts'))};`

const inPlaceOfSpanish: Plugin = {
  name: 'in-place-of-spanish',
  enforce: 'pre',
  load(id) {
    const file = Object.keys(replaced).find((one) => id.endsWith(`/${one}`))
    return file === undefined ? null : { code: `${imports} ${replaced[file]}`, moduleType: 'js' }
  },
  // The page of last resort has its words in both languages in one file.
  transform(code, id) {
    if (!id.endsWith('/src/web/rescue/messages.ts')) return null
    const own = code.replace('export function messages', 'function ofLanguage')
    return `${imports} ${own}; export const messages = () => ({ ...${saidMessages.name}(ofLanguage()), language: 'es' })`
  },
}

/** What a page does without that is looked at once and from near: what it is packed for, and the means to work offline. */
const isSpared = ({ name }: Plugin): boolean => name === 'packed-files' || name.startsWith('vite-plugin-pwa')

/** Builds the page into `folder`, with the pseudo-language where Spanish is chosen. */
export async function buildPseudoPage(folder: string): Promise<void> {
  const usual = await loadConfigFromFile({ command: 'build', mode: 'production' }, path('../../vite.config.ts'))
  const { plugins, ...config } = usual!.config
  const kept = (plugins ?? []).flat().filter((one) => !isSpared(one as Plugin))
  await build({
    ...{ ...config, configFile: false, logLevel: 'error' },
    root: path('../../src/web'),
    plugins: [...kept, inPlaceOfSpanish],
    build: { ...config.build, outDir: folder, emptyOutDir: true },
  })
}
