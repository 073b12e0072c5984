import { createHash } from 'node:crypto'
import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { brotliCompressSync, gzipSync } from 'node:zlib'
import { defineConfig, type Plugin, type Rolldown } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import { typesetterFile } from './scripts/typesetter-file.ts'
import { contentPolicy } from './src/protocol/content-policy.ts'

/** What only computes. */
const pure = /src.(core|formats|sheets|drawing|documents|operations|words)/

/** What is fetched on a first visit, before what it is for is there; a requirement of a run beside the run. */
const visits = {
  page: ['main.tsx'],
  worker: ['data/device-worker.ts', 'data/kept-run.ts'],
  run: ['views/run-view.tsx', 'data/drawn-run.ts'],
  site: ['site/site-view.tsx'],
  // All that the model says in English.
  words: ['../words/english.ts'],
} as const

type Needs = Readonly<Record<keyof typeof visits, boolean>>

/** With `--mode static` the page is made for a host that hands out files and nothing else, at any address. */
export default defineConfig(({ mode }) => ({
  base: mode === 'static' ? './' : '/',
  root: 'src/web',
  publicDir: 'sw/public',
  build: {
    outDir: mode === 'static' ? '../../dist/static' : '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    rolldownOptions: {
      // What only computes does nothing by being loaded, so that what nothing uses of it stays out.
      treeshake: { moduleSideEffects: (id) => !pure.test(id) },
      input: ['src/web/index.html', 'src/web/rescue.html'],
      output: {
        // A few files instead of many small ones: each costs a phone a request.
        codeSplitting: {
          groups: [
            // What the page needs from the start, as far as its worker needs it too or it only computes.
            neededBy('shared', 5, ({ page, worker }, id) => page && (worker || pure.test(id))),
            // What its worker judges with, as far as a site is computed with it too.
            neededBy('model', 4, ({ worker, site }) => worker && site),
            // The rest of that.
            neededBy('judging', 3, ({ worker }) => worker),
            // The rest of what the page needs from the start.
            { ...neededBy('page', 3, ({ page }) => page), minShareCount: 1 },
            // What a list of runs does without: what everything else is said by, and what run and site are drawn with.
            neededBy(
              'saying',
              2,
              ({ page, words, run, site }, id) => !page && (words || (run && site && pure.test(id))),
            ),
            // What a run shows beside that, also where its worker draws it.
            neededBy('strip', 0, ({ run }, id) => run && pure.test(id)),
            // What of its view other parts show too.
            neededBy('beside-run', 0, ({ page, run, site }, id) => run && !page && !site && !pure.test(id)),
            // What lays out what is not laid out yet: the shelf and the solver, which a run that is opened does without.
            neededBy('laying-out', 0, ({ site }, id) => site && pure.test(id)),
          ],
        },
      },
    },
    modulePreload: {
      polyfill: false,
      // A part that is fetched later needs nothing again that page or worker came with.
      resolveDependencies: (_, files, { hostId, hostType }) => {
        if (hostType === 'html') return files
        const cameWith = hostId.includes('device-worker')
          ? /(shared|model|judging|runtime|worker)-/
          : /(shared|page|index)-/
        return files.filter((file) => !cameWith.test(file))
      },
    },
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  plugins: [
    sharedWorkerFiles('src/web/data/device-worker.ts'),
    partsFetchedBy('src/web/data/fetch-ahead.ts'),
    typesetterOfPage(),
    ...(mode === 'static' ? [pageOfItself()] : [packedFiles()]),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'sw',
      filename: 'sw.ts',
      // The page registers it itself, and a new version waits until it is told to take over.
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      injectManifest: { globPatterns: ['**/*.{html,js,css,svg,png,webmanifest}'] },
      manifest: {
        name: 'Lapwise',
        short_name: 'Lapwise',
        description: 'From site and hardware sheets to a judged guardrail installation',
        ...(mode === 'static' ? {} : { id: '/' }),
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#fbfaf6',
        theme_color: '#2a2f34',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        ],
      },
    }),
  ],
}))

/**
 * One file of what several parts share and `isIn` says is needed together. By who imports it, not by where it lies: what
 * late parts alone share is then never fetched with what is shown first.
 */
