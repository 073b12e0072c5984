import { fileURLToPath } from 'node:url'
import { build, type Plugin } from 'vite'
import { pseudo, saidMessages } from './pseudo.ts'

const path = (file: string): string => fileURLToPath(new URL(file, import.meta.url))

/** Words of the page in Spanish, by the file that holds them, and what stands in their place. */
const replaced: Readonly<Record<string, string>> = {
  'src/web/messages/es.ts': `import { en } from './en.ts'; export const es = ${saidMessages.name}(en)`,
  'src/web/messages/site-es.ts': `import { siteEn } from './site-en.ts'; export const siteEs = ${saidMessages.name}(siteEn)`,
  'src/web/messages/run-form-es.ts': `import { runFormEn } from './run-form-en.ts'; export const runFormEs = ${saidMessages.name}(runFormEn)`,
  'src/web/messages/files-es.ts': `import { filesEn } from './files-en.ts'; export const filesEs = ${saidMessages.name}(filesEn)`,
  'src/web/messages/shelf-es.ts': `import { shelfEn } from './shelf-en.ts'; export const shelfEs = ${saidMessages.name}(shelfEn)`,
  'src/web/messages/drills-es.ts': `import { drillsEn } from './drills-en.ts'; export const drillsEs = ${saidMessages.name}(drillsEn)`,
  'src/web/messages/scene-es.ts': `import { sceneEn } from './scene-en.ts'; export const sceneEs = ${saidMessages.name}(sceneEn)`,
  'src/web/messages/shelf-form-es.ts': `import { shelfFormEn } from './shelf-form-en.ts'; export const shelfFormEs = ${saidMessages.name}(shelfFormEn)`,
  'src/web/messages/shelf-texts-es.ts': `import { shelfTextsEn } from './shelf-texts-en.ts'; export const shelfTextsEs = ${saidMessages.name}(shelfTextsEn)`,
  'src/web/messages/glossary-es.ts': `import { glossaryEn } from './glossary-en.ts'; export const glossaryEs = ${saidMessages.name}(glossaryEn)`,
  'src/web/data/messages/es.ts': `import { en } from './en.ts'; export const es = ${saidMessages.name}(en)`,
  // The page keeps what it drew in English at first, so that it must not be told that this is English.
  'src/words/spanish.ts': `export const spanish = (units) => ({ ...${pseudo.name}(units), language: 'es' })`,
}

const imports = `import { ${pseudo.name}, ${saidMessages.name} } from ${JSON.stringify(path('./pseudo.ts'))};`

const inPlaceOfSpanish: Plugin = {
  name: 'in-place-of-spanish',
  enforce: 'pre',
  load(id) {
    const file = Object.keys(replaced).find((one) => id.endsWith(`/${one}`))
    return file === undefined ? null : { code: `${imports} ${replaced[file]}`, moduleType: 'js' }
  },
}

/** Builds the page into `folder`, with the pseudo-language where Spanish is chosen. */
export async function buildPseudoPage(folder: string): Promise<void> {
  await build({
    configFile: path('../../vite.config.ts'),
    root: path('../../src/web'),
    logLevel: 'warn',
    plugins: [inPlaceOfSpanish],
    build: { outDir: folder, emptyOutDir: true },
  })
}
