import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { brotliCompressSync, gzipSync } from 'node:zlib'
import { defineConfig, type Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

/** What only computes. */
const pure = /src.(core|formats|sheets|drawing|documents|operations|words)/
const model =
  /zod|src.(core.(?!verdicts|requirements.(?!derived-topics)|measurement|record|staking)|formats.(?!entry|readings|run.(?!run-version|write-run))|drawing.(?!views.strip.(?!spread)|words.strip)|operations.choose-layout)/
const layingOut =
  /src.(sheets.(?!landed)|operations.(means-of-today|lay-out-run|sheet-shelf|sheet-differences)|core.layout.(solve-layout|post-plan|frames|panel-orders|panel-kinds|divided-stretches|end-side|size-problem|heap))/
/** What parts that are fetched by themselves share, and nothing that is shown first: never in one file with that. */
const apart =
  /src.(sheets.landed|formats.entry.entry-kinds|operations.(pin-|require-run|version-problems|revise-run|edit-run|unit-picture)|drawing.views.(unit-view|elevation))/
/** The picture of a run, which the list of runs does without. */
const strip = /src.(drawing.views.strip(?!.spread)|operations.strip-input|drawing.words.strip)/

export default defineConfig({
  root: 'src/web',
  publicDir: 'sw/public',
  build: {
    outDir: '../../dist/web',
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
            // What the page needs from the start, and its worker too.
            {
              name: 'shared',
              test: /src.(core.(units|result)|words.(?!en.drawings)|formats.(entry-id|canonical-json)|web.data.(sha256|later|messages|device|fetch-ahead)[.])|comlink/,
              minShareCount: 2,
              priority: 3,
            },
            // What lays out what is not laid out yet: the shelf and the solver, which a run that is opened does without.
            { name: 'laying-out', test: layingOut, minShareCount: 2, priority: 0 },
            // What a site and a run need.
            {
              name: 'model',
              test: (id) => model.test(id) && !layingOut.test(id) && !apart.test(id),
              minShareCount: 2,
              priority: 2,
            },
            // What a run and its worker need beside it.
            {
              name: 'judging',
              test: (id) => pure.test(id) && !layingOut.test(id) && !apart.test(id) && !strip.test(id),
              minShareCount: 2,
              priority: 1,
            },
            { name: 'strip', test: strip, minShareCount: 2, priority: 0 },
          ],
        },
      },
    },
    modulePreload: {
      polyfill: false,
      // A part that is fetched later needs nothing again that page or worker came with.
      resolveDependencies: (_, files, { hostId, hostType }) => {
        if (hostType === 'html') return files
        const cameWith = hostId.includes('device-worker') ? /(shared|model|judging|runtime|worker)-/ : /(shared|index)-/
        return files.filter((file) => !cameWith.test(file))
      },
    },
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  plugins: [
    sharedWorkerFiles('src/web/data/device-worker.ts'),
    partsFetchedBy('src/web/data/fetch-ahead.ts'),
    packedFiles(),
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
        id: '/',
        start_url: '/',
        scope: '/',
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
})

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