function neededBy(
  name: string,
  priority: number,
  isIn: (needs: Needs, id: string) => boolean,
): Rolldown.CodeSplittingGroup {
  const parts = Object.values(visits).flat()
  const idOf = (part: string): string => join(import.meta.dirname, 'src/web', part)
  let reached: Readonly<Record<keyof typeof visits, ReadonlySet<string>>> | null = null
  return {
    name: (id, graph) => {
      if (parts.some((part) => id === idOf(part)) && id !== idOf(visits.words[0])) return null
      const reach = (from: readonly string[]) =>
        reachedFrom(from.map(idOf), (one) => graph.getModuleInfo(one)?.importedIds ?? [])
      reached ??= {
        page: reach(visits.page),
        worker: reach(visits.worker),
        run: reach(visits.run),
        site: reach(visits.site),
        words: reach(visits.words),
      }
      const { page, worker, run, site, words } = reached
      const needs = { page: page.has(id), worker: worker.has(id), run: run.has(id), site: site.has(id) }
      return isIn({ ...needs, words: words.has(id) }, id) ? name : null
    },
    minShareCount: 2,
    priority,
  }
}

/** What is imported from there before it runs, and what that imports. */
function reachedFrom(from: readonly string[], importedBy: (id: string) => readonly string[]): ReadonlySet<string> {
  const reached = new Set<string>()
  const open = [...from]
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (reached.has(id)) continue
    reached.add(id)
    open.push(...importedBy(id))
  }
  return reached
}

/**
 * Builds the page's worker together with the page, so that what both need is one file and fetched once. By itself the
 * bundler builds a worker apart, with its own copy of the whole model.
 */
function sharedWorkerFiles(worker: string): Plugin {
  const written = `new URL('./${worker.split('/').at(-1)}', import.meta.url)`
  let reference = ''
  return {
    name: 'shared-worker-files',
    apply: 'build',
    enforce: 'pre',
    buildStart() {
      reference = this.emitFile({ type: 'chunk', id: worker })
    },
    transform(code) {
      return code.includes(written) ? code.replace(written, `import.meta.ROLLUP_FILE_URL_${reference}`) : null
    },
  }
}

/**
 * Around each `import()` of a part stands a function of the bundler's, which fetches what the part needs; ours is put
 * in its place.
 */
function partsFetchedBy(file: string): Plugin {
  return {
    name: 'parts-fetched-by',
    apply: 'build',
    enforce: 'pre',
    resolveId: (id) => (id === '\0vite/preload-helper.js' ? join(import.meta.dirname, file) : null),
  }
}

/** Beside the page's own scripts, what a browser compiles for it: the typesetter. */
const scriptsThatSet = "script-src 'self' 'wasm-unsafe-eval'"

/** The page without a server's headers and addresses: what it may load stands in it, and its links lead from where it lies. */
function pageOfItself(): Plugin {
  return {
    name: 'page-of-itself',
    apply: 'build',
    transformIndexHtml: (html) => ({
      html: html.replaceAll('href="/rescue"', 'href="rescue.html"').replaceAll('href="/"', 'href="./"'),
      tags: [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: [...contentPolicy, scriptsThatSet].join('; ') },
          injectTo: 'head-prepend',
        },
      ],
    }),
  }
}

/** Puts what makes documents in a browser, its own typesetter too, into the place of the server's, and hands out what it needs as one file. */
function typesetterOfPage(): Plugin {
  const bytes = typesetterFile()
  const fileName = `typesetter-${createHash('sha256').update(bytes).digest('hex').slice(0, 8)}.zip`
  return {
    name: 'typesetter-of-page',
    apply: 'build',
    config: () => ({
      define: { 'import.meta.env.TYPESETTER_FILE': JSON.stringify(fileName) },
      resolve: {
        alias: ['typeset', 'documents-part'].map((name) => ({
          find: new RegExp(`^[.]/${name}[.]ts$`),
          replacement: join(import.meta.dirname, `src/web/documents/${name}.ts`),
        })),
      },
    }),
    buildStart() {
      this.emitFile({ type: 'asset', fileName: `assets/${fileName}`, source: bytes })
    },
  }
}

/** Beside each script and style the same, packed as small as can be, so that the server need not pack it each time. */
function packedFiles(): Plugin {
  return {
    name: 'packed-files',
    apply: 'build',
    async writeBundle({ dir }, bundle) {
      for (const file of Object.values(bundle)) {
        if (!/\.(js|css)$/.test(file.fileName)) continue
        const bytes = Buffer.from(file.type === 'chunk' ? file.code : file.source)
        await writeFile(join(dir!, `${file.fileName}.br`), brotliCompressSync(bytes))
        await writeFile(join(dir!, `${file.fileName}.gz`), gzipSync(bytes, { level: 9 }))
      }
    },
  }
}
