import { defineConfig } from 'vite'

/** What only computes does nothing by being loaded, so that what nothing uses of it stays out. */
const pure = /src.(core|formats|sheets|drawing|documents|operations|words)/

/** Command line, server and library, as Node runs them; packages stay packages, and are loaded where they are needed. */
export default defineConfig({
  // The files of the page are no part of this.
  publicDir: false,
  build: {
    ssr: true,
    // As deep below the package as the modules that look for its other files by their own place.
    outDir: 'dist/program',
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    reportCompressedSize: false,
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !pure.test(id) },
      input: {
        'command-line': 'src/cli/main.ts',
        server: 'src/server/main.ts',
        pictures: 'src/server/look-at-pictures.ts',
        packets: 'src/server/make-packet.ts',
        core: 'src/core/index.ts',
      },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
})
